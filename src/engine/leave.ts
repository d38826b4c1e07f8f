import type { Draft } from './draft.ts'

/** The client leaves: prompts and questions end at once. What is kept, and how to have it erased, is said. */
export function leave(draft: Draft): void {
  close(draft, 'left')
  draft.toClient({ kind: 'discharge', text: draft.texts.client.left(draft.file.practice.retentionDays) })
  draft.toCoach({ kind: 'notice', text: draft.texts.coach.left(draft.client.ref) })
}

/** The end of the way together: where it began, where it is, what to do if it comes back. */
export function discharge(draft: Draft, summary: string): void {
  close(draft, 'discharged')
  draft.toClient({ kind: 'discharge', text: draft.texts.client.discharged(summary) })
}

/** What is due about an open urgent sign stays; everything else ends. */
function close(draft: Draft, stage: 'left' | 'discharged'): void {
  draft.put('client', { ...draft.client, stage })
  for (const due of draft.file.dues)
    if (due.kind === 'prompt' || due.kind === 'reminder' || stage === 'left') draft.drop('due', due.id)
  for (const asked of draft.file.asked) draft.drop('asked', asked.id)
}
