import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, daysBetween } from '../../../src/domain/day.ts'
import { exactP } from '../../../src/domain/trend/exact-p.ts'
import { mannKendall } from '../../../src/domain/trend/mann-kendall.ts'
import { mean, median } from '../../../src/domain/trend/median.ts'
import { twoSidedP, zOfConfidence } from '../../../src/domain/trend/normal.ts'
import { theilSen } from '../../../src/domain/trend/theil-sen.ts'
import { usualLevel } from '../../../src/domain/trend/usual-level.ts'
import { LEAST_CHANGE, weeklyWord } from '../../../src/domain/trend/weekly-word.ts'
import { wilson } from '../../../src/domain/trend/wilson.ts'
import { START, shifted, someSeries } from './some-series.ts'

const answers = fc.array(fc.integer({ min: 0, max: 10 }), { maxLength: 40 })
const turned = (values: readonly number[]): number[] => [...values].reverse()
const times = fc
  .uniqueArray(fc.integer({ min: 0, max: 90 }), { minLength: 2, maxLength: 30 })
  .map((days) => days.sort((a, b) => a - b))
const dated = times.chain((days) =>
  fc.tuple(
    fc.constant(days),
    fc.array(fc.integer({ min: 0, max: 10 }), { minLength: days.length, maxLength: days.length }),
  ),
)

describe('Mann-Kendall', () => {
  it('time turned round turns the sign of the score and of tau, and leaves p', () => {
    fc.assert(
      fc.property(answers, (values) => {
        const [there, back] = [mannKendall(values), mannKendall(turned(values))]
        expect(back.s + there.s).toBe(0)
        expect((back.tau ?? 0) + (there.tau ?? 0)).toBeCloseTo(0, 12)
        expect(back.p).toBe(there.p)
        expect(back.variance).toBe(there.variance)
      }),
    )
  })

  it('looks at ranks only: a stretched and moved scale gives the same', () => {
    fc.assert(
      fc.property(answers, fc.integer({ min: 1, max: 9 }), fc.integer(), (values, by, plus) => {
        expect(mannKendall(values.map((v) => v * by + plus))).toEqual(mannKendall(values))
      }),
    )
  })

  it('is total, with p and tau inside their ranges; all equal is no trend', () => {
    fc.assert(
      fc.property(answers, fc.double({ min: 1, max: 5, noNaN: true }), (values, factor) => {
        const { p, tau, z, variance } = mannKendall(values, factor)
        expect(p >= 0 && p <= 1).toBe(true)
        if (tau !== null) expect(Math.abs(tau)).toBeLessThanOrEqual(1 + 1e-12)
        expect(Number.isFinite(z) && variance >= 0).toBe(true)
      }),
    )
    expect(mannKendall([3, 3, 3, 3])).toEqual({ s: 0, variance: 0, z: 0, p: 1, tau: null })
    expect(mannKendall([])).toEqual({ s: 0, variance: 0, z: 0, p: 1, tau: null })
  })

  it('a larger variance factor makes every trend less sure', () => {
    fc.assert(
      fc.property(answers, (values) => {
        expect(mannKendall(values, 1.7).p).toBeGreaterThanOrEqual(mannKendall(values).p - 1e-15)
      }),
    )
  })

  it('exact p is near the normal one from 10 values on, and refuses what it cannot count', () => {
    const rising = [1, 2, 4, 3, 6, 5, 8, 7, 10, 9, 0, 11]
    const { s, p } = mannKendall(rising)
    expect(Math.abs(exactP(s, rising.length) - p)).toBeLessThan(0.01)
    expect(exactP(0, 0)).toBe(1)
    expect(() => exactP(3, 61)).toThrow(/0 to 60/)
    expect(() => exactP(3, 4.5)).toThrow(RangeError)
  })
})

describe('Theil-Sen', () => {
  it('moved dates change nothing; a steeper scale multiplies; an added line adds its slope', () => {
    fc.assert(
      fc.property(
        dated,
        fc.integer({ min: -999, max: 999 }),
        fc.integer({ min: 1, max: 4 }),
        ([d, y], by, times) => {
          const slope = theilSen(d, y)!
          expect(
            theilSen(
              d.map((day) => day + by),
              y,
            ),
          ).toEqual(slope)
          const steeper = theilSen(
            d,
            y.map((v) => v * times),
          )!
          expect(steeper.slope).toBeCloseTo(slope.slope * times, 9)
          const tilted = theilSen(
            d,
            y.map((v, n) => v + times * d[n]!),
          )!
          expect(tilted.slope).toBeCloseTo(slope.slope + times, 9)
        },
      ),
    )
  })

  it('time turned round turns the slope; the interval holds the slope', () => {
    fc.assert(
      fc.property(dated, ([d, y]) => {
        const there = theilSen(d, y)!
        const back = theilSen(turned(d.map((day) => -day)), turned(y))!
        expect(back.slope).toBeCloseTo(-there.slope, 12)
        expect(there.low <= there.slope && there.slope <= there.high).toBe(true)
      }),
    )
  })

  it('is null where no two days differ', () => {
    expect(theilSen([], [])).toBeNull()
    expect(theilSen([4], [1])).toBeNull()
    expect(theilSen([4, 4], [1, 2])).toBeNull()
  })
})

