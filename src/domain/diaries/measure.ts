import { median } from '../trend/median.ts'
import type { Diary } from './diary.ts'

/** Days on which a rule speaks in a diary, day 0 first. */
export type DayRule = (diary: Diary) => readonly number[]

/** A rule that has spoken speaks anew after so many quiet days. */
const QUIET_DAYS = 7
const MONTH_DAYS = 30.4
const SOON_DAYS = 7

/** First days of the episodes among days on which a rule speaks, in order. */
export function episodes(days: readonly number[]): number[] {
  const sorted = [...days].sort((a, b) => a - b)
  return sorted.filter((day, n) => n === 0 || day - sorted[n - 1]! > QUIET_DAYS)
}

/** Episodes per client-month of 30.4 days; false alarms where nothing worsens. */
export function perMonth(diaries: readonly Diary[], rule: DayRule): number {
  let count = 0
  let days = 0
  for (const diary of diaries) {
    count += episodes(rule(diary)).length
    days += diary.pain.length
  }
  return days === 0 ? 0 : (count * MONTH_DAYS) / days
}

export interface Detection {
  /** Median of the days to the first alarm, the onset's day being 1; null where half are never seen. */
  readonly days: number | null
  /** Share of people seen within 7 days, 0..1. */
  readonly within7: number
}

/** How soon a rule speaks after the onset of a lasting worsening. */
export function detection(diaries: readonly Diary[], rule: DayRule): Detection {
  const waits = diaries.map((diary) => {
    const after = rule(diary).filter((day) => day >= diary.onset)
    return after.length === 0 ? Number.POSITIVE_INFINITY : Math.min(...after) - diary.onset + 1
  })
  const days = median(waits)
  return {
    days: days === null || !Number.isFinite(days) ? null : days,
    within7: waits.length === 0 ? 0 : waits.filter((wait) => wait <= SOON_DAYS).length / waits.length,
  }
}
