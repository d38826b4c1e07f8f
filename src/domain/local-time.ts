import { DateTime, IANAZone } from 'luxon'
import type { Day } from './day.ts'

/** A wall-clock time `HH:MM`, 00:00..23:59. */
export type ClockTime = string

export const isClockTime = (text: string): text is ClockTime => /^([01]\d|2[0-3]):[0-5]\d$/.test(text)
export const isZone = (name: string): boolean => IANAZone.isValidZone(name)

const MINUTE = 60_000
/** Days kept at hand: one instant is asked for many times over, by few zones. */
const REMEMBERED = 500
const days = new Map<string, Day>()

/** The local calendar date at an instant in a zone of the time-zone database. */
export function dayAt(instant: Date, zone: string): Day {
  // since 1972 every zone is a whole number of minutes from UTC, so that no day begins within one
  const minute = `${zone} ${Math.floor(instant.getTime() / MINUTE)}`
  const known = days.get(minute)
  if (known !== undefined) return known
  const day = DateTime.fromJSDate(instant, { zone }).toISODate()!
  if (days.size >= REMEMBERED) days.clear()
  days.set(minute, day)
  return day
}

/** The local wall-clock time at an instant, `HH:MM`. */
export const timeAt = (instant: Date, zone: string): ClockTime =>
  DateTime.fromJSDate(instant, { zone }).toFormat('HH:mm')

/**
 * The instant at which a local day's clock shows a time.
 * A time that comes twice (clocks go back): the first. One that does not exist (clocks go forward): the first
 * instant after the gap.
 */
export function instantOf(day: Day, time: ClockTime, zone: string): Date {
  const [hour, minute] = time.split(':').map(Number) as [number, number]
  const wall = DateTime.fromISO(`${day}T00:00`, { zone: 'utc' }).plus({ hours: hour, minutes: minute })
  const wallMs = wall.toMillis()
  const offsets = offsetsAround(wallMs, zone)
  const hits = offsets
    .map((offset) => wallMs - offset * MINUTE)
    .filter((ms) => wallClock(ms, zone) === wallMs)
  if (hits.length > 0) return new Date(Math.min(...hits))
  return firstAfterGap(wallMs, Math.max(...offsets), zone)
}

/** The zone's offsets (minutes) in force within a day either side: two of them near a clock change. */
function offsetsAround(wallMs: number, zone: string): number[] {
  const at = IANAZone.create(zone)
  return [
    ...new Set([
      at.offset(wallMs - 26 * 60 * MINUTE),
      at.offset(wallMs),
      at.offset(wallMs + 26 * 60 * MINUTE),
    ]),
  ]
}

const wallClock = (ms: number, zone: string): number => ms + IANAZone.create(zone).offset(ms) * MINUTE

/** Walks forward by minutes from the latest reading that is surely before the gap's end. */
function firstAfterGap(wallMs: number, largestOffset: number, zone: string): Date {
  let ms = wallMs - largestOffset * MINUTE
  while (wallClock(ms, zone) < wallMs) ms += MINUTE
  return new Date(ms)
}
