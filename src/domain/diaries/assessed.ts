import { addDays } from '../day.ts'
import { DEFAULT_GATE } from '../ladder/plan.ts'
import { reachAt } from '../reach.ts'
import { assess } from '../rules/assess.ts'
import type { Flag, History, HistoryDay } from '../rules/assessment.ts'
import type { Diary } from './diary.ts'
import { FIRST_DAY } from './series.ts'

/** The open flags at the end of each day of a diary, from a first day on. */
export interface AssessedDay {
  /** Day of the diary, day 0 first. */
  readonly at: number
  readonly flags: readonly Flag[]
}

function historyDay(at: number, pain: number, reach: number): HistoryDay {
  const day = addDays(FIRST_DAY, at)
  return {
    day,
    // the model knows pain and reach alone: no sessions, so that no rule about them is judged
    checkIn: {
      day,
      sessions: null,
      planned: 0,
      reach: reachAt(reach),
      pain,
      side: null,
      signs: [],
      denied: 'all',
      filled: day,
      late: false,
      comfort: null,
      settled: null,
    },
    cleared: [],
    noted: [],
  }
}

/** A made-up diary as the rules read a client's: the plan begins on day 0, no baseline from a screening. */
export function historyOfDiary({ pain, reach }: Diary): History {
  return {
    side: 'left',
    baseline: null,
    start: FIRST_DAY,
    known: [],
    days: pain.flatMap((value, at) => (value === null ? [] : [historyDay(at, value, reach[at]!)])),
    decisions: [],
    gate: DEFAULT_GATE,
  }
}

const KEPT = new WeakMap<Diary, Map<string, readonly AssessedDay[]>>()

/**
 * Assesses each day from first to last (both included) as it came. Kept as long as the diary is, since many rules
 * are read from the same assessments.
 */
export function assessedDays(diary: Diary, from: number, to: number): readonly AssessedDay[] {
  const spans = KEPT.get(diary) ?? new Map<string, readonly AssessedDay[]>()
  KEPT.set(diary, spans)
  const span = `${from} ${to}`
  const kept = spans.get(span)
  if (kept) return kept
  const history = historyOfDiary(diary)
  const days: AssessedDay[] = []
  for (let at = from; at <= to; at += 1)
    days.push({ at, flags: assess(history, addDays(FIRST_DAY, at)).flags })
  spans.set(span, days)
  return days
}
