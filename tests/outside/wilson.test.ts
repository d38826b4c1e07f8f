import { describe, expect, it } from 'vitest'
import { wilson } from '../../src/domain/trend/wilson.ts'
import { figuresOf } from './figures.ts'

const published = figuresOf('wilson_interval.json')

function check(done: number, of: number, low: number, high: number, tolerance: number): void {
  const found = wilson(done, of)!
  expect(Math.abs(found.low - low)).toBeLessThan(tolerance)
  expect(Math.abs(found.high - high)).toBeLessThan(tolerance)
}

describe('Wilson interval of a share', () => {
  it('Newcombe (1998) table I, method 3', () => {
    for (const { x, n, low, high, tolerance } of published.newcombe) check(x, n, low, high, tolerance)
  })

  it('R package binom, as kept in the tests of statsmodels 0.13.5', () => {
    for (const { x, n, low, high } of published.r_binom) check(x, n, low, high, 1e-7)
  })

  it('figures of the npm package wilson-score-interval (rounded quantile)', () => {
    for (const { x, n, low, high } of published.readme) check(x, n, low, high, 1e-5)
  })

  it('statsmodels 0.13.5, proportion_confint', () => {
    for (const { k, n, low, high } of figuresOf('reference_trend.json').wilson) check(k, n, low, high, 1e-12)
  })
})
