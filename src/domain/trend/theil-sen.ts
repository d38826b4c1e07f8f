import { tiedVariance, tieGroups } from './mann-kendall.ts'
import { middleOf } from './median.ts'
import { zOfConfidence } from './normal.ts'

export interface Slope {
  /** Median of the slopes of all pairs, per day. */
  readonly slope: number
  readonly low: number
  readonly high: number
}

/** Slopes of all pairs on different days, in rising order. */
export function pairSlopes(days: readonly number[], values: readonly number[]): Float64Array {
  const slopes = new Float64Array((days.length * (days.length - 1)) / 2)
  let n = 0
  for (let j = 1; j < days.length; j += 1) {
    for (let i = 0; i < j; i += 1) {
      const apart = days[j]! - days[i]!
      if (apart === 0) continue
      slopes[n] = (values[j]! - values[i]!) / apart
      n += 1
    }
  }
  return slopes.subarray(0, n).sort()
}

/** Halves go to the even neighbour, as the reference implementation (numpy) rounds. */
function roundHalfEven(x: number): number {
  const rounded = Math.round(x)
  return Math.abs(x % 1) === 0.5 && rounded % 2 !== 0 ? rounded - 1 : rounded
}

/**
 * Theil-Sen slope per day on real dates, with Sen's (1968) interval from the ranks of the pair slopes.
 * The interval takes no account of correlation from day to day: it is then too narrow.
 * @param days day numbers, gaps allowed
 * @param values one a day number
 * @returns null where no two values lie on different days
 */
export function theilSen(
  days: readonly number[],
  values: readonly number[],
  confidence = 0.95,
): Slope | null {
  const slopes = pairSlopes(days, values)
  const slope = middleOf(slopes)
  if (slope === null) return null
  const variance = tiedVariance(values.length, tieGroups(days), tieGroups(values))
  const spread = zOfConfidence(confidence) * Math.sqrt(Math.max(0, variance))
  const last = slopes.length - 1
  const upper = Math.min(roundHalfEven((slopes.length + spread) / 2), last)
  const lower = Math.max(roundHalfEven((slopes.length - spread) / 2) - 1, 0)
  return { slope, low: slopes[lower]!, high: slopes[upper]! }
}
