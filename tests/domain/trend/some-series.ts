import fc from 'fast-check'
import { addDays, type Day } from '../../../src/domain/day.ts'
import type { Series } from '../../../src/domain/trend/series.ts'

export const START: Day = '2026-02-02'

/** Up to 90 days of whole numbers 0..10, some days without answer. */
export const someSeries: fc.Arbitrary<Series> = fc
  .array(fc.option(fc.integer({ min: 0, max: 10 }), { freq: 4 }), { maxLength: 90 })
  .map((values) => values.flatMap((value, n) => (value === null ? [] : [{ day: addDays(START, n), value }])))

export const shifted = (series: Series, by: number): Series =>
  series.map(({ day, value }) => ({ day: addDays(day, by), value }))
