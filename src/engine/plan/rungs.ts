import type { Day } from '../../domain/day.ts'
import { inOrder, type Ladder, ladderOf } from '../../domain/ladder/ladders.ts'
import type { LadderId, Plan, Rungs } from '../../domain/ladder/plan.ts'
import type { Draft } from '../draft.ts'
import type { ClientFile } from '../ports.ts'
import type { RungRow } from '../rows.ts'
import { isStopped } from '../status.ts'

/** The rung of each ladder in force on a day, by ladder number: the latest change whose day has come. */
export function rungsOn(file: ClientFile, day: Day): Rungs {
  const rungs: Record<LadderId, number> = {}
  for (const row of file.rungs) {
    if (row.day > day) continue
    if (row.to === 0) delete rungs[row.ladder]
    else rungs[row.ladder] = row.to
  }
  return inOrder(rungs)
}

/** The ladders resting on a day. */
export const restingOn = (file: ClientFile): LadderId[] =>
  file.holds.flatMap((hold) =>
    hold.kind === 'rest' && hold.endedAt === null && hold.ladder ? [hold.ladder] : [],
  )

/** Ladders of the plan that the practice no longer has: nobody is given their drills, so they rest. */
export const goneLadders = (rungs: Rungs, ladders: readonly Ladder[]): LadderId[] =>
  Object.keys(rungs).filter((id) => ladderOf(id, ladders) === null)

/** Planned sessions of a day: none on a day off, before a plan, or while the coach has stopped the drills. */
export function plannedOn(file: ClientFile, weekday: string): number {
  if (!file.plan || isStopped(file)) return 0
  return file.client.off.includes(weekday) ? 0 : file.plan.sessions
}

export const planOn = (file: ClientFile, day: Day): Plan => ({
  sessions: file.plan?.sessions ?? 0,
  rungs: rungsOn(file, day),
  resting: restingOn(file),
  loads: file.plan?.loads ?? {},
})

/** Writes one change of a rung, in force from a day on. */
export function moveRung(
  draft: Draft,
  move: { ladder: LadderId; from: number; to: number; day: Day; why: RungRow['why']; by: string },
): RungRow {
  const row: RungRow = {
    id: draft.id('rung', move.ladder, draft.cause, draft.file.rungs.length),
    clientId: draft.client.id,
    at: draft.now,
    ...move,
  }
  draft.put('rung', row)
  return row
}

/** The rung of each ladder once every change that is still to come is in force. */
export const rungsAhead = (file: ClientFile): Rungs => rungsOn(file, '9999-12-31')

/**
 * Every ladder one rung lower (rung 1 is the floor): after clearance, or after a gap of a week or more. A step up
 * that was still to come does not come.
 */
export function lowerAll(draft: Draft, day: Day, why: 'return' | 'clearance', by: string): RungRow[] {
  const ahead = rungsAhead(draft.file)
  return Object.entries(rungsOn(draft.file, day)).flatMap(([ladder, from]) => {
    const to = Math.max(1, from - 1)
    if (to === from && ahead[ladder] === from) return []
    return [moveRung(draft, { ladder, from, to, day, why, by })]
  })
}
