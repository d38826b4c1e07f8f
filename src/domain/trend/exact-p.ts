/** From here on the normal approximation is good to 1e-3 and counting costs more than it gives. */
const MOST_VALUES = 60

/** Chance of each number of pairs out of order in a random order of n values (the inversion distribution). */
function inversionChances(n: number): number[] {
  let chances = [1]
  for (let size = 2; size <= n; size += 1) {
    const next = new Array<number>(chances.length + size - 1).fill(0)
    for (const [inversions, chance] of chances.entries()) {
      for (let more = 0; more < size; more += 1) next[inversions + more]! += chance / size
    }
    chances = next
  }
  return chances
}

/**
 * Exact chance of a Mann-Kendall score of s or more among n values without ties, if there is no trend.
 * Tables of it: Kendall (1975) appendix, Gilbert (1987) A18. Throws RangeError unless n is a whole number, 0..60.
 */
export function exactUpperTail(s: number, n: number): number {
  if (!Number.isInteger(n) || n < 0 || n > MOST_VALUES) {
    throw new RangeError(`exact table: n must be a whole number from 0 to ${MOST_VALUES}, got ${n}`)
  }
  const most = (n * (n - 1)) / 2
  // smallest chances first, so that rounding stays far below them
  return inversionChances(n).reduce(
    (sum, chance, inversions) => (most - 2 * inversions >= s ? sum + chance : sum),
    0,
  )
}

/** Two-sided exact p of a Mann-Kendall score s among n values without ties, 0..1. */
export const exactP = (s: number, n: number): number => Math.min(1, 2 * exactUpperTail(Math.abs(s), n))
