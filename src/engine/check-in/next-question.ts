import { CARES } from '../../domain/care.ts'
import { answered } from '../../domain/checkin.ts'
import type { Day } from '../../domain/day.ts'
import { rank } from '../../domain/reach.ts'
import { emergencyNumber } from '../../domain/region.ts'
import { type Ask, SLOTS, type Slot } from '../../domain/reply/reading.ts'
import type { RuleId } from '../../domain/rules/assessment.ts'
import { SIGN_IDS } from '../../domain/signs/catalogue.ts'
import { assessOn } from '../coach/watch.ts'
import { activitiesQuestion } from '../course/activities.ts'
import type { Draft } from '../draft.ts'
import { lastAnswered } from '../history.ts'
import type { CheckInRow } from '../rows.ts'
import { askedSigns, isLocked, isStopped, openHold, openSigns } from '../status.ts'
import { listedSigns } from '../urgent/listed-signs.ts'
import {
  barrierQuestion,
  hintedSign,
  otherSideQuestion,
  type Question,
  ROUTINE_SIGNS,
  routineSigns,
  sideQuestion,
  valueQuestion,
  whichSign,
  yesNoQuestion,
} from './asking.ts'

/** Check-ins in a row that said nothing of signs, after which the bot asks. */
const NOT_SAID = 3
const WORSENING: readonly RuleId[] = ['reach-spread', 'below-knee', 'pain-up']
const HIGH_PAIN = 8

/** The one question that comes next about a day; null where nothing is left to ask. */
export function nextQuestion(draft: Draft, day: Day, unsure: readonly string[]): Question | null {
  const pressing = pressingQuestion(draft)
  if (pressing) return pressing
  const row = draft.file.checkIns.find((checkIn) => checkIn.day === day)
  // somebody who has just been told to seek care is not asked for numbers
  if (isLocked(draft.file)) return row ? afterNumbness(draft, row) : null
  // whoever has ended clears up a sign, and is asked for nothing of a day
  if (draft.client.stage !== 'enrolled') return null
  return waitingDay(draft) ?? aboutDay(draft, day, row, unsure)
}

/** What somebody hinted at comes first, the gravest before the others. */
function pressingQuestion(draft: Draft): Question | null {
  const { texts } = draft
  const [hinted] = [...askedSigns(draft.file)].sort(
    (a, b) =>
      CARES.indexOf(b.care) - CARES.indexOf(a.care) ||
      a.at.getTime() - b.at.getTime() ||
      // of one message: always in the same order, so that an answer meets the question that was put
      SIGN_IDS.indexOf(a.sign) - SIGN_IDS.indexOf(b.sign),
  )
  if (hinted) return hintedSign(texts, hinted.day, hinted.sign, emergencyNumber(draft.client))
  const waiting = (ask: Ask) => draft.file.asked.find((row) => row.ask === ask && row.pressing)
  const which = waiting('signs')
  if (which) return whichSign(texts, which.day, listedSigns(draft.file))
  const side = waiting('side')
  return side ? otherSideQuestion(texts, side.day) : null
}

/** New numbness in one leg has just been named: the graver signs are asked about at once. */
function afterNumbness(draft: Draft, row: CheckInRow): Question | null {
  const open = openSigns(draft.file)
  const named = open.some((s) => s.sign === 'new-numbness' && s.at.getTime() === draft.now.getTime())
  if (!named || row.denied !== null || open.some((s) => s.care === 'emergency')) return null
  return routineSigns(draft.texts, row.day)
}

/** The day was asked, and something more pressing came between. */
function waitingDay(draft: Draft): Question | null {
  const row = draft.file.asked.find((asked) => asked.ask === 'day')
  if (!row) return null
  return {
    ask: 'day',
    day: row.day,
    text: draft.texts.client.askDay,
    buttons: row.options,
    pick: null,
    pressing: false,
  }
}

function aboutDay(
  draft: Draft,
  day: Day,
  row: CheckInRow | undefined,
  unsure: readonly string[],
): Question | null {
  const { texts } = draft
  const planned = row?.planned ?? draft.file.plan?.sessions ?? 0
  const unclear = SLOTS.find((slot) => unsure.includes(slot))
  if (unclear) return valueQuestion(texts, unclear, day, planned, true)
  if (!row || !answered(row)) return null
  const missing = SLOTS.find((slot) => isMissing(slot, row))
  if (missing) return valueQuestion(texts, missing, day, planned, false)
  if (row.reach && rank(row.reach) >= 2 && draft.client.side === null) return sideQuestion(texts, day)
  return afterValues(draft, row)
}

const isMissing = (slot: Slot, row: CheckInRow): boolean =>
  row[slot] === null && !(slot === 'sessions' && row.planned === 0)

function afterValues(draft: Draft, row: CheckInRow): Question | null {
  const { texts } = draft
  const { day } = row
  if (shouldAskSigns(draft, day)) return routineSigns(texts, day)
  const asksHere = day === lastAnswered(draft.file) && !openHold(draft.file, 'park') && !isStopped(draft.file)
  const overdue = asksHere ? activitiesQuestion(draft, day, true) : null
  if (overdue) return overdue
  const comfort = asksHere && row.comfort === null ? assessOn(draft, day).comfortOf : null
  if (comfort && !refusedLately(draft, day))
    return yesNoQuestion(texts, 'comfort', day, texts.client.askComfort(comfort.ladder, comfort.rung))
  const adherence = draft.file.flags.find((flag) => flag.rule === 'adherence' && flag.closedAt === null)
  if (!adherence || adherence.figures.asked === true) return asksHere ? activitiesQuestion(draft, day) : null
  draft.put('flag', { ...adherence, figures: { ...adherence.figures, asked: true } })
  return barrierQuestion(texts, day)
}

/**
 * Signs are asked, not awaited: after three check-ins that did not say, and on any worsening; a question left
 * without an answer is asked again at the next check-in.
 */
function shouldAskSigns(draft: Draft, day: Day): boolean {
  const rows = draft.file.checkIns
    .filter((row) => row.day <= day && answered(row))
    .sort((a, b) => (a.day < b.day ? 1 : -1))
  const said = rows.findIndex(saysOfSigns)
  const silent = said < 0 ? rows : rows.slice(0, said)
  return silent.length >= NOT_SAID || silent.some((row) => isWorsening(draft, row))
}

/** All denied, one named, or one of those that the routine question asks about denied. */
const saysOfSigns = ({ denied, signs }: CheckInRow): boolean =>
  signs.length > 0 || denied === 'all' || (denied ?? []).some((sign) => ROUTINE_SIGNS.includes(sign))

const isWorsening = (draft: Draft, { day, pain }: CheckInRow): boolean =>
  (pain ?? 0) >= HIGH_PAIN ||
  draft.file.flags.some((flag) => WORSENING.includes(flag.rule) && flag.day === day)

/** A "no" to comfort holds for this many answered days, so that it is not asked again every day. */
const COMFORT_DAYS = 3

const refusedLately = ({ file }: Draft, day: Day): boolean =>
  file.checkIns
    .filter((row) => row.day < day && answered(row))
    .sort((a, b) => (a.day < b.day ? 1 : -1))
    .slice(0, COMFORT_DAYS - 1)
    .some((row) => row.comfort === false)
