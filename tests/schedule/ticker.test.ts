import pino from 'pino'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { startTicker, type Ticker } from '../../src/schedule/ticker.ts'

const HOUR = 3_600_000
const logs: string[] = []
const log = pino({ level: 'debug' }, { write: (line) => void logs.push(line) })
let ticker: Ticker

beforeEach(() => {
  vi.useFakeTimers({ now: new Date('2026-03-08T07:00:01Z') })
  logs.length = 0
})
afterEach(async () => {
  await ticker.stop()
  vi.useRealTimers()
})

describe('the ticker', () => {
  it('ticks every five seconds, on the fives', async () => {
    const at: string[] = []
    ticker = startTicker(async () => void at.push(new Date().toISOString().slice(17, 19)), log)
    await vi.advanceTimersByTimeAsync(20_000)
    expect(at).toEqual(['05', '10', '15', '20'])
  })

  it('begins no tick while one is under way', async () => {
    let [under, most, ticks] = [0, 0, 0]
    ticker = startTicker(async () => {
      ticks += 1
      under += 1
      most = Math.max(most, under)
      await new Promise((resolve) => setTimeout(resolve, 12_000))
      under -= 1
    }, log)
    await vi.advanceTimersByTimeAsync(60_000)
    expect(most).toBe(1)
    expect(ticks).toBe(4)
  })

  it('goes on after a tick that failed, and logs of it kind, code and place, and no words', async () => {
    let ticks = 0
    ticker = startTicker(async () => {
      ticks += 1
      throw Object.assign(new TypeError('heron wrote: numb since Monday'), { code: 'EAGAIN' })
    }, log)
    await vi.advanceTimersByTimeAsync(15_000)
    expect(ticks).toBe(3)
    for (const line of logs) {
      const { error } = JSON.parse(line)
      expect(error).toMatchObject({ name: 'TypeError', code: 'EAGAIN' })
      expect(error.frames[0]).toContain('ticker.test.ts')
      expect(line).not.toMatch(/heron|numb|Monday/)
    }
    expect(logs).toHaveLength(3)
  })

  it('ends at once, without waiting for a tick under way', async () => {
    let ticks = 0
    ticker = startTicker(() => {
      ticks += 1
      return new Promise(() => {})
    }, log)
    await vi.advanceTimersByTimeAsync(5_000)
    await ticker.stop()
    await vi.advanceTimersByTimeAsync(HOUR)
    expect(ticks).toBe(1)
  })

  it.each([
    ['put back', -2 * HOUR],
    ['put forward', 2 * HOUR],
    ['put forward by a week', 168 * HOUR],
  ])('goes on within seconds when the host’s clock is %s', async (_, jump) => {
    let ticks = 0
    ticker = startTicker(async () => {
      ticks += 1
    }, log)
    await vi.advanceTimersByTimeAsync(10_000)
    vi.setSystemTime(Date.now() + jump)
    const before = ticks
    await vi.advanceTimersByTimeAsync(20_000)
    expect(ticks - before).toBeGreaterThanOrEqual(2)
  })
})
