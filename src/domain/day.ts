/** A client's local calendar date, ISO `YYYY-MM-DD`. Arithmetic here is on dates alone: no clock, no zone. */
export type Day = string

const DAY_MS = 86_400_000
const ISO = /^(\d{4})-(\d{2})-(\d{2})$/

/** Monday first, as ISO 8601 counts. */
export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const
export type Weekday = (typeof WEEKDAYS)[number]

/** Days of a common year before each month. */
const BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334] as const
/** Number of 1 January 1970. */
const EPOCH = 719_163

const digit = (day: Day, at: number): number => day.charCodeAt(at) - 48
const twoDigits = (day: Day, at: number): number => 10 * digit(day, at) + digit(day, at + 1)

/** Days since the eve of 1 January of year 1, Gregorian. By its digits: the rules count days all the time, and `Date` is slow. */
function numberOf(day: Day): number {
  const month = twoDigits(day, 5)
  const year = 100 * twoDigits(day, 0) + twoDigits(day, 2)
  // leap days fall at the end of February: up to then those of the year before count
  const full = month > 2 ? year : year - 1
  const leaps = Math.floor(full / 4) - Math.floor(full / 100) + Math.floor(full / 400)
  return 365 * (year - 1) + leaps + (BEFORE_MONTH[month - 1] ?? Number.NaN) + twoDigits(day, 8)
}

/** The spelling of each number asked for so far: the dates in use are few. */
const SPELT = new Map<number, Day>()

function spell(number: number): Day {
  const known = SPELT.get(number)
  if (known !== undefined) return known
  const day = new Date((number - EPOCH) * DAY_MS).toISOString().slice(0, 10)
  SPELT.set(number, day)
  return day
}

/** True for a date that exists ("2026-02-30" does not). */
export function isDay(text: string): text is Day {
  if (!ISO.test(text)) return false
  const number = numberOf(text)
  return Number.isFinite(number) && spell(number) === text
}

/** The date n days later (earlier where n is negative). */
export const addDays = (day: Day, n: number): Day => spell(numberOf(day) + n)

/** Whole days from a to b; negative where b is earlier. */
export const daysBetween = (a: Day, b: Day): number => numberOf(b) - numberOf(a)

// day 1 was a Monday; 52 weeks more keep the remainder from falling below 0 in year 0
export const weekday = (day: Day): Weekday => WEEKDAYS[(numberOf(day) + 6 + 364) % 7]!

/** All dates from first to last, both included; empty where last is before first. */
export function daysFrom(first: Day, last: Day): Day[] {
  const from = numberOf(first)
  return Array.from({ length: Math.max(0, numberOf(last) - from + 1) }, (_, n) => spell(from + n))
}

/** The later of two dates. */
export const laterOf = (a: Day, b: Day): Day => (a > b ? a : b)
export const earlierOf = (a: Day, b: Day): Day => (a < b ? a : b)
