import type { Care } from '../care.ts'
import type { CheckIn } from '../checkin.ts'
import type { Day } from '../day.ts'
import type { GateSettings, LadderId, Rungs } from '../ladder/plan.ts'
import type { Reach } from '../reach.ts'
import type { SignId } from '../signs/catalogue.ts'

export const DIRECTIONS = ['centralising', 'peripheralising', 'steady', 'unclear'] as const
export type Direction = (typeof DIRECTIONS)[number]

export const PROPOSALS = ['stop', 'refer', 'ease-back', 'hold', 'advance', 'none'] as const
/** In the fixed order: the first that applies is proposed. */
export type Proposal = (typeof PROPOSALS)[number]

export const LEVELS = ['note', 'hold', 'ease-back', 'same-day', 'emergency'] as const
export type Level = (typeof LEVELS)[number]

/** Hold or worse: nothing is advanced while it is open. */
export const atLeastHold = (level: Level): boolean => LEVELS.indexOf(level) >= LEVELS.indexOf('hold')

export const RULE_IDS = [
  'sign',
  'reach-spread',
  'below-knee',
  'pain-up',
  'pain-severe',
  'flare',
  'trend-pain',
  'trend-reach',
  'meaningful',
  'adherence',
  'quiet',
  'plateau',
  'gate',
  'regain',
] as const
export type RuleId = (typeof RULE_IDS)[number]

/** One day of a history: the check-in (null: no reply that day) and what else happened on it. */
export interface HistoryDay {
  readonly day: Day
  readonly checkIn: CheckIn | null
  /** Rungs in force that day; absent where not known (then no gate is judged). */
  readonly rungs?: Rungs
  /** Ladders resting that day: such days are not days on their rung. Absent: none. */
  readonly resting?: readonly LadderId[]
  /** Ids of signs ended that day: cleared by a clinician, or (soon) noted by the coach. */
  readonly cleared: readonly SignId[]
  readonly noted: readonly SignId[]
}

/** A sign that nobody has cleared (or, where `soon`, noted) yet, with the level it has now and its first day. */
export interface OpenSign {
  readonly sign: SignId
  readonly care: Care
  readonly day: Day
}

export interface HistoryDecision {
  readonly day: Day
  readonly ladder: LadderId | null
  readonly decision: 'advance' | 'hold' | 'ease-back' | 'refer'
}

/** Everything that the rules look at, for one client. Days in order, missing dates allowed. */
export interface History {
  readonly side: 'left' | 'right' | 'both' | null
  readonly baseline: { readonly reach: Reach | null; readonly pain: number | null } | null
  /** First day of the plan; null: the first day of the history. */
  readonly start: Day | null
  /** Old, unchanged, known to a clinician: noted, not flagged. */
  readonly known: readonly SignId[]
  readonly days: readonly HistoryDay[]
  /** Signs open before the first of `days`, where `days` do not go back to the beginning. Absent: none. */
  readonly openBefore?: readonly OpenSign[]
  readonly decisions: readonly HistoryDecision[]
  readonly gate: GateSettings
}

/** Figures behind a flag, by name; the sentence is made of them in text/. */
export type Figures = Readonly<Record<string, number | string | boolean | null | readonly string[]>>

/** An episode of a rule that is open on the day of the assessment. */
export interface Flag {
  readonly rule: RuleId
  readonly level: Level
  /** First day of the episode. */
  readonly day: Day
  readonly figures: Figures
  readonly source: string
}

export interface Assessment {
  readonly on: Day
  readonly direction: Direction
  readonly pain: {
    readonly median7: number | null
    readonly medianBaseline: number | null
    readonly change: number | null
    readonly percent: number | null
    readonly meaningful: boolean | null
    readonly slopePerWeek: number | null
    readonly ci: readonly [number, number] | null
    readonly p: number | null
    readonly n: number
  }
  readonly reach: {
    readonly median7: number | null
    readonly baseline: number | null
    readonly change: number | null
    readonly slopePerWeek: number | null
    readonly p: number | null
    readonly path: readonly Reach[]
  }
  readonly adherence: {
    readonly done: number
    readonly planned: number
    readonly percent: number | null
    readonly low: number | null
    readonly high: number | null
    readonly replies: number
    readonly days: number
  }
  readonly flags: readonly Flag[]
  readonly proposal: Proposal
  readonly reasons: readonly RuleId[]
  /** The ladder that the proposal is about (advance, ease-back, hold), where there is one. */
  readonly ladder: LadderId | null
  /** True where all of the gate holds but the client's own "comfortable": then it is asked. */
  readonly askComfort: boolean
  /** The rung that the question is about, where it is asked. */
  readonly comfortOf: { readonly ladder: LadderId; readonly rung: number } | null
  /** True where the latest answered day counts as a flare: the next prompt asks "back to how it was before?". */
  readonly askSettled: boolean
  /** Signs open on that day (not yet cleared, or noted where `soon`). */
  readonly openSigns: readonly OpenSign[]
}
