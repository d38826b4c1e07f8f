import { addDays, type Day, daysBetween } from '../day.ts'
import { mannKendall } from './mann-kendall.ts'
import { between, type Series, valuesOf, window } from './series.ts'
import { theilSen } from './theil-sen.ts'

export const TREND_DAYS = 28
export const TREND_NEED = 10
/** Answers follow the day before; chosen by simulation: each word is then wrong in about 2 % of stable weeks. */
export const VARIANCE_FACTOR = 1.7
const Z_LIMIT = 1.96
/** Fewest answers in the first and in the last 7 days for their means to be compared. */
const END_NEED = 3

/** Least change between the first and last 7 days for a word, in points of pain and in zones of reach. */
export const LEAST_CHANGE = { pain: 1, reach: 0.5 } as const

export type TrendWord = 'improving' | 'worsening' | 'steady'

export interface WeeklyWord {
  /** Null with too few answers: 10 in 28 days, 3 of them in the first and 3 in the last 7. */
  readonly word: TrendWord | null
  /** Null below 10 answers, as are the figures after it. */
  readonly z: number | null
  readonly p: number | null
  /** Theil-Sen slope per week with its 95 % interval; below 0 is better. */
  readonly slope: number | null
  readonly low: number | null
  readonly high: number | null
  /** Answers in the 28 days. */
  readonly n: number
}

/** Sum and number of the answers of the first or the last 7 of the 28 days. */
export interface End {
  readonly sum: number
  readonly n: number
}

const endOf = (points: Series): End => ({
  sum: points.reduce((sum, { value }) => sum + value, 0),
  n: points.length,
})

/** The word for a z of Mann-Kendall; null where an end has too few answers for the two to be compared. */
export function nameTrend(z: number, first: End, last: End, leastChange: number): TrendWord | null {
  if (first.n < END_NEED || last.n < END_NEED) return null
  const change = last.sum / last.n - first.sum / first.n
  if (z > Z_LIMIT && change >= leastChange) return 'worsening'
  if (z < -Z_LIMIT && change <= -leastChange) return 'improving'
  return 'steady'
}

/** The trend of the 28 days up to `on`, in a word and in figures. Lower values are better. */
export function weeklyWord(series: Series, on: Day, leastChange: number): WeeklyWord {
  const points = window(series, on, TREND_DAYS)
  const n = points.length
  if (n < TREND_NEED) return { word: null, z: null, p: null, slope: null, low: null, high: null, n }
  const values = valuesOf(points)
  const { z, p } = mannKendall(values, VARIANCE_FACTOR)
  const perDay = theilSen(
    points.map((point) => daysBetween(on, point.day)),
    values,
  )!
  const [slope, low, high] = [perDay.slope * 7, perDay.low * 7, perDay.high * 7]
  const first = endOf(between(points, addDays(on, 1 - TREND_DAYS), addDays(on, 7 - TREND_DAYS)))
  const word = nameTrend(z, first, endOf(window(points, on, 7)), leastChange)
  return { word, z, p, slope, low, high, n }
}
