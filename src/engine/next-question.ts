import { answered } from '../domain/checkin.ts'
import type { Day } from '../domain/day.ts'
import { rank } from '../domain/reach.ts'
import { SLOTS, type Slot } from '../domain/reply/reading.ts'
import type { RuleId } from '../domain/rules/assessment.ts'
import {
  barrierQuestion,
  hintedSign,
  type Question,
  routineSigns,
  sideQuestion,
  valueQuestion,
  yesNoQuestion,
} from './asking.ts'
import { nextHinted } from './client-acts.ts'
import type { Draft } from './draft.ts'
import { openHold } from './status.ts'
import { assessOn } from './watch.ts'

/** Check-ins in a row that said nothing of signs, after which the bot asks. */
const NOT_SAID = 3
const WORSENING: readonly RuleId[] = ['reach-spread', 'below-knee', 'pain-up']
const HIGH_PAIN = 8

/** The one question that comes next about a day; null where nothing is left to ask. */
export function nextQuestion(draft: Draft, day: Day, unsure: readonly string[]): Question | null {
  const { texts } = draft
  const hinted = nextHinted(draft)
  if (hinted) return hintedSign(texts, hinted.day, hinted.sign)
  // somebody who has just been told to seek care is not asked for numbers
  if (openHold(draft.file, 'lock')) return null
  const row = draft.file.checkIns.find((checkIn) => checkIn.day === day)
  const unclear = SLOTS.find((slot) => unsure.includes(slot))
  const planned = row?.planned ?? draft.file.plan?.sessions ?? 0
  if (unclear) return valueQuestion(texts, unclear, day, planned, true)
  if (!row || !answered(row)) return null
  const missing = SLOTS.find((slot) => isMissing(slot, row))
  if (missing) return valueQuestion(texts, missing, day, planned, false)
  if (row.reach && rank(row.reach) >= 2 && draft.client.side === null)
    return sideQuestion(texts, day, false, false)
  return afterValues(draft, day)
}

const isMissing = (
  slot: Slot,
  row: { planned: number; sessions: number | null; reach: string | null; pain: number | null },
): boolean => row[slot] === null && !(slot === 'sessions' && row.planned === 0)

function afterValues(draft: Draft, day: Day): Question | null {
  const { texts } = draft
  const row = draft.file.checkIns.find((checkIn) => checkIn.day === day)!
  if (row.denied === null && shouldAskSigns(draft, day))
    return routineSigns(texts, day, texts.client.routineSigns)
  const assessment = assessOn(draft, day)
  if (assessment.askComfort && row.comfort === null && day === draft.today)
    return yesNoQuestion(texts, 'comfort', day, texts.client.askComfort)
  const adherence = draft.file.flags.find((flag) => flag.rule === 'adherence' && flag.closedAt === null)
  if (adherence && adherence.figures.asked !== true) {
    draft.put('flag', { ...adherence, figures: { ...adherence.figures, asked: true } })
    return barrierQuestion(texts, day)
  }
  return null
}

/** Signs are asked, not awaited: after three check-ins that did not say, and on any worsening. */
function shouldAskSigns(draft: Draft, day: Day): boolean {
  const recent = draft.file.checkIns
    .filter((row) => row.day <= day && answered(row))
    .sort((a, b) => (a.day < b.day ? 1 : -1))
  const silent = recent.slice(0, NOT_SAID)
  if (silent.length === NOT_SAID && silent.every((row) => row.denied === null && row.signs.length === 0))
    return true
  if ((recent[0]?.pain ?? 0) >= HIGH_PAIN) return true
  return draft.file.flags.some(
    (flag) =>
      WORSENING.includes(flag.rule) &&
      flag.closedAt === null &&
      flag.openedAt.getTime() === draft.now.getTime(),
  )
}
