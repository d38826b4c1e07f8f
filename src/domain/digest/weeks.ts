import { answered, type CheckIn } from '../checkin.ts'
import { addDays, type Day, daysBetween, daysFrom } from '../day.ts'
import type { Reach } from '../reach.ts'
import type { Direction, History } from '../rules/assessment.ts'
import { compareDays, type Mark, type MarksLog, marksOf, weight } from './marks.ts'

/** `before`: earlier than the plan, so that no reply could be expected. */
export type DayState = 'answered' | 'no-reply' | 'before'

/** One date of the picture. */
export interface WeeksDay {
  readonly day: Day
  readonly state: DayState
  readonly pain: number | null
  readonly reach: Reach | null
  readonly sessions: number | null
  /** 0 on a day off; null where not known. */
  readonly planned: number | null
  /** Written after the day itself. */
  readonly filledLater: boolean
}

/** A client's last weeks as the picture shows them. Survives JSON unchanged. */
export interface Weeks {
  readonly ref: string
  readonly first: Day
  readonly on: Day
  readonly direction: Direction
  readonly baseline: { readonly reach: Reach | null; readonly pain: number | null }
  /** Every date from `first` to `on`: whole weeks that end on `on`. */
  readonly days: readonly WeeksDay[]
  /** In order of day, at most 9. */
  readonly marks: readonly Mark[]
  /** Lesser marks that were left out to keep the picture readable. */
  readonly marksLeftOut: number
}

/** What is not in the history. */
export interface WeeksLog extends MarksLog {
  readonly ref: string
  readonly direction: Direction
  readonly baseline: Weeks['baseline']
}

const WEEK = 7
/** More lines under a picture are not read on a phone. */
const MOST_MARKS = 9

/**
 * Whole weeks that end on `on`: as many as the plan is old, at most `most` (1 or more).
 * Of marks the weightier and later ones are kept.
 */
export function weeksOf(history: History, log: WeeksLog, on: Day, most = 6): Weeks {
  const start = history.start ?? history.days[0]?.day ?? on
  const old = Math.ceil((daysBetween(start, on) + 1) / WEEK)
  const first = addDays(on, 1 - WEEK * Math.max(1, Math.min(most, old)))
  const checkIns = new Map(history.days.map(({ day, checkIn }) => [day, checkIn]))
  const shown = marksOf(history, log, first, on)
  const kept = shown
    .toSorted((a, b) => weight(b) - weight(a) || compareDays(b.day, a.day))
    .slice(0, MOST_MARKS)
  return {
    ref: log.ref,
    first,
    on,
    direction: log.direction,
    baseline: log.baseline,
    days: daysFrom(first, on).map((day) => weeksDay(day, checkIns.get(day) ?? null, start)),
    marks: kept.sort((a, b) => compareDays(a.day, b.day) || weight(b) - weight(a)),
    marksLeftOut: shown.length - kept.length,
  }
}

function weeksDay(day: Day, checkIn: CheckIn | null, start: Day): WeeksDay {
  const given = checkIn !== null && answered(checkIn)
  return {
    day,
    state: given ? 'answered' : day < start ? 'before' : 'no-reply',
    pain: checkIn?.pain ?? null,
    reach: checkIn?.reach ?? null,
    sessions: checkIn?.sessions ?? null,
    planned: checkIn?.planned ?? null,
    filledLater: given && checkIn.filled > checkIn.day,
  }
}
