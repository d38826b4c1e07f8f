import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { COURSES, type CourseName, diaryOf } from '../../../src/domain/diaries/diary.ts'
import { beta, logNormal, randomOf, uniformIn, xoshiro128ss } from '../../../src/domain/diaries/random.ts'
import { mean, median } from '../../../src/domain/trend/median.ts'

const given = (values: readonly (number | null)[]): number[] => values.filter((v) => v !== null)

describe('random numbers', () => {
  it('xoshiro128** from the state 1, 2, 3, 4 (reference vector, as in the tests of the crate rand_xoshiro)', () => {
    const next = xoshiro128ss([1, 2, 3, 4])
    expect(Array.from({ length: 10 }, next)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ])
  })

  it('have the moments of their distributions', () => {
    const random = randomOf(1, 1)
    const draw = (one: () => number): number[] => Array.from({ length: 40_000 }, one)
    expect(Math.abs(mean(draw(random.uniform))! - 0.5)).toBeLessThan(0.006)
    const z = draw(random.normal)
    expect(Math.abs(mean(z)!)).toBeLessThan(0.02)
    expect(Math.abs(mean(z.map((v) => v * v))! - 1)).toBeLessThan(0.03)
    expect(Math.abs(mean(draw(() => beta(random, 2, 9)))! - 2 / 11)).toBeLessThan(0.005)
    expect(Math.abs(median(draw(() => logNormal(random, 0.95, 0.35)))! - 0.95)).toBeLessThan(0.01)
    const even = draw(() => uniformIn(random, 1, 6))
    expect(Math.min(...even)).toBeGreaterThanOrEqual(1)
    expect(Math.max(...even)).toBeLessThan(6)
    expect(Math.abs(mean(even)! - 3.5)).toBeLessThan(0.03)
  })
})

describe('made-up diaries', () => {
  const settings = fc.record({
    seed: fc.nat(),
    n: fc.nat({ max: 100_000 }),
    course: fc.constantFrom(...(Object.keys(COURSES) as CourseName[])),
    days: fc.integer({ min: 2, max: 120 }),
  })

  it('hold whole numbers inside the scales, as many as there are days, both or none a day', () => {
    fc.assert(
      fc.property(settings, ({ seed, n, course, days }) => {
        const diary = diaryOf(seed, n, COURSES[course], days)
        expect([diary.pain.length, diary.reach.length]).toEqual([days, days])
        for (const v of given(diary.pain)) expect(Number.isInteger(v) && v >= 0 && v <= 10).toBe(true)
        for (const v of given(diary.reach)) expect(Number.isInteger(v) && v >= 0 && v <= 6).toBe(true)
        expect(diary.pain.map((v) => v === null)).toEqual(diary.reach.map((v) => v === null))
        expect(diary.onset >= 24 && diary.onset <= 49).toBe(true)
      }),
    )
  })

  it('the same person in every course: alike until the onset, never better after a worsening', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat({ max: 5000 }), (seed, n) => {
        const stable = diaryOf(seed, n, COURSES.stable, 91)
        const worse = diaryOf(seed, n, COURSES.both, 91)
        expect(worse.pain.slice(0, stable.onset)).toEqual(stable.pain.slice(0, stable.onset))
        for (const [day, value] of stable.pain.entries()) {
          if (value !== null) expect(worse.pain[day]).toBeGreaterThanOrEqual(value)
        }
      }),
    )
  })

  it('about a fifth to a quarter is missing, and the spread is that of the open two-week diary', () => {
    const diaries = Array.from({ length: 600 }, (_, n) => diaryOf(11, n, COURSES.stable, 91))
    const missing = mean(diaries.map((d) => d.pain.filter((v) => v === null).length / 91))!
    expect(missing).toBeGreaterThan(0.2)
    expect(missing).toBeLessThan(0.27)
    const spread = median(
      diaries.map((d) => {
        const values = given(d.pain)
        return Math.sqrt(mean(values.map((v) => (v - mean(values)!) ** 2))!)
      }),
    )!
    expect(Math.abs(spread - 0.95)).toBeLessThan(0.1)
  })
})
