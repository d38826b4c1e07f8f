import type { Draft } from '../draft.ts'
import { isLocked, isPressing } from '../status.ts'
import { carryScreening, nextScreeningStep } from './screening.ts'

/** A sign came between the first questions: once it is answered they go on. */
export function backToScreening(draft: Draft): void {
  if (draft.client.stage !== 'screening' || isLocked(draft.file) || isPressing(draft.file)) return
  const step = nextScreeningStep(draft)
  const waits = draft.file.asked.some((row) => row.ask.startsWith('screening:'))
  // without a form in view the question is out of sight
  if (step !== null && (!waits || draft.client.wordsOnly)) carryScreening(draft, step, '')
}
