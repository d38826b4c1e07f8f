import { type Care, higherCare } from '../../domain/care.ts'
import type { Day } from '../../domain/day.ts'
import type { Ask, DayReading, Reading } from '../../domain/reply/reading.ts'
import { isSignId, type SignId } from '../../domain/signs/catalogue.ts'
import type { Screening } from '../../domain/signs/screening.ts'
import { backToScreening } from '../course/back-to-screening.ts'
import { askCoach } from '../course/questions.ts'
import type { Draft } from '../draft.ts'
import type { AskedRow } from '../rows.ts'
import { isLocked, isPressing, openSigns } from '../status.ts'
import { answerSide, hearSide } from '../urgent/side.ts'
import { type Heard, setKnownApart, takeSigns } from '../urgent/sign-reading.ts'
import { careOfCause } from '../urgent/sign-rows.ts'
import { urgentText } from '../urgent/urgent.ts'
import { answeredNow, expect } from './asked.ts'
import { afterRecord } from './check-in.ts'
import { applyAct } from './client-acts.ts'
import { onIntent } from './intents.ts'
import type { Noted } from './noted.ts'
import { dayQuestion, receipt } from './receipt.ts'
import { record } from './record.ts'
import { screenWords } from './screen-words.ts'

export interface Said {
  readonly reading: Reading
  readonly text: string
  readonly promptDay: Day
  /** The question that the reply was read against. */
  readonly asked: AskedRow | null
  /** What was noted of the message before it was read. */
  readonly notes: readonly string[]
}

/** Signs first, all that were heard at once; then the values, what was asked, and what else was meant. */
export function onReading(draft: Draft, said: Said): void {
  const { reading, text, promptDay } = said
  const day = reading.day ?? promptDay
  const side = sideHeard(draft, said, day)
  const hint = hintAnswered(said)
  const heard = setKnownApart(draft, heardOf(draft, said, hint), text)
  const fresh = takeSigns(draft, withSign(heard, side?.sign ?? null), hint ? hint.day : day, text)
  const care = higherCare(fresh, careOfCause(draft))
  // no talk of sessions to somebody who writes of self-harm; the words are in the trail
  if (care === 'emergency' && heard.signs.includes('self-harm')) return keepWhole(draft, reading)
  const isDayUnclear = reading.unsure.includes('day')
  const days =
    isDayUnclear && reading.day === null ? keepForLater(draft, reading) : keepValues(draft, reading)
  const answer = hint || side?.asked ? null : answerAsked(draft, said)
  const notes = [
    ...said.notes,
    hint ? hintNote(draft, hint) : saysOne(draft, said, hint),
    side?.note ?? '',
    answer?.text ?? '',
    isDayUnclear && reading.day !== null ? draft.texts.client.tooFarBack : '',
    questionPassedOn(draft, said, days),
    signNote(draft, text, heard, care),
  ].filter(Boolean)
  const touched = [...days, ...(answer?.days ?? []), ...(reading.denied.length > 0 ? [day] : [])]
  if (touched.length === 0 && notes.length === 0 && nothingAsked(draft, reading) && care === 'none')
    return onIntent(draft, reading, text)
  afterRecord(draft, touched)
  receipt(draft, {
    days,
    day: days.at(-1) ?? answer?.days.at(-1) ?? day,
    notes,
    unsure: reading.unsure,
    same: reading.same,
  })
  backToScreening(draft)
}

/** While care is sought nobody is asked for numbers, so that what is unclear is answered as words are. */
const nothingAsked = (draft: Draft, reading: Reading): boolean =>
  (reading.unsure.length === 0 || isLocked(draft.file)) && !isPressing(draft.file)

/** The yes or no to a sign that was hinted at before. */
interface Hint {
  readonly sign: SignId
  readonly yes: boolean
  readonly day: Day
}

function hintAnswered({ reading, asked }: Said): Hint | null {
  const act = asked?.options[0]?.act
  if (!asked?.pressing || act?.do !== 'sign' || (reading.answer !== 'yes' && reading.answer !== 'no'))
    return null
  const sign = String(act.sign)
  return isSignId(sign) ? { sign, yes: reading.answer === 'yes', day: asked.day } : null
}

const hintNote = (draft: Draft, hint: Hint): string =>
  hint.yes ? draft.texts.client.signsKept : draft.texts.client.signNo

/**
 * All that was heard of signs, with the answer to the sign asked about; a plain "no" to it denies that one only.
 * What a number of pain alone makes likely is asked about once the number is written down.
 */
function heardOf(draft: Draft, { reading, text }: Said, hint: Hint | null): Heard {
  const inWords = withoutNumber(screenWords(draft, text))
  if (!hint) return { signs: inWords.signs, unsure: inWords.unsure, denied: reading.denied }
  answeredNow(draft, 'signs')
  const others = inWords.signs.filter((sign) => sign !== hint.sign)
  if (!hint.yes)
    return { signs: others, unsure: inWords.unsure, denied: [...new Set([...inWords.denied, hint.sign])] }
  return {
    signs: [hint.sign, ...others],
    unsure: inWords.unsure.filter((sign) => sign !== hint.sign),
    denied: inWords.denied,
  }
}

