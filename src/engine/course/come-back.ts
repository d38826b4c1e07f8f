import { addDays } from '../../domain/day.ts'
import { instantOf } from '../../domain/local-time.ts'
import { answeredNow } from '../check-in/asked.ts'
import { trail } from '../check-in/record.ts'
import type { Draft } from '../draft.ts'
import type { Act, Button } from '../message.ts'
import { drillsWithheld, isLocked } from '../status.ts'

/** Days after the end at which one word goes out, where it is wanted. */
const COME_BACK_DAYS = 28

export const remindButtons = ({ texts: { course } }: Draft): Button[] => [
  { name: 'remind-yes', label: course.remindYes, act: { do: 'remind', value: 'yes' } },
  { name: 'remind-no', label: course.remindNo, act: { do: 'remind', value: 'no' } },
]

/** So that the answer is understood in words as well. */
export function keepEndAsked(draft: Draft, ask: 'remind' | 'come-back', buttons: readonly Button[]): void {
  draft.put('asked', {
    id: draft.id('asked', ask),
    clientId: draft.client.id,
    ask,
    day: draft.today,
    at: draft.now,
    message: draft.cause,
    pressing: false,
    options: buttons.map(({ name, label, act }) => ({ name, label, act })),
  })
}

/** Whether one word some weeks later is wanted. */
function answerRemind(draft: Draft, yes: boolean): string {
  const { client, texts, forCoach } = draft
  answeredNow(draft, 'remind')
  draft.put('client', { ...client, remind: yes })
  if (yes) draft.due('come-back', instantOf(addDays(draft.today, COME_BACK_DAYS), client.prompt, client.zone))
  else for (const due of draft.file.dues) if (due.kind === 'come-back') draft.drop('due', due.id)
  // that somebody wants no more word is no news to the coach
  if (yes)
    draft.toCoach({
      kind: 'notice',
      key: draft.id('remind'),
      text: forCoach.courseForCoach.remind(client.ref),
    })
  return texts.course.remindNoted(yes)
}

/** Four weeks have gone: one question, without a drill. */
export function onComeBackDue(draft: Draft): void {
  const { course } = draft.texts
  if (draft.client.stage !== 'discharged' || isLocked(draft.file) || drillsWithheld(draft.file)) return
  const buttons: Button[] = [
    { name: 'come-back-good', label: course.comeBackGood, act: { do: 'come-back', value: 'good' } },
    { name: 'come-back-worse', label: course.comeBackWorse, act: { do: 'come-back', value: 'worse' } },
  ]
  keepEndAsked(draft, 'come-back', buttons)
  const key = draft.id('come-back')
  draft.toClient({ kind: 'follow-up', key, asks: 'come-back', text: course.comeBack, buttons })
}

/** The answer is carried to the coach; a sign in it has been dealt with before. */
function answerComeBack(draft: Draft, words: string, isWorse: boolean, key: string): string {
  const { client, texts, forCoach, file } = draft
  answeredNow(draft, 'come-back')
  draft.toCoach({
    kind: 'notice',
    key,
    text: forCoach.courseForCoach.comeBack(client.ref, file.practice.quote ? words : null),
  })
  return isWorse ? texts.course.comeBackWorseThanks : texts.course.comeBackThanks
}

/** The words of the answer, kept in the trail like any other. */
export function comeBackInWords(draft: Draft, text: string): string {
  trail(draft, 'words', text, null, { ask: 'come-back' })
  return answerComeBack(draft, text, false, draft.id('come-back', draft.cause))
}

/** A press about the end of the way; null where it is something else. */
export function endAct(draft: Draft, act: Act, label: string): string | null {
  if (draft.client.stage !== 'discharged') return null
  if (act.do === 'remind') return answerRemind(draft, act.value === 'yes')
  if (act.do !== 'come-back') return null
  trail(draft, 'choice', label, null, act)
  return answerComeBack(draft, label, act.value === 'worse', draft.id('come-back', String(act.value)))
}
