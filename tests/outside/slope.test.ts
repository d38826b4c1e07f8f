import { describe, expect, it } from 'vitest'
import { mannKendall } from '../../src/domain/trend/mann-kendall.ts'
import { median } from '../../src/domain/trend/median.ts'
import { zOfConfidence } from '../../src/domain/trend/normal.ts'
import { pairSlopes, theilSen } from '../../src/domain/trend/theil-sen.ts'
import { figuresOf, referenceSeries } from './figures.ts'

it('Sen (1968), worked example, as kept in the tests of scipy 1.10.1', () => {
  const { x, y, alpha, slope, ci, tolerance, scipy_unrounded } = figuresOf('sen_1968_slope.json')
  const found = theilSen(x, y, 1 - alpha)!
  expect(found.slope).toBe(slope)
  expect(Math.abs(found.low - ci[0])).toBeLessThan(tolerance)
  expect(Math.abs(found.high - ci[1])).toBeLessThan(tolerance)
  expect(found.low).toBeCloseTo(scipy_unrounded[2], 12)
  expect(found.high).toBeCloseTo(scipy_unrounded[3], 12)
})

it('Helsel & Hirsch, seven points with an outlier', () => {
  const { x, y, slope } = figuresOf('helsel_hirsch_theil_7points.json')
  expect(theilSen(x, y)!.slope).toBe(slope)
})

describe('US EPA (2009) Unified Guidance', () => {
  it('example 17-6, sulfate: slope, and the interval between ranks of Gilbert (1987)', () => {
    const { t, y, slope, ci95, intercept_conover, tolerance } = figuresOf('epa_2009_ex17_6_sulfate.json')
    const found = theilSen(t, y)!
    expect(Math.abs(found.slope - slope)).toBeLessThan(tolerance.slope)
    expect(median(y)! - found.slope * median(t)!).toBeCloseTo(intercept_conover, 4)
    // Gilbert interpolates between ranks, the reference implementation takes the nearest rank: same ranks otherwise
    const slopes = pairSlopes(t, y)
    const spread = zOfConfidence(0.95) * Math.sqrt(mannKendall(y).variance)
    const at = (position: number): number => {
      const low = slopes[Math.floor(position) - 1]!
      return low + (position % 1) * (slopes[Math.floor(position)]! - low)
    }
    expect(Math.abs(at((slopes.length - spread) / 2) - ci95[0])).toBeLessThan(tolerance.ci)
    expect(Math.abs(at((slopes.length + spread) / 2 + 1) - ci95[1])).toBeLessThan(tolerance.ci)
    expect(Math.abs(found.low - ci95[0])).toBeLessThan(1)
    expect(Math.abs(found.high - ci95[1])).toBeLessThan(1)
  })

  it('example 17-7, sodium', () => {
    const { t, y, slope } = figuresOf('epa_2009_ex17_7_sodium.json')
    expect(theilSen(t, y)!.slope).toBeCloseTo(slope, 12)
  })
})

describe('scipy 1.10.1 (theilslopes) and numpy (median) on short, tied, gapped and constant series', () => {
  for (const [name, r] of referenceSeries()) {
    it(name, () => {
      const found = theilSen(r.day, r.y)!
      expect(found.slope).toBeCloseTo(r.slope, 12)
      expect(found.low).toBeCloseTo(r.low, 12)
      expect(found.high).toBeCloseTo(r.high, 12)
      expect(median(r.y)).toBe(r.median_y)
    })
  }
})
