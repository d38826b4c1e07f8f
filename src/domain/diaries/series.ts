import { addDays, type Day, daysBetween } from '../day.ts'
import type { Series } from '../trend/series.ts'

/** Day 0 of every diary: any date would do. */
export const FIRST_DAY: Day = '2026-01-01'

/** The answered days of one scale as a dated series, as the rules read it. */
export const seriesOf = (values: readonly (number | null)[]): Series =>
  values.flatMap((value, n) => (value === null ? [] : [{ day: addDays(FIRST_DAY, n), value }]))

/** Dates as days of a diary, day 0 first. */
export const diaryDays = (days: readonly Day[]): number[] => days.map((day) => daysBetween(FIRST_DAY, day))
