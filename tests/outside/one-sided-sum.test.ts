import { describe, expect, it } from 'vitest'
import { randomOf } from '../../src/domain/diaries/random.ts'
import { oneSidedSum } from '../../src/domain/trend/one-sided-sum.ts'
import { figuresOf } from './figures.ts'

/** A sum that never restarts; a fall is a rise of the values turned round. */
const sums = (x: readonly number[], level: number, k: number): number[] =>
  oneSidedSum(
    x.map((value) => ({ value, level })),
    k,
    Number.POSITIVE_INFINITY,
  ).map((step) => step.sum)
const lowerSums = (x: readonly number[], level: number, k: number): number[] =>
  sums(
    x.map((v) => -v),
    -level,
    k,
  )
const firstAlarm = (x: readonly number[], level: number, k: number, h: number): number =>
  oneSidedSum(
    x.map((value) => ({ value, level })),
    k,
    h,
  ).findIndex((step) => step.alarm)

function check(found: number[], published: number[], tolerance: number): void {
  expect(found.length).toBe(published.length)
  for (const [n, sum] of found.entries()) expect(Math.abs(sum - published[n]!)).toBeLessThan(tolerance)
}

it('NIST/SEMATECH e-Handbook 6.3.2.3: both sums and the first signal', () => {
  const { x, target, k, h, upper, lower, first_signal_index, tolerance } =
    figuresOf('nist_6_3_2_3_cusum.json')
  check(sums(x, target, k), upper, tolerance)
  check(lowerSums(x, target, k), lower, tolerance)
  expect(firstAlarm(x, target, k, h)).toBe(first_signal_index)
})

it('Montgomery & Runger, table 16-8: both sums, no signal', () => {
  const { x, target, K, H, upper, lower, signal, tolerance } = figuresOf('montgomery_runger_16_8_cusum.json')
  check(sums(x, target, K), upper, tolerance)
  check(lowerSums(x, target, K), lower, tolerance)
  expect(signal).toBeNull()
  expect(firstAlarm(x, target, K, H)).toBe(-1)
  expect(Math.max(...lower)).toBeLessThan(H)
})

/** Mean count of independent N(shift, 1) values up to an alarm; the sum restarts, so one long series holds many runs. */
function runLength(shift: number, k: number, h: number, values = 120_000): number {
  const random = randomOf(1982, Math.round(100 * shift))
  const held = Array.from({ length: values }, () => ({ value: shift + random.normal(), level: 0 }))
  return values / oneSidedSum(held, k, h).filter((step) => step.alarm).length
}

describe('mean run lengths (examples of the R package spc 0.6.7)', () => {
  const published = figuresOf('control_chart_arl.json')
  const near = (found: number, table: number, part: number): void =>
    expect(Math.abs(found / table - 1)).toBeLessThan(part)

  it('one-sided, k 0.5, h 3: Brook & Evans (1972), Waldmann (1986)', () => {
    const [brookEvans, waldmann] = published.cusum_one_sided
    near(runLength(0, brookEvans.k, brookEvans.h), brookEvans.arl0, 0.08)
    near(runLength(1.5, brookEvans.k, brookEvans.h), brookEvans.arl_at_1_5, 0.02)
    for (const [n, shift] of waldmann.shift.entries()) {
      near(runLength(shift, waldmann.k, waldmann.h, 300_000), waldmann.arl[n], 0.2)
    }
  })

  it('two-sided, k 0.5, h 4: Lucas & Crosier (1982) table 1', () => {
    const { shift, arl } = published.cusum_two_sided_k05_h4
    for (const [n, by] of shift.entries()) {
      // two one-sided sums: their rates add (Kemp 1961); a shifted fall-side sum is silent from a shift of 1 on
      const up = 1 / runLength(by, 0.5, 4)
      const down = by >= 1 ? 0 : 1 / runLength(-by, 0.5, 4)
      near(1 / (up + down), arl[n], 0.08)
    }
  })
})
