import { describe, expect, it } from 'vitest'
import { exactP, exactUpperTail } from '../../src/domain/trend/exact-p.ts'
import { mannKendall, tiedVariance, tieGroups } from '../../src/domain/trend/mann-kendall.ts'
import { twoSidedP } from '../../src/domain/trend/normal.ts'
import { figuresOf, inOrderOf, referenceSeries } from './figures.ts'

// Scores of pairs tied in x do not count; the trend function knows no ties in time, so they are taken off.
function scoreOfPairs(x: number[], y: number[]): number {
  const groups = new Map<number, number[]>()
  for (const [n, at] of x.entries()) groups.set(at, [...(groups.get(at) ?? []), y[n]!])
  const within = [...groups.values()].reduce((sum, group) => sum + mannKendall(group).s, 0)
  return mannKendall(inOrderOf(x, y)).s - within
}

const untiedPairs = (values: number[]): number =>
  (values.length * (values.length - 1)) / 2 - tieGroups(values).reduce((sum, t) => sum + (t * (t - 1)) / 2, 0)

describe('US EPA (2009) Unified Guidance', () => {
  it('example 17-6, sulfate (as printed by R package EnvStats)', () => {
    const published = figuresOf('epa_2009_ex17_6_sulfate.json')
    const found = mannKendall(published.y)
    expect(found.s).toBe(published.S)
    expect(found.variance).toBeCloseTo(published.varS, 9)
    expect(Math.abs(found.z - published.z)).toBeLessThan(published.tolerance.z)
    expect(Math.abs(found.p / published.p_two_sided - 1)).toBeLessThan(1e-6)
    const pairs = (published.n * (published.n - 1)) / 2
    expect(found.s / pairs).toBeCloseTo(published.tau_a, 7)
  })

  it('example 17-7, sodium', () => {
    const published = figuresOf('epa_2009_ex17_7_sodium.json')
    const found = mannKendall(published.y)
    expect(found.s).toBe(published.S)
    expect(found.variance).toBeCloseTo(published.varS, 9)
  })
})

it('College of the Holy Cross, Mann-Kendall by hand (teaching note by J. Little)', () => {
  const published = figuresOf('holycross_mk_by_hand.json')
  const found = mannKendall(published.y)
  expect(found.s).toBe(published.S)
  expect(found.s).toBe(published.concordant - published.discordant)
  expect(tieGroups(published.y)).toEqual([2])
  expect(found.variance).toBeCloseTo(published.varS_value, 9)
  expect(Math.abs(found.z - published.z)).toBeLessThan(published.tolerance)
  expect(Math.abs(found.p / 2 - published.p_one_sided)).toBeLessThan(published.tolerance)
})

describe('Kendall (1976) Rank Correlation Methods, ties on both sides', () => {
  const published = figuresOf('kendall_1976_ties.json')

  it('example 3.4', () => {
    const { x, y, S, tau_b, tau_published } = published.ex3_4
    const s = scoreOfPairs(x, y)
    expect(s).toBe(S)
    // the trend function's own tau-b holds the ties of y, those of x are put in here
    const trend = mannKendall(inOrderOf(x, y))
    const fromY = (trend.s / trend.tau!) ** 2 / ((y.length * (y.length - 1)) / 2)
    expect(fromY).toBeCloseTo(60, 9)
    expect(untiedPairs(x)).toBe(116)
    const tau = s / Math.sqrt(untiedPairs(x) * fromY)
    expect(tau).toBeCloseTo(tau_b, 12)
    expect(tau).toBeCloseTo(tau_published, 2)
  })

  it('example 4.3', () => {
    const { x, y, S, varS, varS_unrounded } = published.ex4_3
    expect(scoreOfPairs(x, y)).toBe(S)
    const n = x.length
    const sum = (of: number[], weight: (t: number) => number): number =>
      tieGroups(of).reduce((total, t) => total + weight(t), 0)
    const two = (t: number): number => t * (t - 1)
    const three = (t: number): number => t * (t - 1) * (t - 2)
    const bothTied =
      (sum(x, three) * sum(y, three)) / (9 * n * (n - 1) * (n - 2)) +
      (sum(x, two) * sum(y, two)) / (2 * n * (n - 1))
    const variance = tiedVariance(n, tieGroups(x), tieGroups(y)) + bothTied
    expect(variance).toBeCloseTo(varS_unrounded, 9)
    expect(variance).toBeCloseTo(varS, 1)
  })
})

