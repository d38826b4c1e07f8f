import { addDays, type Day } from '../day.ts'
import { mean } from './median.ts'
import { type Series, valuesOf, window } from './series.ts'

/** The days that make a usual level: so many, ending so many days before. */
export interface Span {
  readonly days: number
  /** At least 1; the latest days are left out, so that a worsening does not hide itself. */
  readonly gap: number
}

/** Where one day is held against what was usual just before: 14 days that end 3 days before. */
export const USUAL: Span = { days: 14, gap: 3 }
/** Where answers add up over days: 21 that end 5 days before. Steadier, so the sum errs less (see the alarm sum). */
export const LONG_USUAL: Span = { days: 21, gap: 5 }

/**
 * A person's own usual level on a day: the mean of the answered days of the span.
 * @param need fewest values, 1 at least; null below it
 */
export function usualLevel(series: Series, on: Day, need: number, span: Span = USUAL): number | null {
  const values = valuesOf(window(series, addDays(on, -span.gap), span.days))
  return values.length >= need ? mean(values) : null
}

/**
 * The usual level on each of a run of dates, in one pass: both ends of the span move on by a day.
 * @param values one a date; null: not answered
 */
export function usualLevels(values: readonly (number | null)[], need: number, span: Span): (number | null)[] {
  let total = 0
  let count = 0
  return values.map((_, at) => {
    const entering = values[at - span.gap] ?? null
    const leaving = values[at - span.gap - span.days] ?? null
    total += (entering ?? 0) - (leaving ?? 0)
    count += Number(entering !== null) - Number(leaving !== null)
    return count > 0 && count >= need ? total / count : null
  })
}
