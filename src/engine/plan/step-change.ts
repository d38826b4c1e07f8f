import type { Draft } from '../draft.ts'
import type { Button } from '../message.ts'
import type { HoldRow, RungRow } from '../rows.ts'
import { drillsWithheld, isStopped } from '../status.ts'

/** As many drills as one message tells in full; more of them are listed, for somebody who has done them before. */
const IN_FULL = 2

/**
 * Tells the client what changes, with how the drills named are done and when to stop; while drills are withheld or
 * stopped only that something does, with no exercise named.
 */
export function tellChange(
  draft: Draft,
  { text, drills }: { text: string; drills: readonly string[] },
): void {
  const { plan } = draft.file
  if (!drillsWithheld(draft.file) && !isStopped(draft.file)) {
    const detail = drills.length > IN_FULL ? 'short' : 'full'
    const how = plan && draft.texts.client.stepDrills(drills, plan.sessions, plan.loads, detail)
    const whole = how && drills.length > 0 ? `${text}\n\n${how}` : text
    return void draft.toClient({ kind: 'decision', text: whole, drills })
  }
  draft.toClient({ kind: 'decision', text: draft.texts.client.changesLater })
}

/** Undoes what was changed without the coach. */
export function undoButton(draft: Draft, moved: readonly RungRow[], rested: readonly HoldRow[]): Button[] {
  if (moved.length + rested.length === 0) return []
  const ids = (rows: readonly { id: string }[]): string => rows.map((row) => row.id).join(' ')
  return [
    {
      name: 'undo',
      label: draft.forCoach.coach.undo,
      act: { do: 'undo', rungs: ids(moved), rests: ids(rested) },
    },
  ]
}
