import type { Draft } from '../draft.ts'
import type { ClientFile } from '../ports.ts'

/** What is kept of somebody who never began goes after so many days. */
const UNBEGUN_DAYS = 30
const DAY_MS = 24 * 3_600_000

/** Days for which a record is kept once it has ended; far fewer where there never was a plan or check-in. */
export const retentionDays = (file: ClientFile): number => {
  const begun = file.screening?.doneAt != null || file.checkIns.length > 0 || file.signs.length > 0
  return begun ? file.practice.retentionDays : Math.min(UNBEGUN_DAYS, file.practice.retentionDays)
}

/** When the record goes, counted from the end of the way, or from the invitation while that is not answered. */
export const erasedAt = (file: ClientFile): Date => {
  const from = file.client.endedAt ?? file.client.createdAt
  return new Date(from.getTime() + retentionDays(file) * DAY_MS)
}

/** The way ends here: the stage, and the clock after which everything is erased. */
export function endWay(draft: Draft, stage: 'left' | 'discharged'): void {
  draft.put('client', { ...draft.client, stage, endedAt: draft.client.endedAt ?? draft.now })
  startRetention(draft)
}

export const startRetention = (draft: Draft): void => draft.due('retention', erasedAt(draft.file))

/** An invitation that was answered with yes has no end in sight. */
export function stopRetention(draft: Draft): void {
  for (const due of draft.file.dues) if (due.kind === 'retention') draft.drop('due', due.id)
}
