import type { Draft } from './draft.ts'
import { drillsWithheld, isLocked } from './status.ts'

/** The client leaves: prompts and questions end at once. What is kept, and how to have it erased, is said. */
export function leave(draft: Draft): void {
  close(draft, 'left')
  draft.toClient({ kind: 'discharge', text: draft.texts.client.left(draft.file.practice.retentionDays) })
  draft.toCoach({ kind: 'notice', text: draft.forCoach.coach.left(draft.client.ref, isLocked(draft.file)) })
}

/** The end of the way together: where it began, where it is, what to do if it comes back. */
export function discharge(draft: Draft, summary: string): void {
  const { client } = draft.texts
  close(draft, 'discharged')
  const text = drillsWithheld(draft.file) ? client.dischargedLocked(summary) : client.discharged(summary)
  draft.toClient({ kind: 'discharge', text })
}

/** What is due about an urgent sign goes on, the morning follow-up for those discharged too; all else ends. */
function close(draft: Draft, stage: 'left' | 'discharged'): void {
  draft.put('client', { ...draft.client, stage })
  const followsUp = stage === 'discharged' && isLocked(draft.file)
  for (const due of draft.file.dues) {
    const ends = due.kind === 'reminder' || (due.kind === 'prompt' && !followsUp)
    if (ends || (stage === 'left' && due.kind === 'urgent-follow-up')) draft.drop('due', due.id)
  }
  for (const asked of draft.file.asked) if (!asked.pressing) draft.drop('asked', asked.id)
}
