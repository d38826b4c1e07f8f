import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { createTurns } from '../../src/chat/delivery-pace.ts'

const MOST = 50
const SHARE = 48

/** When each request went that asked for its turn so many milliseconds after the one before had gone. */
function went(pauses: readonly number[], share: (n: number) => number): number[] {
  const turn = createTurns(MOST)
  let now = 1_000
  return pauses.map((ms, n) => {
    now = Math.max(now + ms, turn(now + ms, share(n)))
    return now
  })
}

describe('turns of what can wait', () => {
  it('never give a second more than its share, however late they are taken', () => {
    const late = fc.array(fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 400 })), { maxLength: 300 })
    fc.assert(
      fc.property(late, (pauses) => {
        const at = went(pauses, () => SHARE)
        for (const [n, first] of at.entries())
          expect(at[n + SHARE] ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(first + 999.999)
      }),
    )
  })

  it('are even, and all of the share is used where each is asked for at once', () => {
    const at = went(Array(SHARE * 10).fill(0), () => SHARE)
    expect(at.at(-1)! - at[0]!).toBeCloseTo(((SHARE * 10 - 1) * 1_000) / SHARE, 6)
    expect(Math.min(...at.slice(1).map((ms, n) => ms - at[n]!))).toBeGreaterThan(20)
  })

  it('make up for what came late: a stop of 80 ms every half second costs nothing', () => {
    const at = went(
      Array.from({ length: SHARE * 10 }, (_, n) => (n % 24 === 12 ? 80 : 0)),
      () => SHARE,
    )
    expect((at.length - 1) / ((at.at(-1)! - at[0]!) / 1_000)).toBeGreaterThan(SHARE * 0.99)
  })

  it('are fewer after an urgent message', () => {
    const at = went(Array(200).fill(0), (n) => (n < 100 ? SHARE : 42.5))
    const rate = 100 / ((at[199]! - at[99]!) / 1_000)
    expect(rate).toBeGreaterThan(40)
    expect(rate).toBeLessThanOrEqual(42.5)
  })
})
