import type { CheckIn, Side } from '../checkin.ts'
import type { Day } from '../day.ts'
import type { GateSettings, LadderId, Rungs } from '../ladder/plan.ts'
import type { Reach } from '../reach.ts'
import type { HistoryDecision } from '../rules/assessment.ts'
import type { SignId } from '../signs/catalogue.ts'

/** Columns of a diary; `date` must be there, the order is free. */
export const COLUMNS = [
  'date',
  'sessions',
  'planned',
  'reach',
  'pain',
  'signs',
  'note',
  'rungs',
  'comfort',
  'settled',
  'filled',
  'cleared',
  'noted',
] as const
export type Column = (typeof COLUMNS)[number]

/**
 * Facts about the client beside the days ("# side: left"). The last four are what an export adds, so that the rules
 * come to the same: "# decisions: 2026-03-09 advance extension", "# resting: 2026-03-09 glide",
 * "# gate: 5 5 0.8 5 2" (check-ins, days, share, pain at most, days apart), "# late: 2026-03-09" (of the days filled
 * in later just those that count as late).
 */
export const FACTS = ['side', 'baseline', 'start', 'known', 'decisions', 'resting', 'gate', 'late'] as const
export type Fact = (typeof FACTS)[number]

/** What cannot be right in a diary, and where. */
export interface Problem {
  /** Line of a CSV file, or number of the entry of `days` in JSON, from 1. */
  readonly line: number
  readonly what: Column | Fact | 'cells' | 'quote' | 'entry'
  readonly value: string
  /** Signs named in a row that has no right date: they cannot be placed on a day. */
  readonly lostSigns?: readonly SignId[]
}

/** One row as it was written. */
export interface DiaryRow {
  readonly line: number
  readonly day: Day
  /** Date on which it was written. */
  readonly filled: Day
  /** Null where nothing was answered. */
  readonly checkIn: CheckIn | null
  readonly rungs: Rungs | null
  readonly cleared: readonly SignId[]
  readonly noted: readonly SignId[]
}

/** The facts of a diary, each null or empty where not given. */
export interface DiaryFacts {
  readonly side: Side | null
  readonly baseline: { readonly reach: Reach | null; readonly pain: number | null } | null
  readonly start: Day | null
  readonly known: readonly SignId[]
  readonly decisions: readonly HistoryDecision[]
  readonly resting: readonly { readonly day: Day; readonly ladder: LadderId }[]
  /** Null: the gate of the house. */
  readonly gate: GateSettings | null
  /** Null: what was filled in two days later or more is late. */
  readonly late: readonly Day[] | null
}

/** One client's days as a file holds them, in the file's own order. */
export interface Diary extends DiaryFacts {
  readonly rows: readonly DiaryRow[]
  readonly problems: readonly Problem[]
}

/** Why a file is no diary at all. */
export type Unreadable = 'empty' | 'no-header' | 'not-commas' | 'twice-in-header' | 'not-json' | 'no-days'

/** Thrown where a file cannot be read as a diary; a diary with bad rows is read and its rows are named instead. */
export class UnreadableDiary extends Error {
  readonly why: Unreadable
  readonly detail: string
  constructor(why: Unreadable, detail = '') {
    super(`diary cannot be read: ${why}${detail === '' ? '' : ` (${detail})`}`)
    this.name = 'UnreadableDiary'
    this.why = why
    this.detail = detail
  }
}