/** Severe pain told by its number alone is asked about once a day, when the number is written down. */
function withoutNumber({ signs, unsure, denied, evidence }: Screening): Heard {
  const quotes = evidence.filter(({ sign }) => sign === 'severe-unrelenting')
  const byNumber = unsure.includes('severe-unrelenting') && quotes.every(({ words }) => /\d/.test(words))
  const rest = (ids: readonly SignId[]) => ids.filter((sign) => !byNumber || sign !== 'severe-unrelenting')
  return { signs: rest(signs), unsure: rest(unsure), denied }
}

/** "Yes" to the routine question, or to "which of these": there is one, and which is asked. */
function saysOne(draft: Draft, { reading, asked, text }: Said, hint: Hint | null): string {
  const some = !hint && asked?.ask === 'signs' && reading.answer === 'yes' && reading.signs.length === 0
  if (!some) return ''
  return applyAct(draft, { do: 'answer', ask: 'signs', value: 'some', day: asked.day }, [], text)?.text ?? ''
}

const withSign = (heard: Heard, sign: SignId | null): Heard =>
  sign === null
    ? heard
    : {
        ...heard,
        signs: [...new Set([...heard.signs, sign])],
        unsure: heard.unsure.filter((one) => one !== sign),
      }

interface SideHeard {
  readonly sign: SignId | null
  readonly note: string
  readonly asked: boolean
}

/** The leg, as the answer to the question or in passing. */
function sideHeard(draft: Draft, { reading, asked }: Said, day: Day): SideHeard | null {
  const { client, words } = draft.texts
  if (asked?.ask === 'side' && (reading.answer || reading.side)) {
    const told = answerSide(draft, String(reading.side ?? reading.answer), asked.day)
    const note = told.side ? client.notedSide(words.side(told.side)) : client.notKnown
    return { sign: told.sign, note, asked: true }
  }
  if (!reading.side) return null
  return { sign: hearSide(draft, reading.side, day), note: '', asked: false }
}

/** Writes every day of the message; gives those written, earliest first. */
function keepValues(draft: Draft, reading: Reading): Day[] {
  const written = [reading, ...reading.others].flatMap((one) => {
    const given = givenOf(one)
    if (one.day === null || Object.keys(given).length === 0) return []
    record(draft, one.day, given)
    for (const slot of Object.keys(given)) answeredNow(draft, slot as Ask)
    return [one.day]
  })
  return [...new Set(written)].sort()
}

/** Kept without a word where it is a whole check-in; half of one may be a turn of phrase ("end it all"). */
function keepWhole(draft: Draft, reading: Reading): void {
  if (reading.missing.length === 0 && reading.unsure.length === 0)
    afterRecord(draft, keepValues(draft, reading))
}

/** The day was too far back or not to be made out: the other days are kept, this one is asked about. */
function keepForLater(draft: Draft, reading: Reading): Day[] {
  if (!isLocked(draft.file)) expect(draft, dayQuestion(draft, reading))
  return keepValues(draft, reading)
}

const givenOf = ({ sessions, reach, pain }: DayReading) => ({
  ...(sessions === null ? {} : { sessions }),
  ...(reach === null ? {} : { reach }),
  ...(pain === null ? {} : { pain }),
})

/** A plain yes, no or choice to the question just asked. */
function answerAsked(draft: Draft, { reading, asked, text }: Said): Noted | null {
  const { answer } = reading
  const stillAsked = asked && draft.file.asked.some((row) => row.id === asked.id)
  if (!answer || !asked || !stillAsked || asked.ask === 'signs') return null
  const names = [
    answer,
    `${asked.ask}-${answer}`,
    ...(asked.ask === 'on-the-way' ? [ON_THE_WAY[answer]] : []),
  ]
  const chosen = asked.options.find((one) => names.includes(one.name))
  return chosen ? applyAct(draft, { ...chosen.act, day: asked.day }, [], text) : null
}

const ON_THE_WAY: Readonly<Record<string, string>> = { yes: 'on-the-way', no: 'not-yet' }

/** A question beside a check-in is carried to the coach as well. */
function questionPassedOn(draft: Draft, { reading, text }: Said, days: readonly Day[]): string {
  if (reading.intent !== 'question' || days.length === 0) return ''
  askCoach(draft, text)
  return draft.texts.client.questionPassedOn
}

/** An emergency that goes on is answered by what to do, and not by where that was written. */
function heardBefore(draft: Draft, heard: Heard): string {
  const { client } = draft.texts
  const urgent = openSigns(draft.file).filter(
    ({ sign, care }) => care === 'emergency' && heard.signs.includes(sign),
  )
  if (urgent.length > 0)
    return urgentText(
      draft,
      urgent.map(({ sign }) => sign),
      'emergency',
    )
  return heard.signs.length > 0 ? client.signOpen : client.signKnown
}

/** What is said of signs that led to no message of their own. */
function signNote(draft: Draft, text: string, heard: Heard, care: Care): string {
  const { client } = draft.texts
  if (care !== 'none') return ''
  if (heard.unsure.length > 0) return ''
  if (screenWords(draft, text).signs.length > 0) return heardBefore(draft, heard)
  return heard.denied.includes('all') ? client.signsNone : heard.denied.length > 0 ? client.signNo : ''
}
