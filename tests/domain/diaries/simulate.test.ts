import { describe, expect, it } from 'vitest'
import type { Diary } from '../../../src/domain/diaries/diary.ts'
import {
  detection,
  episodes,
  perMonth,
  type Spoken,
  timesPerMonth,
} from '../../../src/domain/diaries/measure.ts'
import { diaryDays, seriesOf } from '../../../src/domain/diaries/series.ts'
import {
  diariesOf,
  listenAll,
  type RuleFigures,
  simulate,
  simulateWords,
} from '../../../src/domain/diaries/simulate.ts'
import { alarmSum, PAIN_ALARM, REACH_ALARM } from '../../../src/domain/trend/alarm-sum.ts'
import { USUAL } from '../../../src/domain/trend/usual-level.ts'

const chosen = (d: Diary): number[] =>
  diaryDays([...alarmSum(seriesOf(d.pain), PAIN_ALARM), ...alarmSum(seriesOf(d.reach), REACH_ALARM)])
const shorter = (d: Diary): number[] =>
  diaryDays([
    ...alarmSum(seriesOf(d.pain), { k: 1, h: 2.5, need: 10 }, USUAL),
    ...alarmSum(seriesOf(d.reach), { k: 0.5, h: 1.5, need: 6 }, USUAL),
  ])

// Figures of a model of our own in another language (numpy), 1,500 people a case: there the shorter level has
const MODEL = {
  falseAlarms: { stable: 0.38, improving: 0.21 },
  detect: {
    'pain+2': { days: 6, within7: 0.58 },
    'reach+1': { days: 5, within7: 0.68 },
    'reach+2': { days: 2, within7: 0.92 },
    both: { days: 4, within7: 0.78 },
  },
}
const WORSENINGS = ['pain+2', 'reach+1', 'reach+2', 'both'] as const

describe('the two alarms on the model of diaries, 1,500 people a case', () => {
  const [now, before] = simulate({ clients: 1500, weeks: 13, seed: 7 }, { chosen, shorter }) as [
    RuleFigures,
    RuleFigures,
  ]

  it('the level of 14 days comes out within a tenth of the numpy model', () => {
    for (const course of ['stable', 'improving'] as const) {
      expect(Math.abs(before.falseAlarms[course] / MODEL.falseAlarms[course] - 1)).toBeLessThan(0.1)
    }
    for (const name of WORSENINGS) {
      expect(Math.abs(before.detect[name].within7 / MODEL.detect[name].within7 - 1)).toBeLessThan(0.1)
      expect(Math.abs(before.detect[name].days! - MODEL.detect[name].days)).toBeLessThanOrEqual(1)
    }
  })

  it('the chosen alarms are false less often and see every worsening as soon or sooner', () => {
    for (const reference of [before, MODEL]) {
      expect(now.falseAlarms.stable).toBeLessThan(reference.falseAlarms.stable)
      expect(now.falseAlarms.improving).toBeLessThan(0.8 * reference.falseAlarms.improving)
      for (const name of WORSENINGS) {
        expect(now.detect[name].within7).toBeGreaterThan(reference.detect[name].within7)
        expect(now.detect[name].days).toBeLessThanOrEqual(reference.detect[name].days!)
      }
    }
  })
})

it('the weekly word is wrong on at most 2.5 % of stable weeks, each way', () => {
  const wrong = simulateWords({ clients: 800, weeks: 13, seed: 3 })
  expect(wrong.pain).toBeLessThanOrEqual(0.025)
  expect(wrong.reach).toBeLessThanOrEqual(0.025)
  expect(wrong.pain).toBeGreaterThan(0.01)
})

describe('measures', () => {
  const said = (onset: number, ...days: number[]): Spoken => ({ days, length: 91, onset })

  it('an episode begins anew after more than 7 days of quiet', () => {
    expect(episodes([30, 3, 5, 12, 20])).toEqual([3, 20, 30])
    expect(episodes([])).toEqual([])
  })

  it('counts episodes per month of 30.4 days', () => {
    expect(perMonth([said(30, 1, 2, 50), said(30, 1, 2, 50)])).toBeCloseTo(4 / (182 / 30.4), 12)
    expect(perMonth([])).toBe(0)
  })

  it('counts every time where told to, two on one day as two', () => {
    expect(timesPerMonth([said(30, 4, 4, 5)])).toBeCloseTo(3 / (91 / 30.4), 12)
  })

  it('waits from the onset, whose day is 1; an alarm before it does not count', () => {
    expect(detection([said(30, 29, 31)])).toEqual({ days: 2, within7: 1 })
    expect(detection([said(40, 39), said(40)])).toEqual({ days: null, within7: 0 })
    expect(detection([said(30, 57)])).toEqual({ days: 28, within7: 0 })
    expect(detection([said(30, 58)])).toEqual({ days: null, within7: 0 })
  })

  it('the same settings give the same figures, another seed others', () => {
    const run = (seed: number): string =>
      JSON.stringify(simulate({ clients: 40, weeks: 8, seed }, { chosen }))
    expect(run(5)).toBe(run(5))
    expect(run(5)).not.toBe(run(6))
  })

  it('tells how far it is', () => {
    const told: number[][] = []
    listenAll({ clients: 2, weeks: 8, seed: 1 }, { chosen }, {}, (done, of) => told.push([done, of]))
    expect(told.at(0)).toEqual([0, 12])
    expect(told.at(-1)).toEqual([12, 12])
  })

  it('refuses settings that cannot be, and says what is allowed', () => {
    expect(() => [...diariesOf({ clients: 0, weeks: 13, seed: 1 }, 'stable')]).toThrow(/clients.*1 or more/)
    expect(() => simulate({ clients: 5, weeks: 7, seed: 1 }, {})).toThrow(/weeks.*8 or more/)
    expect(() => [...diariesOf({ clients: 5, weeks: 13, seed: 0.5 }, 'stable')]).toThrow(/seed/)
  })
})
