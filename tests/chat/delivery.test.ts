import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { createDelivery } from '../../src/chat/delivery.ts'
import { retryAt } from '../../src/chat/retry-at.ts'
import type { Undelivered } from '../../src/engine/event.ts'
import { Undeliverable } from '../../src/engine/ports.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import { fakeOutbox, message, row } from './outbox.ts'

const START = Date.parse('2026-03-08T12:00:00Z')

/** A delivery with a clock that is moved by hand; `fails` gives the error of a row, if any. */
function setUp(rows: OutboxRow[], fails: (row: OutboxRow) => Error | null = () => null) {
  const outbox = fakeOutbox(rows)
  const events: Undelivered[] = []
  const tried: string[] = []
  const heard: string[] = []
  const clock = { ms: START }
  const delivery = createDelivery({
    outbox,
    now: () => new Date(clock.ms),
    onSent: (sent) => heard.push(sent.id),
    undelivered: async (event) => events.push(event),
    courier: {
      async deliver(given) {
        tried.push(given.id)
        const error = fails(given)
        if (error) throw error
        return { channel: 'dm', platformId: `p-${given.id}` }
      },
    },
  })
  return { delivery, outbox, events, tried, heard, clock }
}

const down = (): Error => new Error('fetch failed')

describe('delivery', () => {
  it('sends urgent first, then in order of writing, and marks each sent', async () => {
    const prompt = row()
    const urgent = row({ priority: 0, clientId: 'c:dipper' })
    const later = row()
    const { delivery, outbox, heard } = setUp([prompt, urgent, later])
    await delivery.drain()
    expect(heard).toEqual([urgent.id, prompt.id, later.id])
    expect(outbox.rows.map((r) => [r.state, r.platformId])).toEqual(
      outbox.rows.map((r) => ['sent', `p-${r.id}`]),
    )
  })

  it('leaves what is not due yet', async () => {
    const { delivery, tried, clock } = setUp([row({ notBefore: new Date(START + 1) })])
    await delivery.drain()
    expect(tried).toEqual([])
    clock.ms += 1
    await delivery.drain()
    expect(tried).toHaveLength(1)
  })

  it('drops a stale message, tells the engine and sends nothing', async () => {
    const stale = row({ expires: new Date(START) })
    const { delivery, outbox, events, tried } = setUp([stale])
    await delivery.drain()
    expect(tried).toEqual([])
    expect(outbox.rows[0]).toMatchObject({ state: 'dropped', reason: 'stale' })
    expect(events).toEqual([{ kind: 'undelivered', outbox: stale.id, reason: 'stale' }])
  })

  it('gives up where nobody can be reached, and tells the engine', async () => {
    const closed = row()
    const { delivery, outbox, events, tried } = setUp([closed], () => new Undeliverable('closed'))
    await delivery.drain()
    await delivery.drain()
    expect(tried).toEqual([closed.id])
    expect(outbox.rows[0]).toMatchObject({ state: 'failed', reason: 'closed' })
    expect(events).toEqual([{ kind: 'undelivered', outbox: closed.id, reason: 'closed' }])
  })

  it('tries again later, and sends what waited behind in order', async () => {
    const first = row()
    const second = row({ priority: 4 })
    const other = row({ clientId: 'c:dipper', body: message({ address: { to: 'client', user: '201' } }) })
    const trouble = { on: true }
    const { delivery, heard, clock } = setUp([first, second, other], (r) =>
      trouble.on && r.id === first.id ? down() : null,
    )
    await delivery.drain()
    expect(heard).toEqual([other.id])
    trouble.on = false
    clock.ms += 5_000
    await delivery.drain()
    expect(heard).toEqual([other.id, first.id, second.id])
  })

  it('holds back what was written meanwhile, but no answer, nothing urgent and nothing to another place', async () => {
    const first = row()
    const rows = [first]
    const { delivery, heard, clock } = setUp(rows, (r) =>
      r.id === first.id && clock.ms === START ? down() : null,
    )
    await delivery.drain()
    const digest = row({ priority: 4 })
    const receipt = row({ priority: 2 })
    const urgent = row({ priority: 0 })
    const alert = row({ priority: 1, body: message({ address: { to: 'alerts', channel: '300' } }) })
    const coach = row({ priority: 2, body: message({ address: { to: 'coach', channel: '301' } }) })
    rows.push(digest, receipt, urgent, alert, coach)
    await delivery.drain()
    expect(heard).toEqual([urgent.id, alert.id, receipt.id, coach.id])
    clock.ms += 5_000
    await delivery.drain()
    expect(heard.slice(4)).toEqual([first.id, digest.id])
  })

  it('looks again when called meanwhile: an urgent message waits for one send at most', async () => {
    const rows = [row(), row(), row()]
    const urgent = row({ priority: 0 })
    const { delivery, heard } = setUp(rows, (r) => {
      if (r.id !== rows[0]?.id || rows.includes(urgent)) return null
      rows.push(urgent)
      void delivery.drain()
      return null
    })
    const [first, second, third] = rows.map((r) => r.id)
    await delivery.drain()
    expect(heard).toEqual([first, urgent.id, second, third])
  })

  it('does not send twice what the store could not mark', async () => {
    const only = row()
    const { delivery, outbox, tried, heard, clock } = setUp([only])
    outbox.broken = true
    await expect(delivery.drain()).rejects.toThrow('locked')
    outbox.broken = false
    clock.ms += 600_000
    await delivery.drain()
    expect(tried).toEqual([only.id])
    expect(heard).toEqual([only.id])
    expect(outbox.rows[0]?.state).toBe('sent')
  })

  it('tries again where the engine could not be told, and goes on with the others', async () => {
    const closed = row()
    const other = row({ clientId: 'c:dipper' })
    const outbox = fakeOutbox([closed, other])
    const delivery = createDelivery({
      outbox,
      now: () => new Date(START),
      onSent: () => {},
      undelivered: async () => {
        throw new Error('database is locked')
      },
      courier: {
        async deliver(given) {
          if (given.id === closed.id) throw new Undeliverable('closed')
          return { channel: 'dm', platformId: '1' }
        },
      },
    })
    await delivery.drain()
    expect(outbox.rows.map((r) => r.state)).toEqual(['waiting', 'sent'])
  })
})

describe('the wait before another try', () => {
  const wait = (attempts: number, priority = 3, id = 'a') =>
    retryAt({ id, attempts, priority }, new Date(START)).getTime() - START

  it('is the same for the same row and lies between half and all of a doubling time', () => {
    fc.assert(
      fc.property(fc.string(), fc.nat(40), fc.nat(4), (id, attempts, priority) => {
        const most = Math.min(5_000 * 2 ** attempts, priority <= 1 ? 30_000 : 300_000)
        const ms = wait(attempts, priority, id)
        expect(ms).toBe(wait(attempts, priority, id))
        expect(ms).toBeGreaterThanOrEqual(most / 2)
        expect(ms).toBeLessThanOrEqual(most)
      }),
    )
  })

  it('differs from row to row', () => {
    expect(new Set(['a', 'b', 'c', 'd'].map((id) => wait(3, 3, id))).size).toBe(4)
  })
})
