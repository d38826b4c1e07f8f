import { median } from '../trend/median.ts'
import type { Diary } from './diary.ts'

/** Which of the days on which a rule speaks are asked for; those outside may be given or left out. */
export interface Asked {
  /** First and last day, both included. */
  readonly from: number
  readonly to: number
  /** Only what speaks of a worsening: to say "better" is no false alarm on an improving diary. */
  readonly worse: boolean
}

/** Days on which a rule speaks in a diary, day 0 first. */
export type DayRule = (diary: Diary, asked: Asked) => readonly number[]

/** What one rule said in one diary. */
export interface Spoken {
  readonly days: readonly number[]
  /** Days of the diary. */
  readonly length: number
  readonly onset: number
}

/** A rule that has spoken speaks anew after so many quiet days. */
const QUIET_DAYS = 7
const MONTH_DAYS = 30.4
const SOON_DAYS = 7
/** An alarm later than so many days after the onset is no answer to it: some rules speak now and then by chance. */
export const WATCHED_DAYS = 28

/** First days of the episodes among days on which a rule speaks, in order. */
export function episodes(days: readonly number[]): number[] {
  const sorted = [...days].sort((a, b) => a - b)
  return sorted.filter((day, n) => n === 0 || day - sorted[n - 1]! > QUIET_DAYS)
}

function monthly(diaries: readonly Spoken[], count: (days: readonly number[]) => number): number {
  const days = diaries.reduce((sum, diary) => sum + diary.length, 0)
  const counted = diaries.reduce((sum, diary) => sum + count(diary.days), 0)
  return days === 0 ? 0 : (counted * MONTH_DAYS) / days
}

/** Episodes per client-month of 30.4 days; false alarms where nothing worsens. */
export const perMonth = (diaries: readonly Spoken[]): number =>
  monthly(diaries, (days) => episodes(days).length)

/** Every time counted, per client-month of 30.4 days. */
export const timesPerMonth = (diaries: readonly Spoken[]): number => monthly(diaries, (days) => days.length)

export interface Detection {
  /** Median of the days to the first alarm, the onset's day being 1; null where half are not seen in 28 days. */
  readonly days: number | null
  /** Share of people seen within 7 days, 0..1. */
  readonly within7: number
}

/** How soon a rule speaks after the onset of a lasting worsening. */
export function detection(diaries: readonly Spoken[]): Detection {
  const waits = diaries.map(({ days, onset }) => {
    const after = days.filter((day) => day >= onset && day < onset + WATCHED_DAYS)
    return after.length === 0 ? Number.POSITIVE_INFINITY : Math.min(...after) - onset + 1
  })
  const days = median(waits)
  return {
    days: days === null || !Number.isFinite(days) ? null : days,
    within7: waits.length === 0 ? 0 : waits.filter((wait) => wait <= SOON_DAYS).length / waits.length,
  }
}
