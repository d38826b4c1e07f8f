import { afterRecord } from './check-in/check-in.ts'
import type { Noted } from './check-in/noted.ts'
import { receipt } from './check-in/receipt.ts'
import { carryScreening, nextScreeningStep } from './course/screening.ts'
import type { Draft } from './draft.ts'
import { isLocked, isPressing } from './status.ts'

/** An answer chosen in words: one receipt, which may carry the next question. */
export function answeredByAct(draft: Draft, noted: Noted): void {
  afterRecord(draft, noted.days)
  const day = noted.days.at(-1) ?? draft.today
  receipt(draft, { days: [], day, notes: [noted.text], unsure: [] })
  backToScreening(draft)
}

/** A sign came between the first questions: once it is answered they go on. */
export function backToScreening(draft: Draft): void {
  if (draft.client.stage !== 'screening' || isLocked(draft.file) || isPressing(draft.file)) return
  const step = nextScreeningStep(draft)
  const waits = draft.file.asked.some((row) => row.ask.startsWith('screening:'))
  if (step !== null && !waits) carryScreening(draft, step, '')
}
