import type { Draft } from './draft.ts'
import type { Button } from './message.ts'
import type { HoldRow, RungRow } from './rows.ts'
import { drillsWithheld, isStopped } from './status.ts'

/** Tells the client what changes; while drills are withheld or stopped only that something does, with no exercise named. */
export function tellChange(draft: Draft, change: { text: string; drills: readonly string[] }): void {
  if (!drillsWithheld(draft.file) && !isStopped(draft.file))
    return void draft.toClient({ kind: 'decision', ...change })
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