describe('intervals and levels', () => {
  it('Wilson: holds the share, mirrors, narrows with more days, is null without any', () => {
    const counts = fc
      .integer({ min: 1, max: 300 })
      .chain((of) => fc.tuple(fc.integer({ min: 0, max: of }), fc.constant(of)))
    fc.assert(
      fc.property(counts, ([done, of]) => {
        const found = wilson(done, of)!
        const mirror = wilson(of - done, of)!
        const twice = wilson(2 * done, 2 * of)!
        expect(0 <= found.low && found.low <= done / of && done / of <= found.high && found.high <= 1).toBe(
          true,
        )
        expect(found.low).toBeCloseTo(1 - mirror.high, 12)
        expect(twice.high - twice.low).toBeLessThan(found.high - found.low)
      }),
    )
    expect(wilson(0, 0)).toBeNull()
    expect(wilson(-1, 7)).toBeNull()
    expect(wilson(9, 7)).toEqual(wilson(7, 7))
  })

  it('the z of a confidence cuts off exactly what is left of it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.9999, noNaN: true }), (confidence) => {
        expect(twoSidedP(zOfConfidence(confidence))).toBeCloseTo(1 - confidence, 12)
      }),
    )
    for (const wrong of [0, 1, Number.NaN]) expect(() => zOfConfidence(wrong)).toThrow(/between 0 and 1/)
  })

  it('median and mean of nothing are null; the median of an even count lies half way', () => {
    expect([median([]), mean([])]).toEqual([null, null])
    expect([median([4]), median([4, 1]), median([3, 9, 1])]).toEqual([4, 2.5, 3])
  })

  it('usual level: the 14 days that end 3 days before, where enough are answered', () => {
    const days = Array.from({ length: 20 }, (_, n) => ({
      day: addDays(START, n),
      value: n < 17 && n > 2 ? 4 : 9,
    }))
    expect(usualLevel(days, addDays(START, 19), 6)).toBe(4)
    expect(usualLevel(days, addDays(START, 20), 6)).toBeGreaterThan(4)
    expect(usualLevel(days, addDays(START, 8), 6)).not.toBeNull()
    expect(usualLevel(days, addDays(START, 7), 6)).toBeNull()
    expect(usualLevel([], START, 1)).toBeNull()
  })
})

describe('weekly word', () => {
  const words = (values: (number | null)[]): ReturnType<typeof weeklyWord> =>
    weeklyWord(
      values.flatMap((value, n) => (value === null ? [] : [{ day: addDays(START, n), value }])),
      addDays(START, values.length - 1),
      LEAST_CHANGE.pain,
    )

  it('names a steady fall improving and a steady rise worsening, per week', () => {
    const fall = Array.from({ length: 28 }, (_, n) => 8 - Math.floor(n / 7))
    expect(words(fall)).toMatchObject({ word: 'improving', n: 28 })
    expect(words(fall).slope).toBeLessThan(0)
    expect(words(turned(fall)).word).toBe('worsening')
    expect(words(Array(28).fill(5))).toMatchObject({ word: 'steady', slope: 0, p: 1 })
  })

  it('a sure but small drift is steady', () => {
    const drift = Array.from({ length: 28 }, (_, n) => 5 - n / 40)
    expect(words(drift).p).toBeLessThan(0.001)
    expect(words(drift).word).toBe('steady')
  })

  it('says nothing with 9 answers, or with a first or last week almost empty', () => {
    const sparse = Array.from({ length: 28 }, (_, n) => (n % 3 === 0 && n < 27 ? 5 : null))
    expect(words(sparse)).toEqual({ word: null, z: null, p: null, slope: null, low: null, high: null, n: 9 })
    const lateOnly = Array.from({ length: 28 }, (_, n) => (n < 10 ? null : 9 - Math.floor(n / 4)))
    expect(words(lateOnly).word).toBeNull()
    expect(words(lateOnly).slope).toBeLessThan(0)
  })

  it('moved dates change nothing, and days after `on` or before the 28 are not looked at', () => {
    fc.assert(
      fc.property(someSeries, fc.integer({ min: -4000, max: 4000 }), (series, by) => {
        const on = addDays(START, 45)
        const word = weeklyWord(series, on, LEAST_CHANGE.reach)
        expect(weeklyWord(shifted(series, by), addDays(on, by), LEAST_CHANGE.reach)).toEqual(word)
        const near = series.filter(({ day }) => daysBetween(day, on) >= 0 && daysBetween(day, on) < 28)
        expect(weeklyWord(near, on, LEAST_CHANGE.reach)).toEqual(word)
      }),
    )
  })
})
