/** A value with the level it is held against; a null level (not known yet) leaves the sum as it is. */
export interface Held {
  readonly value: number
  readonly level: number | null
}

export interface SumStep {
  /** The sum after this value, before any restart. */
  readonly sum: number
  /** True where the sum is over h; it restarts at 0. */
  readonly alarm: boolean
}

/**
 * One-sided cumulative sum for a rise (Page 1954): sum = max(0, sum + value - level - k), an alarm over h.
 * @param k allowance, in units of the value: rises below it never add up
 * @param h limit of the sum, in the same units
 */
export function oneSidedSum(values: readonly Held[], k: number, h: number): SumStep[] {
  let sum = 0
  return values.map(({ value, level }) => {
    if (level === null) return { sum, alarm: false }
    const reached = Math.max(0, sum + value - level - k)
    const alarm = reached > h
    sum = alarm ? 0 : reached
    return { sum: reached, alarm }
  })
}