it('Pettitt (1979) table 1 on the series of Page (1955): the score splits at the published change', () => {
  const published = figuresOf('pettitt_1979_page.json')
  const x: number[] = published.x
  const whole = mannKendall(x).s
  const across = x.map((_, n) => whole - mannKendall(x.slice(0, n + 1)).s - mannKendall(x.slice(n + 1)).s)
  const most = Math.max(...across.map(Math.abs))
  expect(most).toBe(published.K)
  expect(across.findIndex((u) => Math.abs(u) === most) + 1).toBe(published.change_after)
  const p = 2 * Math.exp((-6 * most ** 2) / (x.length ** 3 + x.length ** 2))
  expect(p).toBeCloseTo(published.p_unrounded, 12)
  expect(p).toBeCloseTo(published.p, 2)
})

describe('exact distribution of the score', () => {
  it('table of Kendall (1975), Gilbert (1987) A18, Helsel & Hirsch B8', () => {
    const tables: Record<string, Record<string, number>> = figuresOf('kendall_exact_table.json').upper_tail
    let entries = 0
    for (const [n, table] of Object.entries(tables)) {
      for (const [s, chance] of Object.entries(table)) {
        expect(Math.abs(exactUpperTail(Number(s), Number(n)) / chance - 1)).toBeLessThan(1e-12)
        entries += 1
      }
    }
    expect(entries).toBe(150)
  })

  it('R cor.test(method = "kendall", exact) as kept in the tests of scipy 1.10.1', () => {
    for (const { x, y, tau, p } of figuresOf('kendall_r_checked_by_scipy.json').cases) {
      const found = mannKendall(inOrderOf(x, y))
      expect(found.tau).toBeCloseTo(tau, 10)
      expect(Math.abs(exactP(found.s, x.length) / p - 1)).toBeLessThan(1e-10)
    }
  })

  it('Helsel & Hirsch, seven points with an outlier', () => {
    const published = figuresOf('helsel_hirsch_theil_7points.json')
    const { s } = mannKendall(published.y)
    expect(s).toBe(published.S)
    expect(s).toBe(published.positive - published.negative)
    expect(exactP(s, 7)).toBeCloseTo(published.p_two_sided_exact, 14)
  })
})

describe('scipy 1.10.1 (kendalltau) and the Mann-Kendall definitions in numpy 1.24', () => {
  for (const [name, r] of referenceSeries()) {
    it(name, () => {
      const found = mannKendall(r.y)
      expect(found.s).toBe(r.S)
      expect(found.variance).toBeCloseTo(r.var, 9)
      expect(found.z).toBeCloseTo(r.z, 12)
      expect(found.p).toBeCloseTo(r.p, 12)
      if (r.tau_b === null) expect(found.tau).toBeNull()
      else expect(found.tau).toBeCloseTo(r.tau_b, 12)
      if (r.p_exact !== undefined) expect(exactP(r.S, r.n)).toBeCloseTo(r.p_exact, 12)
    })
  }
})

it('normal distribution: z and p of tables (from memory, common knowledge of the field)', () => {
  expect(twoSidedP(1.959963984540054)).toBeCloseTo(0.05, 14)
  expect(twoSidedP(2.5758293035489004)).toBeCloseTo(0.01, 14)
  expect(twoSidedP(0)).toBe(1)
})
