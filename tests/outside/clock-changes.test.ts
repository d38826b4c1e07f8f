import fc from 'fast-check'
import { IANAZone } from 'luxon'
import { describe, expect, it } from 'vitest'
import { addDays, type Day, daysFrom } from '../../src/domain/day.ts'
import { dayAt, instantOf, timeAt } from '../../src/domain/local-time.ts'
import { openPractice } from '../engine/practice.ts'

/**
 * Clock changes of 2026. Source: the IANA time-zone database, as Node's ICU holds it and luxon reads it; the
 * release in use is in the name of the suite. The instants below are worked out by hand from its rules:
 * - America/New_York: 02:00 -05:00 becomes 03:00 on 8 March; 02:00 -04:00 becomes 01:00 on 1 November.
 * - Europe/Lisbon: 01:00 UTC on 29 March and 25 October, from +00:00 to +01:00 and back.
 * - Australia/Lord_Howe, half an hour: 02:00 +11:00 becomes 01:30 on 5 April; 02:00 +10:30 becomes 02:30 on 4 October.
 */
const CHANGES: readonly (readonly [zone: string, day: Day, rows: readonly (readonly [string, string])[]])[] =
  [
    [
      'America/New_York',
      '2026-03-08',
      [
        ['01:59', '2026-03-08T06:59Z'],
        ['02:00', '2026-03-08T07:00Z'],
        ['02:30', '2026-03-08T07:00Z'],
        ['02:59', '2026-03-08T07:00Z'],
        ['03:00', '2026-03-08T07:00Z'],
        ['03:01', '2026-03-08T07:01Z'],
        ['08:00', '2026-03-08T12:00Z'],
      ],
    ],
    [
      'America/New_York',
      '2026-11-01',
      [
        ['00:59', '2026-11-01T04:59Z'],
        ['01:00', '2026-11-01T05:00Z'],
        ['01:30', '2026-11-01T05:30Z'],
        ['01:59', '2026-11-01T05:59Z'],
        ['02:00', '2026-11-01T07:00Z'],
        ['08:00', '2026-11-01T13:00Z'],
      ],
    ],
    [
      'Europe/Lisbon',
      '2026-03-29',
      [
        ['00:59', '2026-03-29T00:59Z'],
        ['01:00', '2026-03-29T01:00Z'],
        ['01:30', '2026-03-29T01:00Z'],
        ['02:00', '2026-03-29T01:00Z'],
        ['02:30', '2026-03-29T01:30Z'],
        ['08:00', '2026-03-29T07:00Z'],
      ],
    ],
    [
      'Europe/Lisbon',
      '2026-10-25',
      [
        ['00:59', '2026-10-24T23:59Z'],
        ['01:00', '2026-10-25T00:00Z'],
        ['01:30', '2026-10-25T00:30Z'],
        ['01:59', '2026-10-25T00:59Z'],
        ['02:00', '2026-10-25T02:00Z'],
        ['08:00', '2026-10-25T08:00Z'],
      ],
    ],
    [
      'Australia/Lord_Howe',
      '2026-04-05',
      [
        ['01:29', '2026-04-04T14:29Z'],
        ['01:30', '2026-04-04T14:30Z'],
        ['01:45', '2026-04-04T14:45Z'],
        ['01:59', '2026-04-04T14:59Z'],
        ['02:00', '2026-04-04T15:30Z'],
        ['08:00', '2026-04-04T21:30Z'],
      ],
    ],
    [
      'Australia/Lord_Howe',
      '2026-10-04',
      [
        ['01:59', '2026-10-03T15:29Z'],
        ['02:00', '2026-10-03T15:30Z'],
        ['02:15', '2026-10-03T15:30Z'],
        ['02:29', '2026-10-03T15:30Z'],
        ['02:30', '2026-10-03T15:30Z'],
        ['02:45', '2026-10-03T15:45Z'],
        ['08:00', '2026-10-03T21:00Z'],
      ],
    ],
  ]

const ZONES = Intl.supportedValuesOf('timeZone')
const HOUR = 3_600_000
// no clock of 2026 changes by day; a noon stands for it
const NIGHT = ['00:30', '01:30', '02:30', '03:30', '12:00', '21:30', '22:30', '23:30']
const YEAR = daysFrom('2026-01-01', '2026-12-31')

