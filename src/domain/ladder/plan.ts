import type { Day } from '../day.ts'

export const LADDER_IDS = [
  'settle',
  'extension',
  'unload',
  'glide',
  'open',
  'rotator',
  'extend-hip',
  'lift',
] as const
/** One of the eight of the house, or the id of a ladder that a practice added from a file. */
export type LadderId = string

/** The rung (from 1) on which a client stands on each ladder of the plan. */
export type Rungs = Readonly<Record<LadderId, number>>

/** The plan as it stands on a day. */
export interface Plan {
  /** Sessions a day, 1..6. */
  readonly sessions: number
  readonly rungs: Rungs
  /** Ladders resting that day, left out of the day's work. */
  readonly resting: readonly LadderId[]
  readonly loads: Readonly<Record<LadderId, string>>
}

/** Thresholds of the gate to the next rung; adjustable per plan. */
export interface GateSettings {
  readonly checkIns: number
  readonly days: number
  /** Share of planned sessions, 0..1. */
  readonly share: number
  readonly painAtMost: number
  /** Days between two advances. */
  readonly apart: number
}

/** One change of one rung, in order of time. */
export interface RungChange {
  readonly day: Day
  readonly ladder: LadderId
  readonly from: number
  readonly to: number
  readonly why: 'plan' | 'advance' | 'ease-back' | 'rest' | 'return' | 'clearance' | 'undo'
}

/** The gate of the house: common practice, adjustable per plan. */
export const DEFAULT_GATE: GateSettings = { checkIns: 5, days: 5, share: 0.8, painAtMost: 5, apart: 2 }
