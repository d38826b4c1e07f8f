import { addDays, type Day } from '../day.ts'

/** One answered day of pain (0..10) or of the rank of the reach (0..6); higher is worse. */
export interface Point {
  readonly day: Day
  readonly value: number
}

/** Answered days in order of date, each at most once. A day without answer is absent. */
export type Series = readonly Point[]

/** The points from the day `first` to `last`, both included. */
export const between = (series: Series, first: Day, last: Day): Series =>
  series.filter((point) => point.day >= first && point.day <= last)

/** The points of the `days` days that end on `last`. */
export const window = (series: Series, last: Day, days: number): Series =>
  between(series, addDays(last, 1 - days), last)

export const valuesOf = (series: Series): number[] => series.map((point) => point.value)
