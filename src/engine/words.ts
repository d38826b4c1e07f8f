import { type Day, daysBetween, weekday } from '../domain/day.ts'
import { dayAt } from '../domain/local-time.ts'
import { readReply } from '../domain/reply/read.ts'
import { ASKS, type Ask, type DayReading, type Reading } from '../domain/reply/reading.ts'
import { screen } from '../domain/signs/screen.ts'
import { answeredNow, latestAsked } from './asking.ts'
import { onNoted } from './check-in.ts'
import { applyAct, chooseByWords } from './client-acts.ts'
import type { Draft } from './draft.ts'
import { consent } from './enrol.ts'
import type { Words } from './event.ts'
import { onIntent } from './intents.ts'
import { askDay, receive } from './receipt.ts'
import { record, trail } from './record.ts'
import { plannedOn } from './rungs.ts'
import { latestPromptDay } from './schedule-prompt.ts'
import { screeningWords } from './screening.ts'
import { takeSide } from './side.ts'
import { takeSigns } from './sign-reading.ts'
import { openHold } from './status.ts'

/** A message in private from somebody who is known. */
export function onWords(draft: Draft, event: Words): void {
  const { stage } = draft.client
  if (stage === 'invited') return beforeConsent(draft, event)
  if (stage === 'screening') return duringScreening(draft, event)
  if (stage === 'discharged' && screen(event.text, draft.client.language).signs.length === 0)
    return void draft.toClient({ kind: 'notice', text: draft.texts.client.notEnrolled })
  if (event.attached !== 'none' && event.text.trim() === '')
    return void draft.toClient({ kind: 'notice', text: draft.texts.client.cannotRead(event.attached) })
  onReply(draft, event)
}

/** Nothing is stored before yes; a sign is answered all the same, and the coach hears that it happened, not the words. */
function beforeConsent(draft: Draft, event: Words): void {
  const heard = screen(event.text, draft.client.language)
  if (heard.signs.length > 0) return takeSigns(draft, { ...heard, unsure: [], denied: [] }, draft.today, '')
  const choice = chooseByWords(draft, event.text)
  if (choice?.act.do !== 'consent')
    return void draft.toClient({ kind: 'ask', asks: 'consent', text: draft.texts.client.consentUnclear })
  const said = consent(draft, choice.act.value === 'yes')
  draft.toClient({ kind: 'notice', text: said })
}

function duringScreening(draft: Draft, event: Words): void {
  const asked = latestAsked(draft)
  const question = asked?.ask.startsWith('screening:') ? asked.ask.slice('screening:'.length) : null
  const inList = question === 'signs' || question === 'known' || question === 'risks'
  const heard = screen(event.text, draft.client.language)
  if (heard.signs.length > 0 && !inList)
    return takeSigns(draft, { ...heard, denied: [] }, draft.today, event.text)
  if (openHold(draft.file, 'lock') || !question) return onReply(draft, event)
  screeningWords(draft, question, event.text)
}

/** The day to which a message belongs when it names none: that of the latest prompt, until the next one. */
function promptDayAt(draft: Draft, at: Date): Day {
  const written = dayAt(at, draft.client.zone)
  const last = latestPromptDay(draft)
  return last !== null && last <= written && daysBetween(last, written) <= 1 ? last : written
}

const isAsk = (ask: string): ask is Ask => (ASKS as readonly string[]).includes(ask)

function onReply(draft: Draft, event: Words): void {
  const asked = latestAsked(draft)
  const choice = chooseByWords(draft, event.text)
  if (choice) {
    trail(draft, 'words', event.text, asked?.day ?? null, choice.act, event.at)
    const noted = applyAct(draft, choice.act, [], event.text)
    if (noted) return onNoted(draft, noted)
  }
  const promptDay = promptDayAt(draft, event.at)
  const reading = readReply(event.text, {
    planned: plannedOn(draft.file, weekday(promptDay)),
    today: dayAt(event.at, draft.client.zone),
    promptDay,
    locale: draft.client.language,
    asked: asked && isAsk(asked.ask) ? asked.ask : null,
  })
  trail(draft, event.edits ? 'edit' : 'words', event.text, reading.day, reading, event.at)
  onReading(draft, reading, event.text, promptDay, asked?.day ?? null)
}

/** Signs first, then the values, then what was asked, then what else was meant. */
function onReading(draft: Draft, reading: Reading, text: string, promptDay: Day, askedDay: Day | null): void {
  const day = reading.day ?? promptDay
  takeSigns(draft, { ...reading, unsure: unsureSigns(draft, reading, text) }, day, text)
  if (reading.unsure.includes('day')) return askDay(draft, reading)
  const days = keepValues(draft, reading)
  const answer = reading.answer && askedDay ? answerAsked(draft, reading.answer, askedDay, text) : null
  if (answer) return onNoted(draft, { ...answer, days: [...days, ...answer.days] })
  if (
    days.length === 0 &&
    reading.signs.length === 0 &&
    reading.unsure.length === 0 &&
    reading.denied.length === 0
  )
    return onIntent(draft, reading, text)
  if (reading.side) takeSide(draft, reading.side, day, text)
  receive(draft, reading, days, day)
}

/** Of the signs heard, those that the screen (or a pain of 9 or 10) only makes likely. */
function unsureSigns(draft: Draft, reading: Reading, text: string): Reading['signs'] {
  if (!reading.unsure.includes('signs')) return []
  const heard = screen(text, draft.client.language)
  return reading.signs.filter((sign) => heard.unsure.includes(sign) || !heard.signs.includes(sign))
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

const givenOf = ({ sessions, reach, pain }: DayReading) => ({
  ...(sessions === null ? {} : { sessions }),
  ...(reach === null ? {} : { reach }),
  ...(pain === null ? {} : { pain }),
})

/** A plain yes, no or choice to the question just asked. */
function answerAsked(draft: Draft, answer: string, day: Day, text: string) {
  const asked = latestAsked(draft)
  if (!asked) return null
  const option = asked.options.find((one) => one.name === answer || one.name === `${asked.ask}-${answer}`)
  const routine =
    asked.ask === 'signs'
      ? { yes: 'one-of-these', no: 'none-of-these', none: 'none-of-these' }[answer]
      : undefined
  const chosen = option ?? asked.options.find((one) => one.name === routine)
  return chosen ? applyAct(draft, { ...chosen.act, day }, [], text) : null
}
