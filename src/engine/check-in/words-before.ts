import { readReply } from '../../domain/reply/read.ts'
import { sexualInWords } from '../course/course-acts.ts'
import { consent } from '../course/enrol.ts'
import { leaveInWords } from '../course/leave.ts'
import { askCoach } from '../course/questions.ts'
import { chosenValues, screeningWords } from '../course/screening.ts'
import { questionOf } from '../course/screening-questions.ts'
import { goOnScreening, saysGoOn } from '../course/screening-waits.ts'
import type { Draft } from '../draft.ts'
import type { Words } from '../event.ts'
import { isLocked, isPressing } from '../status.ts'
import { openAlert } from '../urgent/alert.ts'
import { SEXUAL_ASK } from '../urgent/sexual-question.ts'
import { setKnownApart, takeSigns } from '../urgent/sign-reading.ts'
import { urgentText } from '../urgent/urgent.ts'
import { carry, latestAsked } from './asked.ts'
import { chooseByWords } from './choose-by-words.ts'
import { nextQuestion } from './next-question.ts'
import { readWith } from './read-with.ts'
import { trail } from './record.ts'
import { screenWords } from './screen-words.ts'

/**
 * Nothing is kept before yes. A sign is answered all the same, and the coach hears that it happened, neither the
 * words nor which; the first question of the screening asks for it again.
 */
export function beforeConsent(draft: Draft, text: string): void {
  const { client } = draft.texts
  const { signs, care } = screenWords(draft, text)
  if (signs.length > 0) {
    const told = care === 'soon' ? client.soonBefore : urgentText(draft, signs, care)
    draft.toClient({ kind: care === 'soon' ? 'notice' : 'urgent', care, text: told })
    if (care !== 'soon') openAlert(draft, { signs: [], care, words: '', told })
    return
  }
  const choice = chooseByWords(draft, text)
  if (choice?.act.do !== 'consent') {
    // a no may be said in any words; a yes is asked for in so many
    if (saysNo(draft, text)) return void draft.toClient({ kind: 'notice', text: consent(draft, false) })
    return void draft.toClient({ kind: 'ask', asks: 'consent', text: client.consentUnclear })
  }
  draft.toClient({ kind: 'notice', text: consent(draft, choice.act.value === 'yes') })
}

/**
 * A message while the first questions are asked. True where it was dealt with here: as an answer to one of them, or
 * as a sign, which comes before them.
 */
export function duringScreening(draft: Draft, event: Words): boolean {
  const { text } = event
  if (saysGoOn(draft, text) && goOnScreening(draft)) return true
  const asked = latestAsked(draft)
  const id = asked?.ask.startsWith('screening:') ? asked.ask.slice('screening:'.length) : null
  const question = id === null ? undefined : questionOf(id)
  if (isLocked(draft.file) || isPressing(draft.file)) return false
  const heard = screenWords(draft, text)
  const isCalm = heard.signs.length === 0
  if (asked?.ask === SEXUAL_ASK && isCalm)
    return sexualInWords(draft, text) || saidBeside(draft, text) || goOnScreening(draft)
  if (!question) return false
  // an age of 41 is no fever
  const isChoice =
    question.kind === 'line' ? /^\s*\d{1,3}\s*$/.test(text) : chosenValues(draft, text, question).length > 0
  // somebody without buttons may answer a line with anything, a question mark too
  const isLine = draft.client.wordsOnly && question.kind === 'line'
  if (isCalm && !isChoice && saidBeside(draft, text, isLine)) return true
  if (isCalm || isChoice) {
    screeningWords(draft, question.id, text)
    return true
  }
  trail(draft, 'words', text, draft.today, heard)
  takeSigns(draft, setKnownApart(draft, { ...heard, denied: [] }, text), draft.today, text)
  const next = nextQuestion(draft, draft.today, [])
  if (next) draft.toClient({ kind: 'ask', text: next.text, ...carry(draft, next) })
  else if (!isLocked(draft.file)) screeningWords(draft, question.id, text)
  return true
}

function saysNo({ client, today }: Draft, text: string): boolean {
  const context = { planned: 1, today, promptDay: today, asked: 'settled', locale: client.language } as const
  const { answer, intent } = readReply(text, context)
  return answer === 'no' || intent === 'leave'
}

/** "Leave" counts at any time, as the invitation says, and a question to the coach is no answer to ours. */
function saidBeside(draft: Draft, text: string, isLine = false): boolean {
  const { intent } = readWith(draft, text, draft.today, null).reading
  if (intent === 'leave') leaveInWords(draft, text)
  else if (intent === 'help') draft.toClient({ kind: 'notice', text: draft.texts.client.help })
  else if (intent === 'question' && !isLine) {
    askCoach(draft, text)
    draft.toClient({ kind: 'notice', text: draft.texts.client.questionPassedOn })
  } else return false
  return true
}
