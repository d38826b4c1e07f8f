import { DateTime } from 'luxon'
import type { Day } from '../../domain/day.ts'

const written = (day: Day, format: string): string =>
  DateTime.fromISO(day, { zone: 'utc', locale: 'es' }).toFormat(format)

/** "12 mar" */
export const shortDate = (day: Day): string => written(day, 'd LLL')
/** "jue 12 mar" */
export const date = (day: Day): string => written(day, 'ccc d LLL')
/** "jue 12 mar 2026" */
export const fullDate = (day: Day): string => written(day, 'ccc d LLL yyyy')
/** "jueves" */
export const weekdayName = (day: Day): string => written(day, 'cccc')

/** A number with a decimal comma: "4,5". */
export const number = (value: number, most = 1): string =>
  value.toLocaleString('es', { maximumFractionDigits: most })

export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`
