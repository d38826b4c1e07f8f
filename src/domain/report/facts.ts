import type { Care } from '../care.ts'
import type { Side } from '../checkin.ts'
import type { Day } from '../day.ts'
import type { RungFact, Standing } from '../digest/facts.ts'
import type { Weeks } from '../digest/weeks.ts'
import type { LadderId, RungChange } from '../ladder/plan.ts'
import type { Reach } from '../reach.ts'
import type { Direction } from '../rules/assessment.ts'
import type { SignId } from '../signs/catalogue.ts'

/** What was told before any plan, as far as a clinician needs it; null where it was not answered. */
export interface ToldAtStart {
  readonly age: number | null
  /** A date, or the client's own words. */
  readonly onset: string | null
  readonly earlier: string | null
  /** Whether a clinician had seen the client about it: "yes" or "no". */
  readonly seen: string | null
  readonly eases: string | null
  /** Ids of what changes the risk; null: not answered, which is not "none". */
  readonly risks: readonly string[] | null
  /** Old, unchanged trouble known to a clinician. */
  readonly known: readonly SignId[]
  /** The lift that the client wants back. */
  readonly lift: string | null
}

/** A week of the plan; the last may be unfinished. */
export interface WeekRow {
  readonly first: Day
  /** Median and farthest zone of the week. */
  readonly reach: Reach | null
  readonly farthest: Reach | null
  /** Median and worst pain of the week, 0..10. */
  readonly pain: number | null
  readonly worst: number | null
  readonly sessions: { readonly done: number; readonly planned: number }
  readonly replies: { readonly answered: number; readonly days: number; readonly later: number }
}

/** A sign that came up, and what became of it. */
export interface SignRow {
  readonly sign: SignId
  readonly care: Care
  readonly day: Day
  /** The client's own; null where the practice keeps them out. */
  readonly words: string | null
  readonly state: 'asked' | 'open' | 'denied' | 'cleared' | 'noted'
  /** Local date on which it ended, and by whose word; null while it has not. */
  readonly ended: Day | null
  readonly by: string | null
}

export interface ActivityRow {
  readonly name: string
  /** How hard, 0 (easy) to 10. */
  readonly first: number
  readonly last: number
  /** Day of the last score; null: asked at the beginning alone. */
  readonly day: Day | null
}

/** What was decided or changed, by day. */
export type Event =
  | {
      readonly kind: 'decision'
      readonly day: Day
      readonly decision: 'advance' | 'hold' | 'ease-back' | 'refer' | 'stop'
      readonly ladder: LadderId | null
      readonly reason: string
    }
  | {
      /** Without the coach: by the rules, on coming back, after clearance. */
      readonly kind: 'rungs'
      readonly day: Day
      readonly why: RungChange['why']
      readonly ladders: readonly LadderId[]
    }
  | {
      readonly kind: 'stop'
      readonly day: Day
      readonly why: 'lock' | 'park' | 'pause'
      /** Last day; null: still so. */
      readonly until: Day | null
      /** Whose word ended it, where that was a clinician's. */
      readonly by: string | null
    }

/** The facts of the one-page report for a clinician. Nothing in it is prose; it survives JSON unchanged. */
export interface ReportFacts {
  /** The alias by which the practice knows the client. */
  readonly ref: string
  readonly standing: Standing
  readonly side: Side | null
  readonly begun: Day
  /** Last day looked at, and the day on which the report was made. */
  readonly on: Day
  readonly made: Day
  readonly told: ToldAtStart
  readonly reach: {
    readonly baseline: Reach | null
    /** Median of the last 7 days. */
    readonly now: Reach | null
    readonly direction: Direction
  }
  /** Medians of 7 days; change = now - baseline, below 0 is better; `meaningful`: better by what matters. */
  readonly pain: {
    readonly baseline: number | null
    readonly now: number | null
    readonly change: number | null
    readonly percent: number | null
    readonly meaningful: boolean | null
  }
  /** Of all days answered; percent and 95 % Wilson interval as 0..100. */
  readonly adherence: {
    readonly done: number
    readonly planned: number
    readonly percent: number | null
    readonly low: number | null
    readonly high: number | null
  }
  readonly replies: {
    readonly answered: number
    readonly days: number
    /** Days written after the day itself. */
    readonly later: number
    /** Days answered on which nothing was said of the signs: not the same as none. */
    readonly signsNotSaid: number
  }
  readonly weeks: readonly WeekRow[]
  /** Open ones first, then the graver, then the later. */
  readonly signs: readonly SignRow[]
  readonly activities: readonly ActivityRow[]
  /** In order of day. */
  readonly events: readonly Event[]
  readonly rungs: readonly RungFact[]
  readonly picture: Weeks
}
