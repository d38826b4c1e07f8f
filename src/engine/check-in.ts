import type { Day } from '../domain/day.ts'
import { carry } from './asking.ts'
import type { Noted } from './client-acts.ts'
import type { Draft } from './draft.ts'
import { lastAnswered } from './history.ts'
import { nextQuestion } from './next-question.ts'
import { resume, returnLower } from './quiet.ts'
import { openHold } from './status.ts'
import { watch } from './watch.ts'

/** After any day was written: the pause that came by itself ends, a long gap lowers the rungs, the rules look. */
export function afterRecord(draft: Draft, days: readonly Day[]): void {
  if (days.length === 0) return
  const [first, latest] = [[...days].sort()[0]!, [...days].sort().at(-1)!]
  const lastBefore = lastAnswered(draft.file, first)
  if (openHold(draft.file, 'pause')?.reason === 'quiet') resume(draft, 'client')
  if (lastAnswered(draft.file) === latest) returnLower(draft, lastBefore, first)
  // late days change what every later day says: the rules look again at the latest answered day
  watch(draft, lastAnswered(draft.file) ?? latest)
}

/** An answer in words: one receipt, which may carry the next question. */
export function onNoted(draft: Draft, noted: Noted): void {
  afterRecord(draft, noted.days)
  const day = noted.days.at(-1) ?? draft.today
  const question = nextQuestion(draft, day, [])
  const asks = question ? carry(draft, question) : {}
  draft.toClient({
    kind: 'receipt',
    text: [noted.text, question?.text].filter(Boolean).join('\n\n'),
    ...asks,
  })
}

/** An answer by a press: the message changes in place, and the next question is a message of its own. */
export function afterPress(draft: Draft, noted: Noted): void {
  afterRecord(draft, noted.days)
  const day = noted.days.at(-1)
  const question = day ? nextQuestion(draft, day, []) : null
  if (
    question &&
    !draft.file.asked.some(
      (asked) => asked.ask === question.ask && asked.at.getTime() === draft.now.getTime(),
    )
  )
    draft.toClient({ kind: 'ask', text: question.text, ...carry(draft, question) })
}
