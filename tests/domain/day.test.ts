import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, daysBetween, daysFrom, isDay, laterOf, WEEKDAYS, weekday } from '../../src/domain/day.ts'

const days = fc
  .date({ min: new Date('1990-01-01T00:00:00Z'), max: new Date('2060-12-31T00:00:00Z'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10))
const steps = fc.integer({ min: -4000, max: 4000 })

describe('a date', () => {
  it.each(['2026-03-08', '2024-02-29', '2000-02-29'])('%s exists', (text) => expect(isDay(text)).toBe(true))
  it.each(['2026-02-29', '1900-02-29', '2026-02-30', '2026-13-01', '2026-00-10', '2026-3-8', '8 March', ''])(
    '%j does not',
    (text) => expect(isDay(text)).toBe(false),
  )
})

describe('arithmetic on dates', () => {
  it('crosses months, years and clock changes', () => {
    expect(addDays('2026-02-28', 1)).toBe('2026-03-01')
    expect(addDays('2024-02-28', 1)).toBe('2024-02-29')
    expect(addDays('2026-01-01', -1)).toBe('2025-12-31')
    expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2)
  })

  it('agrees with the calendar of Date on every day of four centuries', () => {
    // ECMA-262: dates are proleptic Gregorian, which repeats after 400 years
    const first = Date.UTC(1800, 0, 1) / 86_400_000
    for (let n = 0; n < 146_097; n += 1) {
      const iso = new Date((first + n) * 86_400_000).toISOString().slice(0, 10)
      if (addDays('1800-01-01', n) !== iso || daysBetween('1800-01-01', iso) !== n)
        expect([n, iso]).toBe('agreed')
    }
  })

  it('adds up: n days on are n days apart, and back again', () => {
    fc.assert(
      fc.property(days, steps, (day, n) => {
        const other = addDays(day, n)
        expect(isDay(other)).toBe(true)
        expect(daysBetween(day, other)).toBe(n)
        expect(addDays(other, -n)).toBe(day)
      }),
    )
  })

  it('lists every date between, both ends in it', () => {
    fc.assert(
      fc.property(days, fc.integer({ min: 0, max: 60 }), (day, n) => {
        const list = daysFrom(day, addDays(day, n))
        expect(list).toHaveLength(n + 1)
        expect(list[0]).toBe(day)
        expect([...list].sort()).toEqual(list)
      }),
    )
    expect(daysFrom('2026-03-08', '2026-03-07')).toEqual([])
  })

  it('finds the later of two', () => {
    expect(laterOf('2026-03-08', '2026-02-28')).toBe('2026-03-08')
    expect(laterOf('2026-02-28', '2026-03-08')).toBe('2026-03-08')
  })
})

describe('a weekday', () => {
  it('counts from Monday, as ISO 8601 does', () => {
    // 1 January 2024 was a Monday
    expect(daysFrom('2024-01-01', '2024-01-07').map(weekday)).toEqual([...WEEKDAYS])
  })

  it('comes again after seven days, and no sooner', () => {
    fc.assert(
      fc.property(days, (day) => {
        expect(weekday(addDays(day, 7))).toBe(weekday(day))
        expect(new Set(daysFrom(day, addDays(day, 6)).map(weekday)).size).toBe(7)
      }),
    )
  })
})
