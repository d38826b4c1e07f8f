import { type Day, daysBetween } from '../day.ts'
import { type Held, oneSidedSum } from './one-sided-sum.ts'
import type { Series } from './series.ts'
import { USUAL_DAYS, USUAL_GAP } from './usual-level.ts'

export interface AlarmSettings {
  /** Allowance over the usual level, in units of the scale. */
  readonly k: number
  /** Limit of the sum, in the same units. */
  readonly h: number
  /** Fewest values for a usual level. */
  readonly need: number
}

/** Each point with its usual level. Both ends of the window only move on, so the cost grows with the days alone. */
export function heldToUsual(series: Series, need: number): Held[] {
  const start = series[0]?.day
  if (start === undefined) return []
  const at = series.map((point) => daysBetween(start, point.day))
  let first = 0
  let past = 0
  let total = 0
  return series.map(({ value }, n) => {
    const last = at[n]! - USUAL_GAP
    for (; past < n && at[past]! <= last; past += 1) total += series[past]!.value
    for (; first < past && at[first]! <= last - USUAL_DAYS; first += 1) total -= series[first]!.value
    const count = past - first
    return { value, level: count > 0 && count >= need ? total / count : null }
  })
}

/**
 * The alarm sum: a one-sided sum of the answers over the person's own usual level.
 * @returns the days on which it crosses h; it then starts again at 0
 */
export function alarmSum(series: Series, settings: AlarmSettings): Day[] {
  const steps = oneSidedSum(heldToUsual(series, settings.need), settings.k, settings.h)
  return series.filter((_, n) => steps[n]!.alarm).map((point) => point.day)
}
