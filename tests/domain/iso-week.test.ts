import fc from 'fast-check'
import { DateTime } from 'luxon'
import { describe, expect, it } from 'vitest'
import { addDays, daysBetween } from '../../src/domain/day.ts'
import { isoWeekOf, mondayBefore, mondayOf } from '../../src/domain/iso-week.ts'

const day = fc.integer({ min: 0, max: 36_524 }).map((n) => addDays('2000-01-01', n))

describe('the week of a day', () => {
  it('is that of ISO 8601, as luxon counts it', () => {
    fc.assert(
      fc.property(day, (one) => {
        const { weekYear, weekNumber } = DateTime.fromISO(one, { zone: 'UTC' })
        expect(isoWeekOf(one)).toBe(`${weekYear}-W${String(weekNumber).padStart(2, '0')}`)
      }),
    )
  })

  it('begins on the Monday that reading it gives back', () => {
    fc.assert(
      fc.property(day, (one) => {
        const monday = mondayOf(isoWeekOf(one))!
        expect(monday).toBe(mondayBefore(one))
        expect(daysBetween(monday, one)).toBeGreaterThanOrEqual(0)
        expect(daysBetween(monday, one)).toBeLessThan(7)
      }),
    )
  })

  it('may belong to the year before or after', () => {
    expect(isoWeekOf('2021-01-03')).toBe('2020-W53')
    expect(isoWeekOf('2024-12-30')).toBe('2025-W01')
  })

  it('is none where the text names none', () => {
    expect(['2026-W54', '2026-W00', '2025-W53', 'week 3', '2026-12', ''].map(mondayOf)).toEqual(
      Array(6).fill(null),
    )
    expect(mondayOf(' 2026-w12 ')).toBe('2026-03-16')
  })
})
