import { expect, it } from 'vitest'
import { figuresOf } from './figures.ts'

// No rule of ours is an exponentially weighted average: with fixed limits it is blind while somebody improves.
// The handbook's figures are kept, recomputed here alone, so that whoever adds one has its check at hand; the run
// lengths of Lucas & Saccucci (1990) in control_chart_arl.json wait for the same.
it('NIST/SEMATECH e-Handbook 6.3.2.4: the published column and limits agree with their formula', () => {
  const { x, lam, start, s, L, ewma, ewma_published_2dp, ucl, lcl, limit_tolerance, signals } =
    figuresOf('nist_6_3_2_4_ewma.json')
  let average = start
  const found = x.map((value: number) => {
    average = lam * value + (1 - lam) * average
    return average
  })
  const width = L * s * Math.sqrt(lam / (2 - lam))
  expect(Math.abs(start + width - ucl)).toBeLessThan(limit_tolerance)
  expect(Math.abs(start - width - lcl)).toBeLessThan(limit_tolerance)
  for (const [n, value] of found.entries()) {
    expect(value).toBeCloseTo(ewma[n], 9)
    expect(Math.abs(value - ewma_published_2dp[n])).toBeLessThan(0.00501)
  }
  expect(found.filter((value: number) => value > ucl || value < lcl)).toEqual(signals)
})
