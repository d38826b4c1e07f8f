import type { CheckIn } from '../checkin.ts'
import { daysBetween } from '../day.ts'
import { wilson } from '../trend/wilson.ts'
import type { Assessment } from './assessment.ts'
import type { StateRule } from './rule.ts'
import { answersOf, beginOf, type View } from './view.ts'

const WEEK_DAYS = 7
const FEWEST_DAYS = 4
const UNDER_PERCENT = 60

export interface SessionCount {
  readonly done: number
  readonly planned: number
  /** Days with a known number of sessions and some planned. */
  readonly days: number
}

/** A day without reply is unknown, not zero, and a day off does not count. */
export function sessionCount(
  answers: readonly { readonly sessions: number | null; readonly planned: number }[],
): SessionCount {
  const counted = answers.filter((c) => c.sessions !== null && c.planned > 0)
  return {
    done: counted.reduce((sum, c) => sum + c.sessions!, 0),
    planned: counted.reduce((sum, c) => sum + c.planned, 0),
    days: counted.length,
  }
}

/** Share of what was planned, 0..100; sessions beyond the plan count as all. Null where nothing was planned. */
export const percentDone = ({ done, planned }: SessionCount): number | null =>
  planned > 0 ? Math.min(100, (100 * done) / planned) : null

/** The answered check-ins of the 7 days up to and with the last of the view. */
const weekAnswers = (view: View): CheckIn[] =>
  answersOf(
    view.sixty.days.slice(Math.max(0, view.at - WEEK_DAYS + 1), view.at + 1).filter((d) => d !== undefined),
  )

/** Sessions and replies of those 7 days. */
export function adherenceOf(view: View): Assessment['adherence'] {
  const answers = weekAnswers(view)
  const count = sessionCount(answers)
  const interval = wilson(count.done, count.planned)
  const begin = beginOf(view.history)
  const followed = begin === null ? 0 : Math.max(0, daysBetween(begin, view.on) + 1)
  return {
    done: count.done,
    planned: count.planned,
    percent: percentDone(count),
    low: interval && interval.low * 100,
    high: interval && interval.high * 100,
    replies: answers.length,
    days: Math.min(WEEK_DAYS, followed),
  }
}

export const adherence: StateRule = {
  kind: 'state',
  id: 'adherence',
  title: 'Few of the planned sessions done',
  looksAt: 'sessions done of planned on the answered days of the last 7, days off aside',
  looksBack: WEEK_DAYS,
  condition: 'at least 4 such days and under 60 % done',
  level: 'note',
  source:
    'common practice; Newcombe 1998, Stat Med 17:857 (interval); Beinart 2013, Spine J 13:1940 (up to 70 % do not do home exercise)',
  falseAlarms: null,
  holds(view) {
    const count = sessionCount(weekAnswers(view))
    const percent = percentDone(count)
    if (count.days < FEWEST_DAYS || percent === null || percent >= UNDER_PERCENT) return null
    return { level: 'note', figures: () => ({ ...adherenceOf(view) }) }
  },
}
