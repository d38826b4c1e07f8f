import type { Day } from '../day.ts'
import type { Weeks, WeeksDay } from './weeks.ts'

/** A day that has been written or changed since the digest that showed it. */
export interface RevisedDay {
  readonly day: Day
  readonly before: WeeksDay
  readonly now: WeeksDay
}

/** The days of the week up to `before.on` that are now otherwise than they were shown then. */
export function revisedDays(before: Weeks, now: Weeks): RevisedDay[] {
  return before.days.slice(-7).flatMap((then) => {
    const today = now.days.find(({ day }) => day === then.day)
    return today === undefined || isSame(then, today) ? [] : [{ day: then.day, before: then, now: today }]
  })
}

const isSame = (a: WeeksDay, b: WeeksDay): boolean =>
  a.sessions === b.sessions && a.reach === b.reach && a.pain === b.pain
