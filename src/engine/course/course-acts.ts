import { chooseByWords } from '../check-in/choose-by-words.ts'
import type { Draft } from '../draft.ts'
import type { Act } from '../message.ts'
import { keepSexual } from '../urgent/sexual-question.ts'
import { comeBackInWords, endAct } from './come-back.ts'
import { carryScreening, nextScreeningStep } from './screening.ts'

/** A client's press on a question of the way as a whole, from the first yes to the last word; null: none of these. */
export function courseAct(draft: Draft, act: Act, label: string): string | null {
  if (act.do === 'sexual') return draft.client.stage === 'screening' ? sexual(draft, act) : null
  return endAct(draft, act, label)
}

function sexual(draft: Draft, act: Act): string {
  const text = keepSexual(draft, act.value === 'yes')
  goOnWith(draft, draft.texts.client.screeningIntro)
  return text
}

function goOnWith(draft: Draft, intro: string): void {
  const step = nextScreeningStep(draft)
  if (step !== null) carryScreening(draft, step, intro)
}

/** The yes or no to the question on sexual function in words: one message with what comes next. */
export function sexualInWords(draft: Draft, text: string): boolean {
  const choice = chooseByWords(draft, text)
  if (choice?.act.do !== 'sexual') return false
  goOnWith(draft, keepSexual(draft, choice.act.value === 'yes'))
  return true
}

/** Words of somebody whose way has ended, with no sign in them: an answer to the last question, or null. */
export function afterEnd(draft: Draft, text: string): string | null {
  const choice = chooseByWords(draft, text)
  const said = choice ? endAct(draft, choice.act, text) : null
  if (said !== null) return said
  return draft.file.asked.some((row) => row.ask === 'come-back') ? comeBackInWords(draft, text) : null
}
