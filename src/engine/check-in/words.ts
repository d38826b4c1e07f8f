import { addDays, type Day, daysBetween } from '../../domain/day.ts'
import { dayAt, instantOf } from '../../domain/local-time.ts'
import { saysGotIt } from '../../domain/reply/got-it.ts'
import { answersActivities, type Beside, besideCheckIn, keepScores } from '../course/activities-answer.ts'
import { backToScreening } from '../course/back-to-screening.ts'
import { afterEnd } from '../course/course-acts.ts'
import { askCoach } from '../course/questions.ts'
import type { Draft } from '../draft.ts'
import type { Words } from '../event.ts'
import type { AskedRow } from '../rows.ts'
import { isPressing } from '../status.ts'
import { askOnTheWayAgain } from '../urgent/follow-up.ts'
import { carry, latestAsked } from './asked.ts'
import { routineSigns } from './asking.ts'
import { changeLanguage, languageWished } from './change-language.ts'
import { afterRecord } from './check-in.ts'
import { chooseByWords } from './choose-by-words.ts'
import { applyAct } from './client-acts.ts'
import type { Noted } from './noted.ts'
import { readWith } from './read-with.ts'
import { onReading } from './reading.ts'
import { receipt } from './receipt.ts'
import { trail } from './record.ts'
import { latestPromptDay } from './schedule-prompt.ts'
import { screenWords } from './screen-words.ts'
import { beforeConsent, duringScreening } from './words-before.ts'

/** A message in private from somebody who is known. */
export function onWords(draft: Draft, event: Words): void {
  const { client } = draft.texts
  const { stage } = draft.client
  const language = languageWished(draft, event.text)
  if (language !== null) return changeLanguage(draft, language)
  if (stage === 'invited') return beforeConsent(draft, event.text)
  if (event.attached !== 'none' && event.text.trim() === '')
    return void draft.toClient({ kind: 'notice', text: client.cannotRead(event.attached) })
  if (stage === 'screening' && duringScreening(draft, event)) return
  if (stage === 'discharged' && !isPressing(draft.file) && !hasSign(draft, event.text))
    return void draft.toClient({ kind: 'notice', text: wordsAfterEnd(draft, event.text) })
  if (answersActivities(draft, event.text)) return
  onReply(draft, event, besideCheckIn(draft, event.text))
}

/** An answer to the last question, a question for the coach, or nothing that is kept. */
function wordsAfterEnd(draft: Draft, text: string): string {
  const said = afterEnd(draft, text)
  if (said !== null) return said
  const { intent } = readWith(draft, text, draft.today, null).reading
  // whoever wants to begin again asks the coach for it
  if (intent !== 'question' && intent !== 'resume') return draft.texts.client.notEnrolled
  askCoach(draft, text)
  return draft.texts.client.questionPassedOn
}

const hasSign = (draft: Draft, text: string): boolean => screenWords(draft, text).signs.length > 0

/** A thumb up, of any skin, and no word. */
const THUMB = /^(?:👍\p{Emoji_Modifier}?\s*)+$/u
/** A ring of thumb and finger, and no word. */
const RING = /^👌[.!]*$/u
/** Heard, and perhaps no more than that. */
const mayOnlyBeHeard = (said: string): boolean => THUMB.test(said) || RING.test(said) || saysGotIt(said)

/** What is asked once more, where all that came may only say that it was read. */
function askedAgain(asked: AskedRow | null, said: string): ((draft: Draft, day: Day) => void) | null {
  if (asked?.ask === 'on-the-way' && mayOnlyBeHeard(said)) return askOnTheWayAgain
  return asked?.ask === 'signs' && !asked.pressing && THUMB.test(said) ? askSigns : null
}

/** Under "how did it go, and is a sign new?" a thumb may stand for either: the signs are asked about by themselves. */
function askSigns(draft: Draft, day: Day): void {
  const question = routineSigns(draft.texts, day)
  draft.toClient({
    kind: 'ask',
    text: `${draft.texts.client.thumb}\n${question.text}`,
    ...carry(draft, question),
  })
}

/** A choice in words to what was just asked, or a reply to be read. */
function onReply(draft: Draft, event: Words, beside: Beside | null): void {
  const asked = latestAsked(draft)
  const choice = chooseByWords(draft, event.text)
  if (choice) {
    trail(draft, event.edits ? 'edit' : 'words', event.text, asked?.day ?? null, choice.act)
    const noted = applyAct(draft, choice.act, choice.values, event.text)
    if (noted) return answeredInWords(draft, noted)
  }
  const promptDay = promptDayAt(draft)
  const again = askedAgain(asked, event.text.trim())
  if (again) {
    trail(draft, event.edits ? 'edit' : 'words', event.text, promptDay, {})
    return again(draft, promptDay)
  }
  const { reading, context } = readWith(draft, beside?.rest ?? event.text, promptDay, asked)
  // the context is kept too, so that the same words can be read again later
  trail(draft, event.edits ? 'edit' : 'words', event.text, reading.day, {
    ...reading,
    context,
    ...(beside ? { activities: beside.scores } : {}),
  })
  const notes = beside ? [keepScores(draft, beside.scores)] : []
  onReading(draft, { reading, text: event.text, promptDay, asked, notes })
}

/** An answer chosen in words: one receipt, which may carry the next question. */
function answeredInWords(draft: Draft, noted: Noted): void {
  afterRecord(draft, noted.days)
  const day = noted.days.at(-1) ?? draft.today
  receipt(draft, { days: [], day, notes: [noted.text], unsure: [] })
  backToScreening(draft)
}

/** The day to which a message belongs when it names none: that of the latest prompt, until the next one. */
export function promptDayAt(draft: Draft): Day {
  const { zone, prompt } = draft.client
  const written = dayAt(draft.written, zone)
  const last = latestPromptDay(draft)
  if (last === null) return written
  // written before that prompt came, and only read now: it belongs to the one before
  const day =
    draft.written < instantOf(last, prompt, zone) && draft.written < draft.now ? addDays(last, -1) : last
  return Math.abs(daysBetween(day, written)) <= 1 ? day : written
}
