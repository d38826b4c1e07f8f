import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dayAt, instantOf, isClockTime, isZone, timeAt } from '../../src/domain/local-time.ts'

const clockTimes = fc
  .tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 }))
  .map((parts) => parts.map((n) => String(n).padStart(2, '0')).join(':'))

describe('a wall-clock time', () => {
  it.each(['00:00', '08:05', '23:59'])('%s is one', (text) => expect(isClockTime(text)).toBe(true))
  it.each(['24:00', '8:05', '08:60', '0805', '08:05:00', ' 08:05', ''])('%j is none', (text) =>
    expect(isClockTime(text)).toBe(false),
  )
})

describe('a zone', () => {
  it.each(['Europe/Lisbon', 'Australia/Lord_Howe', 'America/Argentina/Buenos_Aires', 'UTC'])(
    '%s is known',
    (name) => expect(isZone(name)).toBe(true),
  )
  it.each(['Europe/Atlantis', 'Lisbon', '', 'local', '+01:00x'])('%j is not', (name) =>
    expect(isZone(name)).toBe(false),
  )
})

describe('day and time at an instant', () => {
  const instant = new Date('2026-07-01T23:30:00Z')

  it('are those of the place', () => {
    expect([dayAt(instant, 'Europe/Lisbon'), timeAt(instant, 'Europe/Lisbon')]).toEqual([
      '2026-07-02',
      '00:30',
    ])
    expect([dayAt(instant, 'America/New_York'), timeAt(instant, 'America/New_York')]).toEqual([
      '2026-07-01',
      '19:30',
    ])
    expect([dayAt(instant, 'Asia/Kathmandu'), timeAt(instant, 'Asia/Kathmandu')]).toEqual([
      '2026-07-02',
      '05:15',
    ])
  })

  it('lead back to the instant, where no clock changes', () => {
    fc.assert(
      fc.property(clockTimes, fc.constantFrom('UTC', 'Asia/Tokyo', 'America/Phoenix'), (time, zone) => {
        const found = instantOf('2026-05-20', time, zone)
        expect([dayAt(found, zone), timeAt(found, zone)]).toEqual(['2026-05-20', time])
      }),
    )
  })
})

describe('a local day that a place skipped', () => {
  // Samoa went from 29 to 31 December 2011 (time-zone database, zone Pacific/Apia).
  it('is answered with the first instant after it', () => {
    expect(instantOf('2011-12-30', '08:00', 'Pacific/Apia')).toEqual(new Date('2011-12-30T10:00:00Z'))
    expect(dayAt(new Date('2011-12-30T10:00:00Z'), 'Pacific/Apia')).toBe('2011-12-31')
  })
})
