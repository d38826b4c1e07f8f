/** A client's local calendar date, ISO `YYYY-MM-DD`. Arithmetic here is on dates alone: no clock, no zone. */
export type Day = string

const DAY_MS = 86_400_000
const ISO = /^(\d{4})-(\d{2})-(\d{2})$/

/** Monday first, as ISO 8601 counts. */
export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const
export type Weekday = (typeof WEEKDAYS)[number]

const toMs = (day: Day): number => Date.parse(`${day}T00:00:00Z`)
const fromMs = (ms: number): Day => new Date(ms).toISOString().slice(0, 10)

/** True for a date that exists ("2026-02-30" does not). */
export function isDay(text: string): text is Day {
  if (!ISO.test(text)) return false
  const ms = toMs(text)
  return Number.isFinite(ms) && fromMs(ms) === text
}

/** The date n days later (earlier where n is negative). */
export const addDays = (day: Day, n: number): Day => fromMs(toMs(day) + n * DAY_MS)

/** Whole days from a to b; negative where b is earlier. */
export const daysBetween = (a: Day, b: Day): number => Math.round((toMs(b) - toMs(a)) / DAY_MS)

export const weekday = (day: Day): Weekday => WEEKDAYS[(new Date(toMs(day)).getUTCDay() + 6) % 7]!

/** All dates from first to last, both included; empty where last is before first. */
export const daysFrom = (first: Day, last: Day): Day[] =>
  Array.from({ length: Math.max(0, daysBetween(first, last) + 1) }, (_, n) => addDays(first, n))

/** The later of two dates. */
export const laterOf = (a: Day, b: Day): Day => [a, b].sort()[1]!
