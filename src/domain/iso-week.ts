import { addDays, type Day, daysBetween, WEEKDAYS, weekday } from './day.ts'

/** A calendar week as ISO 8601 writes it: "2026-W12". Weeks begin on Monday; the Thursday decides the year. */
export type IsoWeek = string

const SHAPE = /^(\d{4})-W(\d{2})$/i

const MONDAY_FIRST = [
  ...WEEKDAYS.slice(WEEKDAYS.indexOf('Mon')),
  ...WEEKDAYS.slice(0, WEEKDAYS.indexOf('Mon')),
]

/** The Monday of a day's week. */
export const mondayBefore = (day: Day): Day => addDays(day, -MONDAY_FIRST.indexOf(weekday(day)))

/** The week in which a day lies. */
export function isoWeekOf(day: Day): IsoWeek {
  const thursday = addDays(mondayBefore(day), 3)
  const year = thursday.slice(0, 4)
  const number = Math.floor(daysBetween(`${year}-01-01`, thursday) / 7) + 1
  return `${year}-W${String(number).padStart(2, '0')}`
}

/** The first day of a week; null where the text names none ("2026-W54", "week 3"). */
export function mondayOf(week: string): Day | null {
  const [, year, number] = SHAPE.exec(week.trim()) ?? []
  if (year === undefined || Number(year) < 1) return null
  const monday = addDays(mondayBefore(`${year}-01-04`), 7 * (Number(number) - 1))
  return isoWeekOf(monday) === week.trim().toUpperCase() ? monday : null
}
