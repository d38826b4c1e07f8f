import { describe, expect, it } from 'vitest'
import { changeAgainst, meaningfulPain } from '../../src/domain/trend/change.ts'
import { mannKendall } from '../../src/domain/trend/mann-kendall.ts'
import { median } from '../../src/domain/trend/median.ts'
import { theilSen } from '../../src/domain/trend/theil-sen.ts'
import { figuresOf, textOf } from './figures.ts'

// Data set `Pain` of the R package bda 19.1.3 (B. Wang, CRAN): 203 people, two diary weeks each.
const reference = figuresOf('daily_pain_two_weeks.reference.json')
const [head, ...rows] = textOf('daily_pain_two_weeks.csv')
  .trim()
  .split('\n')
  .map((line) => line.trim().split(','))
const week = (row: string[], name: string): (number | null)[] =>
  [1, 2, 3, 4, 5, 6, 7].map((n) => {
    const cell = row[head!.indexOf(`${name}${n}`)]
    return cell ? Number(cell) : null
  })
const given = (values: (number | null)[]): number[] => values.filter((value) => value !== null)

function summary(entered: (value: number) => number): Record<string, number> {
  const weeks = rows.map((row) => ['t0', 't1'].map((name) => given(week(row, name)).map(entered)))
  const enough = weeks.filter((pair) => pair.every((values) => values.length >= 4))
  const medians = enough.map((pair) => pair.map((values) => median(values)!) as [number, number])
  const changes = medians.map(([before, now]) => changeAgainst(before, now)!)
  const count = (test: (change: number, percent: number) => boolean): number =>
    changes.filter(({ change, percent }) => test(change, percent ?? 0)).length
  return {
    compared: enough.length,
    two_points_better: count((change) => change <= -2),
    thirty_percent_better: count((_, percent) => percent <= -30),
    both: medians.filter(([before, now]) => meaningfulPain(before, now)).length,
    half_better: count((_, percent) => percent <= -50),
    two_points_worse: count((change) => change >= 2),
    too_few: rows.length - enough.length,
  }
}

describe('open data set of two diary weeks, against numpy and scipy', () => {
  it('change rule on the values as they are', () => expect(summary((v) => v)).toEqual(reference.decimals))
  it('change rule on values rounded up', () => expect(summary(Math.ceil)).toEqual(reference.rounded_up))

  it('rank statistics of the first 40 people', () => {
    for (const person of reference.people) {
      const row = rows[person.row - 1]!
      const days = [...week(row, 't0'), ...week(row, 't1')]
      const at = days.flatMap((value, n) => (value === null ? [] : [n + 1]))
      const values = given(days)
      const found = mannKendall(values)
      expect(values.length).toBe(person.n)
      expect(found.s).toBe(person.S)
      expect(found.variance).toBeCloseTo(person.varS, 9)
      expect(found.tau).toBeCloseTo(person.tau_b, 12)
      expect(theilSen(at, values)!.slope).toBeCloseTo(person.slope, 12)
    }
    expect(reference.people.length).toBe(40)
  })
})

describe('least change of pain that matters', () => {
  const published = figuresOf('clinical_change_thresholds.json')

  it('Ostelo et al. (2008): 2 points and 30 % of the baseline, at the edge', () => {
    const { value, relative } = published.pain_nrs
    const edge = value / relative // here both limits meet
    expect(meaningfulPain(edge, edge - value)).toBe(true)
    expect(meaningfulPain(edge - 1, edge - 1 - value)).toBe(true)
    expect(meaningfulPain(edge - 1, edge - 0.9 - value)).toBe(false)
    expect(meaningfulPain(10, 10 * (1 - relative))).toBe(true)
    expect(meaningfulPain(10, 10 * (1 - relative) + 0.1)).toBe(false)
  })

  it('Suzuki et al. (2020): the cut-off of 1.3 to 1.8 rounds up to the same 2 points', () => {
    const { range, rounded } = published.pain_nrs_chronic_lbp
    expect(rounded).toBe(published.pain_nrs.value)
    for (const cut of range) expect(meaningfulPain(4, 4 - Math.ceil(cut))).toBe(true)
  })

  it('Kamper et al. (2010): pain 0 is feeling recovered, from any pain that matters', () => {
    const { value } = published.recovered
    for (const from of [2, 3, 6, 10]) expect(meaningfulPain(from, value)).toBe(true)
  })
})
