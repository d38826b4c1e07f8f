/** Middle value; for an even count the mean of the two in the middle. Null for no values. Order free. */
export function median(values: readonly number[]): number | null {
  return middleOf([...values].sort((a, b) => a - b))
}

/** The same of values that are in rising order already. */
export function middleOf(sorted: ArrayLike<number>): number | null {
  if (sorted.length === 0) return null
  const half = Math.floor(sorted.length / 2)
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
}

/** Arithmetic mean; null for no values. */
export function mean(values: readonly number[]): number | null {
  if (values.length === 0) return null
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
