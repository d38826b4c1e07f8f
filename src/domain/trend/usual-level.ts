import { addDays, type Day } from '../day.ts'
import { mean } from './median.ts'
import { type Series, valuesOf, window } from './series.ts'

/** The usual level looks at so many days ... */
export const USUAL_DAYS = 14
/** ... that end so many days before: the last two days are left out, so that a worsening does not hide itself. */
export const USUAL_GAP = 3

/**
 * A person's own usual level on a day: the mean of the answered days of the 14 that end 3 days before.
 * @param need fewest values; null below it
 */
export function usualLevel(series: Series, on: Day, need: number): number | null {
  const values = valuesOf(window(series, addDays(on, -USUAL_GAP), USUAL_DAYS))
  return values.length >= need ? mean(values) : null
}
