import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { belowKnee, isReach, REACHES, rank, reachAt } from '../../src/domain/reach.ts'

describe('reach', () => {
  it('goes from nothing to the foot in seven steps', () => {
    expect(REACHES.map(rank)).toEqual([0, 1, 2, 3, 4, 5, 6])
    expect(REACHES.map((reach) => reachAt(rank(reach)))).toEqual([...REACHES])
  })

  it('takes the worse of two zones where a median falls between them', () => {
    expect(reachAt(3.5)).toBe('knee')
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 }), (halves) => {
        const further = rank(reachAt(halves / 2)) - halves / 2
        expect([0, 0.5]).toContain(further)
      }),
    )
  })

  it.each([6.1, 7, -1, Number.NaN])('knows no zone at %s', (value) =>
    expect(() => reachAt(value)).toThrow(RangeError),
  )

  it('calls calf and foot below the knee, and nothing nearer', () => {
    expect(REACHES.filter(belowKnee)).toEqual(['calf', 'foot'])
  })

  it('knows its own words alone', () => {
    expect(REACHES.every(isReach)).toBe(true)
    expect(['leg', 'Calf', '', 'toString'].some(isReach)).toBe(false)
  })
})
