import type { Care } from '../care.ts'
import type { Day } from '../day.ts'
import type { LadderId, RungChange } from '../ladder/plan.ts'
import type { Reach } from '../reach.ts'
import type { Direction, HistoryDecision, Level, RuleId } from '../rules/assessment.ts'
import type { SignId } from '../signs/catalogue.ts'

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

/** Something that happened on a date. */
export type Mark =
  | { readonly kind: 'sign'; readonly day: Day; readonly sign: SignId; readonly care: Care }
  | {
      readonly kind: 'sign-ended'
      readonly day: Day
      readonly sign: SignId
      readonly how: 'cleared' | 'noted'
    }
  | { readonly kind: 'flag'; readonly day: Day; readonly rule: RuleId; readonly level: Level }
  | {
      readonly kind: 'decision'
      readonly day: Day
      readonly decision: HistoryDecision['decision']
      readonly ladder: LadderId | null
    }
  | {
      readonly kind: 'rung'
      readonly day: Day
      readonly ladder: LadderId
      readonly from: number
      readonly to: number
      readonly why: RungChange['why']
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
