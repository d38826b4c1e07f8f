import { tiedVariance, zOf } from './mann-kendall.ts'
import { nameTrend, TREND_DAYS, TREND_NEED, type TrendWord, VARIANCE_FACTOR } from './weekly-word.ts'

/** Highest value of either scale: pain 0..10, ranks of the reach 0..6. */
const MOST = 10
const WEEK_DAYS = 7

/** How many values lie below it, less how many above, by how often each whole number occurs. */
function surplus(counts: readonly number[], value: number): number {
  let sum = 0
  for (let other = 0; other < value; other += 1) sum += counts[other]!
  for (let other = value + 1; other <= MOST; other += 1) sum -= counts[other]!
  return sum
}

/** Sum and number of the answers of some last dates. */
class Sliding {
  sum = 0
  n = 0

  take(value: number | null | undefined, sign: 1 | -1): void {
    if (value === null || value === undefined) return
    this.sum += sign * value
    this.n += sign
  }
}

/** The score of Mann-Kendall and the groups of ties, kept up as the oldest value goes and a new one comes. */
class Score {
  readonly counts: number[] = Array(MOST + 1).fill(0)
  s = 0
  n = 0

  add(value: number | null): void {
    if (value === null) return
    this.s += surplus(this.counts, value)
    this.counts[value]! += 1
    this.n += 1
  }

  dropOldest(value: number | null | undefined): void {
    if (value === null || value === undefined) return
    this.counts[value]! -= 1
    this.s += surplus(this.counts, value)
    this.n -= 1
  }
}

/**
 * The weekly word on each date, as `weeklyWord` gives it on one, in a single pass: states are followed back over
 * many dates, and counting the pairs anew on each would make a long history cost more than a short one.
 * @param values one a date, whole numbers 0..10; null: not answered
 */
export function slidingWords(values: readonly (number | null)[], leastChange: number): (TrendWord | null)[] {
  const score = new Score()
  const [first, last] = [new Sliding(), new Sliding()]
  return values.map((value, at) => {
    score.dropOldest(values[at - TREND_DAYS])
    score.add(value)
    last.take(value, 1)
    last.take(values[at - WEEK_DAYS], -1)
    first.take(values[at - TREND_DAYS + WEEK_DAYS], 1)
    first.take(values[at - TREND_DAYS], -1)
    if (score.n < TREND_NEED) return null
    const z = zOf(score.s, tiedVariance(score.n, score.counts) * VARIANCE_FACTOR)
    return nameTrend(z, first, last, leastChange)
  })
}
