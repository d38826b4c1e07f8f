import type { CheckIn } from '../../../src/domain/checkin.ts'
import { addDays, type Day } from '../../../src/domain/day.ts'
import { DEFAULT_GATE, type Rungs } from '../../../src/domain/ladder/plan.ts'
import { type Reach, reachAt } from '../../../src/domain/reach.ts'
import { assess } from '../../../src/domain/rules/assess.ts'
import type { Flag, History, HistoryDay, RuleId } from '../../../src/domain/rules/assessment.ts'
import type { SignId } from '../../../src/domain/signs/catalogue.ts'

/** Day 1 of every made-up diary. */
const START: Day = '2026-03-02'
export const day = (n: number): Day => addDays(START, n - 1)

export interface Entry extends Partial<Omit<CheckIn, 'day'>> {
  readonly rungs?: Rungs
  readonly resting?: readonly string[]
  readonly cleared?: readonly SignId[]
  readonly noted?: readonly SignId[]
}

/** What a quiet day looks like; a null entry is a day without reply. */
const PLAIN = { sessions: 2, planned: 2, reach: 'thigh' as Reach, pain: 3 }

export function historyDay(n: number, entry: Entry | null): HistoryDay {
  const { rungs, resting, cleared = [], noted = [], ...given } = entry ?? {}
  const checkIn: CheckIn = {
    ...PLAIN,
    side: null,
    signs: [],
    denied: null,
    filled: day(n),
    late: false,
    comfort: null,
    settled: null,
    ...given,
    day: day(n),
  }
  return {
    day: day(n),
    checkIn: entry === null ? null : checkIn,
    ...(rungs ? { rungs } : {}),
    ...(resting ? { resting } : {}),
    cleared,
    noted,
  }
}

export function history(entries: readonly (Entry | null)[], extra: Partial<History> = {}): History {
  return {
    side: 'left',
    baseline: null,
    start: null,
    known: [],
    days: entries.map((entry, n) => historyDay(n + 1, entry)),
    decisions: [],
    gate: DEFAULT_GATE,
    ...extra,
  }
}

export const times = (n: number, entry: Entry | null = {}): (Entry | null)[] => Array(n).fill(entry)
export const pains = (...values: (number | null)[]): Entry[] => values.map((pain) => ({ pain }))
export const reaches = (...ranks: number[]): Entry[] => ranks.map((rank) => ({ reach: reachAt(rank) }))

/** The open episode of a rule on day n; undefined where none is. */
export const flagOn = (h: History, n: number, rule: RuleId): Flag | undefined =>
  assess(h, day(n)).flags.find((flag) => flag.rule === rule)

/** Numbers of the days on which an episode of the rule is open. */
export const openDays = (h: History, rule: RuleId, last = h.days.length): number[] =>
  Array.from({ length: last }, (_, n) => n + 1).filter((n) => flagOn(h, n, rule) !== undefined)

/** The whole numbers from first to last. */
export const span = (first: number, last: number): number[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, n) => first + n)
