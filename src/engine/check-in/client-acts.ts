import { type Day, daysBetween, isDay } from '../../domain/day.ts'
import { isReach } from '../../domain/reach.ts'
import { emergencyNumber } from '../../domain/region.ts'
import type { Ask } from '../../domain/reply/reading.ts'
import { isSignId } from '../../domain/signs/catalogue.ts'
import type { Draft } from '../draft.ts'
import type { Act } from '../message.ts'
import { askedSigns, isLocked } from '../status.ts'
import { listedSigns } from '../urgent/listed-signs.ts'
import { answerSide } from '../urgent/side.ts'
import { chosenSigns, takeSigns } from '../urgent/sign-reading.ts'
import { denySign } from '../urgent/sign-rows.ts'
import { raiseSigns } from '../urgent/urgent.ts'
import { answeredNow, expect } from './asked.ts'
import { BARRIERS, type Barrier, whichSign } from './asking.ts'
import { type Noted, noted } from './noted.ts'
import { pauseInWords } from './quiet.ts'
import { BACK_DAYS } from './receipt.ts'
import { type Given, record } from './record.ts'
import { keepSame } from './same-as-before.ts'

/** A client's press or choice, or the same said in words. Null: not theirs to do. */
export function applyAct(draft: Draft, act: Act, values: readonly string[], words: string): Noted | null {
  switch (act.do) {
    case 'answer':
      if (isTooOld(draft, act)) return noted(draft.texts.client.tooOld)
      return answer(draft, act.ask as Ask, {
        value: String(act.value),
        day: act.day as Day,
        act,
        values,
        words,
      })
    case 'same':
      return keepSame(draft, act)
    case 'sign':
      return answerSign(draft, String(act.sign), act.value === 'yes', words)
    case 'pause':
      return noted(pauseInWords(draft))
    case 'seen':
      return noted(seen(draft, act.value === 'yes', act.day as Day))
    case 'on-the-way':
      answeredNow(draft, 'on-the-way')
      return noted(
        act.value === 'yes'
          ? draft.texts.client.onTheWayThanks
          : draft.texts.client.goNow(emergencyNumber(draft.client)),
      )
    default:
      return null
  }
}

/** A day longer past is closed to figures and to "none"; that there is a sign counts whenever it is told. */
function isTooOld({ today }: Draft, { ask, value, day }: Act): boolean {
  const tellsSign = ask === 'signs' && value !== 'none'
  return !tellsSign && typeof day === 'string' && isDay(day) && daysBetween(day, today) > BACK_DAYS
}

/** Seen or not, as they say: the coach hears of it, once a day, since only the coach can open the plan again. */
function seen(draft: Draft, yes: boolean, day: Day): string {
  const { coach } = draft.forCoach
  if (yes)
    draft.toCoach({ kind: 'notice', key: draft.id('seen', day), text: coach.saysSeen(draft.client.ref) })
  return yes ? draft.texts.client.seenThanks : draft.texts.client.seenNotYet(emergencyNumber(draft.client))
}

interface Chosen {
  readonly value: string
  readonly day: Day
  readonly act: Act
  /** Of a list of which several may hold. */
  readonly values: readonly string[]
  readonly words: string
}

function answer(draft: Draft, ask: Ask, { value, day, act, values, words }: Chosen): Noted {
  const { client, words: word } = draft.texts
  if (ask === 'signs')
    return answerSigns(draft, value, day, values.length > 0 ? values : [String(act.chosen ?? '')], words)
  answeredNow(draft, ask)
  const yes = value === 'yes'
  switch (ask) {
    case 'sessions':
      return keep(draft, day, { sessions: Number(value) }, client.notedSessions(Number(value)))
    case 'pain':
      return keep(draft, day, { pain: Number(value) }, client.notedPain(Number(value)))
    case 'reach':
      return isReach(value)
        ? keep(draft, day, { reach: value }, client.notedReach(word.reach(value)))
        : noted(client.notKnown)
    case 'comfort':
      return keep(draft, day, { comfort: yes }, yes ? client.comfortYes : client.comfortNo)
    case 'settled':
      return keep(draft, day, { settled: yes }, yes ? client.settledYes : client.settledNo)
    case 'side':
      return sideAnswer(draft, value, day, words)
    case 'barrier':
      return answerBarrier(draft, value, day)
    case 'day':
      return answerDay(draft, value, act)
  }
}

