import { twoSidedP } from './normal.ts'

export interface MannKendall {
  /** Later-is-higher pairs less later-is-lower pairs; above 0: rising. */
  readonly s: number
  /** Variance of s if there were no trend, corrected for ties and multiplied by the factor. */
  readonly variance: number
  /** s in standard deviations, one unit nearer to 0 (continuity); 0 where the variance is 0. */
  readonly z: number
  /** Two-sided, from the normal approximation, 0..1. */
  readonly p: number
  /** Kendall's tau-b against time, -1..1; null where not defined (all equal, fewer than 2). */
  readonly tau: number | null
}

/** Sizes of the groups of equal values. */
function groupSizes(values: readonly number[]): number[] {
  const counts = new Map<number, number>()
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1)
  return [...counts.values()]
}

const pairs = (n: number): number => (n * n - n) / 2
const weight = (n: number): number => (n * n - n) * (2 * n + 5)

/** Variance of s for n values with such groups of ties (Kendall 1975): (n(n-1)(2n+5) - sum over groups) / 18; groups of one count nothing. */
export function tiedVariance(n: number, ...groups: readonly (readonly number[])[]): number {
  let ties = 0
  for (const group of groups) for (const size of group) ties += weight(size)
  return (weight(n) - ties) / 18
}

export const tieGroups = (values: readonly number[]): number[] => groupSizes(values).filter((n) => n > 1)

/** s in standard deviations, one unit nearer to 0 (continuity); 0 where the variance is 0. */
export const zOf = (s: number, variance: number): number =>
  variance > 0 ? (s - Math.sign(s)) / Math.sqrt(variance) : 0

function score(values: readonly number[]): number {
  let s = 0
  for (let j = 1; j < values.length; j += 1) {
    for (let i = 0; i < j; i += 1) s += Math.sign(values[j]! - values[i]!)
  }
  return s
}

/**
 * Mann-Kendall test for a trend of one series (Mann 1945, Kendall 1975).
 * @param values in order of time, at distinct times
 * @param varianceFactor inflates the variance for correlation from day to day; 1 for independent values
 */
export function mannKendall(values: readonly number[], varianceFactor = 1): MannKendall {
  const n = values.length
  const s = score(values)
  const ties = tieGroups(values)
  const variance = tiedVariance(n, ties) * varianceFactor
  const z = zOf(s, variance)
  const untied = pairs(n) - ties.reduce((sum, size) => sum + pairs(size), 0)
  const tau = untied > 0 ? s / Math.sqrt(pairs(n) * untied) : null
  return { s, variance, z, p: twoSidedP(z), tau }
}
