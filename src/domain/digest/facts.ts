import type { Care } from '../care.ts'
import type { Day } from '../day.ts'
import type { LadderId, Rungs } from '../ladder/plan.ts'
import type { Reach } from '../reach.ts'
import type { Direction, Flag, Proposal, RuleId } from '../rules/assessment.ts'
import type { SignId } from '../signs/catalogue.ts'

/** Where a client stands: of lock, parking and pause the first that applies. */
export type Standing =
  | 'invited'
  | 'screening'
  | 'parked'
  | 'active'
  | 'locked'
  | 'paused'
  | 'discharged'
  | 'left'

/** What the digest needs beside history and assessment. */
export interface WeekExtra {
  /** The alias by which the practice knows the client. */
  readonly ref: string
  readonly standing: Standing
  readonly rungs: Rungs
  readonly resting: readonly LadderId[]
  /** Last rung of ladders that a practice added itself; those of the house are known. */
  readonly lastRungs?: Readonly<Record<LadderId, number>>
  /** The answer of this week to "what got in the way", as its id or in words; null: not asked or not answered. */
  readonly barrier: string | null
  /** An emergency or same-day sign is open. */
  readonly urgentOpen: boolean
  /** Emergency and same-day signs cleared in this week; absent: none. */
  readonly cleared?: readonly ClearedSign[]
  /** An alert is open that nobody has taken up. */
  readonly alertOpen: boolean
  /** Who has an open alert, and since when; absent or null: nobody has one. */
  readonly taken?: TakenFact | null
}

/** A sign that had stopped the drills, from its day until the clearance was recorded. */
export interface ClearedSign {
  readonly sign: SignId
  readonly care: Care
  readonly day: Day
  readonly cleared: Day
}

/** An open alert is in somebody's hands, in the practice's local time. */
export interface TakenFact {
  /** As "<@id>". */
  readonly by: string
  readonly day: Day
  readonly time: string
}

/** A ladder of the plan and the rung (from 1) on which the client stands. */
export interface RungFact {
  readonly ladder: LadderId
  readonly rung: number
  /** Number of the last rung; null for a ladder that is not known. */
  readonly last: number | null
  readonly resting: boolean
}

/** The facts of one client's week, in the order in which a coach scans them. Nothing in it is prose. */
export interface WeekFacts {
  readonly ref: string
  readonly standing: Standing
  /** The client's 7 local dates: from `first` to `on`. */
  readonly first: Day
  readonly on: Day
  /** Week of the plan on `on`, from 1. */
  readonly week: number
  readonly urgentOpen: boolean
  readonly alertOpen: boolean
  readonly taken: TakenFact | null
  /** Not yet cleared, or noted where `soon`. */
  readonly signs: readonly { readonly sign: SignId; readonly care: Care; readonly day: Day }[]
  /** Such as had stopped the drills, cleared in these days: a week with an emergency must not read like any other. */
  readonly cleared: readonly ClearedSign[]
  /** Days answered of the days looked at. */
  readonly replies: { readonly answered: number; readonly days: number }
  /** Days without reply that end on `on`, 0 where that day was answered. */
  readonly silentDays: number
  /** Of the days answered; percent and 95 % Wilson interval as 0..100, null where nothing was planned. */
  readonly sessions: {
    readonly done: number
    readonly planned: number
    readonly percent: number | null
    readonly low: number | null
    readonly high: number | null
  }
  readonly reach: {
    /** Median zone of each week, at most the last 6, latest last; null: a week without any reach. */
    readonly path: readonly (Reach | null)[]
    readonly direction: Direction
    readonly baseline: Reach | null
  }
  readonly pain: {
    /** Medians of 7 days, 0..10 (halves where the count is even). */
    readonly now: number | null
    readonly weekAgo: number | null
    readonly baseline: number | null
    /** now - baseline in points and percent of baseline; below 0 is better. */
    readonly change: number | null
    readonly percent: number | null
    /** True where better by at least what matters to a person. */
    readonly meaningful: boolean | null
    readonly worst: { readonly pain: number; readonly day: Day } | null
  }
  /** Open episodes, the highest level first, then the earliest; `sign` is left out, see `signs`. */
  readonly flags: readonly Flag[]
  readonly rungs: readonly RungFact[]
  readonly barrier: string | null
  /** Days of the week that were written after the day itself. */
  readonly filledLater: readonly Day[]
  /** Days answered on which nothing was said of the urgent signs: not the same as none. */
  readonly signsNotSaid: readonly Day[]
  readonly proposal: Proposal
  /** The ladder that the proposal is about. */
  readonly ladder: LadderId | null
  readonly reasons: readonly { readonly rule: RuleId; readonly day: Day | null }[]
}
