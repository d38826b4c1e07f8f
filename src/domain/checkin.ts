import type { Day } from './day.ts'
import type { Reach } from './reach.ts'
import type { SignId } from './signs/catalogue.ts'

export const SIDES = ['left', 'right', 'both'] as const
export type Side = (typeof SIDES)[number]

/** What was said of the urgent signs: nothing (`null`), all denied, or some denied in so many words. */
export type Denied = readonly SignId[] | 'all' | null

/** One client's day as it stands now; earlier versions are in the trail. A null was not answered. */
export interface CheckIn {
  readonly day: Day
  /** Sessions done, 0..planned+2. */
  readonly sessions: number | null
  /** Sessions planned that day; 0 on a day off. */
  readonly planned: number
  readonly reach: Reach | null
  /** Numeric rating 0..10, worst since the last check-in. */
  readonly pain: number | null
  readonly side: Side | null
  readonly signs: readonly SignId[]
  readonly denied: Denied
  /** Local date on which the (last) answer was written; later than `day` where it was filled in afterwards. */
  readonly filled: Day
  /** True where it was written more than 36 hours after the end of the prompt's day (not counted for a gate). */
  readonly late: boolean
  /** "This rung feels comfortable", answered that day. */
  readonly comfort: boolean | null
  /** "Back to how it was before?", answered that day about the day before. */
  readonly settled: boolean | null
}

/** A day counts as answered where it holds at least one value of the three. */
export const answered = (c: CheckIn): boolean => c.sessions !== null || c.reach !== null || c.pain !== null