/** A day's prompt is on that day and 20 to 28 hours after the one before. */
function checkDay(zone: string, day: Day, time: string): void {
  const at = instantOf(day, time, zone)
  const before = instantOf(addDays(day, -1), time, zone)
  const hours = (at.getTime() - before.getTime()) / HOUR
  const where = `${zone} ${day} ${time}`
  expect(hours, where).toBeGreaterThanOrEqual(20)
  expect(hours, where).toBeLessThanOrEqual(28)
  // the one exception: the clock jumps over the end of the day, and the first instant after is the next midnight
  const jumped = dayAt(at, zone) === addDays(day, 1) && timeAt(at, zone) === '00:00'
  if (jumped) expect(timeAt(new Date(at.getTime() - 1), zone) < time, where).toBe(true)
  else expect(dayAt(at, zone), where).toBe(day)
}

/** Days of the year on which a zone's clock changes. */
function changesOf(zone: string): Day[] {
  const rules = IANAZone.create(zone)
  const offset = (day: Day): number => rules.offset(Date.parse(`${day}T12:00Z`))
  return YEAR.filter((day) => offset(day) !== offset(addDays(day, -1)))
}

describe(`clock changes of 2026 (IANA time-zone database ${process.versions.tz})`, () => {
  describe.each(CHANGES)('%s on %s', (zone, day, rows) => {
    it.each(rows)('%s is %s', (time, instant) =>
      expect(instantOf(day, time, zone)).toEqual(new Date(instant)),
    )
  })

  it('never take or double a day, anywhere', () => {
    const zones = ZONES.filter((zone) => changesOf(zone).length > 0)
    // the database has well over a hundred zones that still change their clocks; none found would mean no check
    expect(zones.length).toBeGreaterThan(100)
    for (const zone of zones)
      for (const change of changesOf(zone))
        for (const day of daysFrom(addDays(change, -1), addDays(change, 1)))
          for (const time of NIGHT) checkDay(zone, day, time)
  }, 60_000)

  it('leave the prompts of any two days 20 to 28 hours apart, each on its own day', () => {
    const minutes = fc.integer({ min: 0, max: 1439 })
    const clock = minutes.map((n) => new Date(n * 60_000).toISOString().slice(11, 16))
    fc.assert(fc.property(fc.constantFrom(...ZONES), fc.constantFrom(...YEAR), clock, checkDay), {
      numRuns: 2_000,
    })
  }, 60_000)
})

describe('prompts over a clock change, from a real store', () => {
  it.each([
    ['America/New_York', '2026-03-08', '02:30', '2026-03-08T07:00Z'],
    ['America/New_York', '2026-11-01', '01:30', '2026-11-01T05:30Z'],
    ['Europe/Lisbon', '2026-03-29', '01:30', '2026-03-29T01:00Z'],
    ['Europe/Lisbon', '2026-10-25', '01:30', '2026-10-25T00:30Z'],
    ['Australia/Lord_Howe', '2026-04-05', '01:45', '2026-04-04T14:45Z'],
    ['Australia/Lord_Howe', '2026-10-04', '02:15', '2026-10-03T15:30Z'],
  ])(
    '%s, %s at %s: one a local day, that day at %s',
    async (zone, change, prompt, instant) => {
      const practice = await openPractice(addDays(change, -3))
      try {
        await practice.enrol('curlew', { zone, prompt })
        const days = daysFrom(addDays(change, -1), addDays(change, 2))
        for (const day of daysFrom(addDays(change, -2), addDays(change, 2))) {
          await practice.until(day, '12:00')
          await practice.say('curlew', '2 calf 4, no signs')
        }
        await practice.until(addDays(change, 3), '12:00')
        const prompts = practice.sent.filter(
          ({ to, message }) => to === 'user-curlew' && message.kind === 'prompt',
        )
        const local = prompts.map(({ at }) => dayAt(at, zone))
        for (const day of days)
          expect(
            local.filter((one) => one === day),
            day,
          ).toHaveLength(1)
        expect(prompts[local.indexOf(change)]?.at).toEqual(new Date(instant))
      } finally {
        await practice.close()
      }
    },
    60_000,
  )
})
