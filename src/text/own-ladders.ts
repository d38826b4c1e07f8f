import type { OwnLadder } from '../domain/ladder/ladder-file.ts'
import type { Drill, DrillProse } from '../domain/ladder/ladders.ts'

/**
 * The words of the practice's own ladders. They are written once, in the practice's own language, and shown as they
 * are in every language; so they stand beside the languages, and are set once at the start of the program.
 */
let own: readonly OwnLadder[] = []

/** Sets the practice's own ladders; those set before are gone. */
export function setOwnLadders(ladders: readonly OwnLadder[]): void {
  own = ladders
}

/** The name of a practice's own ladder; undefined where the id is none of them. */
export const ownLadderName = (id: string): string | undefined =>
  own.find(({ ladder }) => ladder.id === id)?.name

export interface OwnDrill {
  readonly drill: Drill
  readonly prose: DrillProse
}

/** The drill of a practice's own ladder with its words, by drill id; null where it is none of them. */
export function ownDrill(id: string): OwnDrill | null {
  for (const { ladder, prose } of own) {
    const drill = ladder.rungs.find((one) => one.id === id)
    const words = prose[id]
    if (drill && words) return { drill, prose: words }
  }
  return null
}