function keep(draft: Draft, day: Day, given: Given, text: string): Noted {
  record(draft, day, given)
  return noted(text, day)
}

function sideAnswer(draft: Draft, value: string, day: Day, words: string): Noted {
  const { client, words: word } = draft.texts
  const { side, sign } = answerSide(draft, value, day)
  if (side === null) return noted(client.notKnown)
  const text = client.notedSide(word.side(side))
  if (sign) raiseSigns(draft, [sign], day, words || text)
  return noted(text, day)
}

/** What gets in the way: kept with the open episode and told to the coach, once however often it is pressed. */
function answerBarrier(draft: Draft, value: string, day: Day): Noted {
  const barrier = BARRIERS.find((known) => known === value) ?? ('other' as Barrier)
  const flag = draft.file.flags.find((row) => row.rule === 'adherence' && row.closedAt === null)
  if (flag) draft.put('flag', { ...flag, figures: { ...flag.figures, barrier } })
  draft.toCoach({
    kind: 'notice',
    key: draft.id('barrier', day, barrier),
    text: draft.forCoach.coach.barrier(draft.client.ref, draft.forCoach.client.barrier[barrier]),
  })
  return noted(draft.texts.client.barrierThanks)
}

/** The day was asked back: the values that came with the words are kept under the day now named. */
function answerDay(draft: Draft, value: string, act: Act): Noted {
  if (!isDay(value)) return noted(draft.texts.client.dayDropped)
  const given: { -readonly [K in keyof Given]: Given[K] } = {}
  if (typeof act.sessions === 'number') given.sessions = act.sessions
  if (typeof act.pain === 'number') given.pain = act.pain
  if (typeof act.reach === 'string' && isReach(act.reach)) given.reach = act.reach
  return keep(draft, value, given, draft.texts.client.dayKept(value))
}

/** "None of these", "one of these", or the ones chosen from the list. */
function answerSigns(draft: Draft, value: string, day: Day, chosen: readonly string[], words: string): Noted {
  const { client } = draft.texts
  if (value === 'none') return denyAll(draft, day)
  const signs = chosen.filter(isSignId)
  if (value === 'these' && signs.length > 0) {
    answeredNow(draft, 'signs')
    const heard = chosenSigns(draft, signs)
    takeSigns(draft, heard, day, words || draft.forCoach.client.ticked)
    return noted(heard.unsure.length < signs.length ? client.signsKept : client.signsHeard, day)
  }
  // there is one, and which is not said: drills wait, and silence counts as yes
  expect(draft, whichSign(draft.texts, day, listedSigns(draft.file)))
  return noted(client.signsSome)
}

/** Denied, which earns no all-clear: the answer repeats when to call. A later hint is not denied by an older press. */
function denyAll(draft: Draft, day: Day): Noted {
  for (const row of askedSigns(draft.file)) if (row.day <= day) denySign(draft, row.sign)
  answeredNow(draft, 'signs')
  record(draft, day, { denied: 'all' })
  const { client } = draft.texts
  return noted(isLocked(draft.file) ? client.stillLocked : client.signsNone, day)
}

function answerSign(draft: Draft, sign: string, yes: boolean, words: string): Noted | null {
  if (!isSignId(sign)) return null
  const row = askedSigns(draft.file).find((asked) => asked.sign === sign)
  if (!row) return noted(draft.texts.client.alreadyAnswered)
  answeredNow(draft, 'signs')
  if (yes) {
    raiseSigns(draft, [sign], row.day, row.words || words)
    return noted(draft.texts.client.signsKept, row.day)
  }
  denySign(draft, sign)
  const before = draft.file.checkIns.find((checkIn) => checkIn.day === row.day)?.denied ?? null
  if (before !== 'all') record(draft, row.day, { denied: [...(before ?? []), sign] })
  return noted(draft.texts.client.signNo, row.day)
}
