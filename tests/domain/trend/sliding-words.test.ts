import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/domain/day.ts'
import type { Series } from '../../../src/domain/trend/series.ts'
import { slidingWords } from '../../../src/domain/trend/sliding-words.ts'
import { LEAST_CHANGE, weeklyWord } from '../../../src/domain/trend/weekly-word.ts'
import { START } from './some-series.ts'

/** Answers that drift, so that every word comes up. */
const drifting = fc
  .tuple(
    fc.integer({ min: 0, max: 10 }),
    fc.integer({ min: -20, max: 20 }),
    fc.array(fc.option(fc.integer({ min: -2, max: 2 }), { freq: 12 }), { minLength: 40, maxLength: 80 }),
  )
  .map(([from, slope, noise]) =>
    noise.map((n, at) =>
      n === null ? null : Math.min(10, Math.max(0, Math.round(from + (slope * at) / 80 + n))),
    ),
  )
const dated = (values: readonly (number | null)[]): Series =>
  values.flatMap((value, at) => (value === null ? [] : [{ day: addDays(START, at), value }]))

describe('the weekly words of a run of dates', () => {
  it.each(Object.values(LEAST_CHANGE))('are those of each date by itself (least change %d)', (least) => {
    const met = new Set<string>()
    fc.assert(
      fc.property(drifting, (values) => {
        const each = values.map((_, at) => {
          const { word } = weeklyWord(dated(values.slice(0, at + 1)), addDays(START, at), least)
          met.add(String(word))
          return word
        })
        expect(slidingWords(values, least)).toEqual(each)
      }),
      { numRuns: 40 },
    )
    expect([...met].sort()).toEqual(['improving', 'null', 'steady', 'worsening'])
  })
})
