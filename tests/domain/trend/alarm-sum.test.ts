import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, type Day, daysBetween } from '../../../src/domain/day.ts'
import { alarmSum, PAIN_ALARM, REACH_ALARM } from '../../../src/domain/trend/alarm-sum.ts'
import type { Series } from '../../../src/domain/trend/series.ts'
import { LONG_USUAL, USUAL, usualLevel } from '../../../src/domain/trend/usual-level.ts'
import { START, shifted, someSeries } from './some-series.ts'

const daily = (values: readonly number[]): Series =>
  values.map((value, n) => ({ day: addDays(START, n), value }))
const at = (days: readonly Day[]): number[] => days.map((day) => daysBetween(START, day))
const flat = (value: number, days: number): number[] => Array(days).fill(value)

/** The definition word for word, each level looked up anew: slow, and independent of the moving window. */
function inWords(series: Series, { k, h, need }: typeof PAIN_ALARM, over = LONG_USUAL): Day[] {
  const days: Day[] = []
  let sum = 0
  for (const { day, value } of series) {
    const usual = usualLevel(series, day, need, over)
    if (usual === null) continue
    sum = Math.max(0, sum + value - usual - k)
    if (sum <= h) continue
    days.push(day)
    sum = 0
  }
  return days
}

describe('alarm sum', () => {
  it('is the definition in words', () => {
    fc.assert(
      fc.property(someSeries, fc.constantFrom(USUAL, LONG_USUAL), (series, over) => {
        expect(alarmSum(series, PAIN_ALARM, over)).toEqual(inWords(series, PAIN_ALARM, over))
        expect(alarmSum(series, REACH_ALARM, over)).toEqual(inWords(series, REACH_ALARM, over))
      }),
    )
  })

  it('a jump of the reach by two zones is seen on the second answer', () => {
    expect(at(alarmSum(daily([...flat(2, 30), 4, 4]), REACH_ALARM))).toEqual([31])
  })

  it('pain up by 2 that stays is seen on the fourth day, by 5 on the first', () => {
    expect(at(alarmSum(daily([...flat(3, 30), 5, 5, 5, 5]), PAIN_ALARM))).toEqual([33])
    expect(at(alarmSum(daily([...flat(3, 30), 8]), PAIN_ALARM))).toEqual([30])
  })

  it('one zone for one day, or pain up by 1 for good, is no alarm', () => {
    expect(alarmSum(daily([...flat(2, 30), 3, ...flat(2, 20)]), REACH_ALARM)).toEqual([])
    expect(alarmSum(daily([...flat(3, 30), ...flat(4, 30)]), PAIN_ALARM)).toEqual([])
  })

  it('speaks only where there are enough days behind for a usual level', () => {
    expect(at(alarmSum(daily([...flat(1, 9), 9, 9, 9, 9, 9, 9, 9]), PAIN_ALARM))).toEqual([14, 15])
    expect(alarmSum([], PAIN_ALARM)).toEqual([])
  })

  it('moved dates move the alarms', () => {
    fc.assert(
      fc.property(someSeries, fc.integer({ min: -4000, max: 4000 }), (series, by) => {
        const moved = alarmSum(series, REACH_ALARM).map((day) => addDays(day, by))
        expect(alarmSum(shifted(series, by), REACH_ALARM)).toEqual(moved)
      }),
    )
  })

  it('never looks ahead: what comes later changes no earlier alarm', () => {
    fc.assert(
      fc.property(someSeries, fc.nat({ max: 90 }), (series, cut) => {
        const end = addDays(START, cut)
        const then = series.filter(({ day }) => day <= end)
        expect(alarmSum(then, PAIN_ALARM)).toEqual(alarmSum(series, PAIN_ALARM).filter((day) => day <= end))
      }),
    )
  })

  it('a better answer on a day never brings an alarm on that day', () => {
    fc.assert(
      fc.property(someSeries, fc.nat(), fc.integer({ min: 1, max: 10 }), (series, pick, by) => {
        if (series.length === 0) return
        const { day } = series[pick % series.length]!
        const better = series.map((p) => (p.day === day ? { day, value: Math.max(0, p.value - by) } : p))
        if (!alarmSum(series, PAIN_ALARM).includes(day)) {
          expect(alarmSum(better, PAIN_ALARM)).not.toContain(day)
        }
      }),
    )
  })

  it('reads each answer a fixed number of times, however long the diary', () => {
    const reads = (days: number): number => {
      let count = 0
      const counted = daily(flat(3, days)).map(({ day }) => ({
        day,
        get value() {
          count += 1
          return 3
        },
      }))
      alarmSum(counted, PAIN_ALARM)
      return count / days
    }
    expect(reads(1000)).toBeLessThanOrEqual(3)
  })
})
