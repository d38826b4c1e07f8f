import fc from 'fast-check'
import { expect, it } from 'vitest'
import { slidingWeeks } from '../../../src/domain/rules/weeks.ts'
import { median } from '../../../src/domain/trend/median.ts'

it('the sliding weekly median is the median of the answered days of each 7', () => {
  const value = fc.option(fc.integer({ min: 0, max: 10 }))
  fc.assert(
    fc.property(fc.array(value, { maxLength: 60 }), (values) => {
      const weeks = values.map((_, at) => values.slice(Math.max(0, at - 6), at + 1).filter((v) => v !== null))
      expect(slidingWeeks(values)).toEqual(weeks.map((week) => ({ median: median(week), n: week.length })))
    }),
  )
})
