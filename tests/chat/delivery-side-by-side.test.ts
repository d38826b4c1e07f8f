import { setTimeout as pause } from 'node:timers/promises'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { createDelivery } from '../../src/chat/delivery.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import { fakeOutbox, message, row } from './outbox.ts'

const NOW = new Date('2026-03-08T12:00:00Z')

/** A row of a client of its own. */
const of = (n: number, more: Partial<OutboxRow> = {}): OutboxRow =>
  row({ clientId: `c:${n}`, body: message({ address: { to: 'client', user: `${200 + n}` } }), ...more })

/** A platform that answers to each message when it is let go. */
function slow(rows: OutboxRow[]) {
  const outbox = fakeOutbox(rows)
  const begun: string[] = []
  const gates = new Map<string, () => void>()
  const delivery = createDelivery({
    outbox,
    now: () => NOW,
    onSent: () => {},
    undelivered: async () => undefined,
    courier: {
      async deliver({ id }) {
        begun.push(id)
        await new Promise<void>((resolve) => gates.set(id, resolve))
        return { channel: 'dm', platformId: id }
      },
    },
  })
  const answer = async (...some: OutboxRow[]): Promise<void> => {
    for (const { id } of some) gates.get(id)!()
    await pause(5)
  }
  return { delivery, outbox, begun, answer }
}

const ids = (rows: readonly OutboxRow[]): string[] => rows.map(({ id }) => id)

it('sends to three clients side by side, and to the next as soon as one has been answered', async () => {
  const rows = [of(1), of(2), of(3), of(4), of(5)]
  const { delivery, outbox, begun, answer } = slow(rows)
  const done = delivery.drain()
  await pause(5)
  expect(begun).toEqual(ids(rows.slice(0, 3)))
  await answer(rows[1]!)
  expect(begun).toEqual(ids(rows.slice(0, 4)))
  await answer(rows[0]!, rows[2]!, rows[3]!)
  await answer(rows[4]!)
  await done
  expect(outbox.rows.map(({ state }) => state)).toEqual(rows.map(() => 'sent'))
})

it('sends nothing to a client while another message is on its way there, nor anything past it', async () => {
  const rows = [of(1), of(1), of(2)]
  const { delivery, begun, answer } = slow(rows)
  const done = delivery.drain()
  await pause(5)
  expect(begun).toEqual(ids(rows.slice(0, 1)))
  await answer(rows[0]!)
  expect(begun).toEqual(ids(rows))
  await answer(rows[1]!, rows[2]!)
  await done
})

it('where the store fails, waits for what is under way, begins nothing more, and sends none of it again', async () => {
  const rows = [of(1), of(2), of(3), of(4)]
  const { delivery, outbox, begun, answer } = slow(rows)
  outbox.broken = true
  const done = delivery.drain()
  const ended = expect(done).rejects.toThrow('locked')
  await pause(5)
  await answer(rows[0]!)
  expect(begun).toEqual(ids(rows.slice(0, 3)))
  await answer(rows[1]!, rows[2]!)
  await ended
  outbox.broken = false
  const again = delivery.drain()
  await pause(5)
  await answer(rows[3]!)
  await again
  expect(begun).toEqual(ids(rows))
  expect(outbox.rows.map(({ state }) => state)).toEqual(rows.map(() => 'sent'))
})

it('whatever fails and however long each takes: all are sent once, each client’s in order', async () => {
  const one = fc.record({ client: fc.nat(3), ms: fc.nat(4), fails: fc.nat(2) })
  await fc.assert(
    fc.asyncProperty(fc.array(one, { maxLength: 25 }), async (plan) => {
      const rows = plan.map(({ client }) => of(client))
      const left = new Map(rows.map(({ id }, n) => [id, plan[n]!.fails]))
      const heard: OutboxRow[] = []
      const clock = { ms: NOW.getTime() }
      const delivery = createDelivery({
        outbox: fakeOutbox(rows),
        now: () => new Date(clock.ms),
        onSent: (sent) => heard.push(sent),
        undelivered: async () => undefined,
        courier: {
          async deliver({ id }) {
            await pause(plan[rows.findIndex((r) => r.id === id)]!.ms)
            const fails = left.get(id)!
            left.set(id, fails - 1)
            if (fails > 0) throw new Error('fetch failed')
            return { channel: 'dm', platformId: id }
          },
        },
      })
      for (let n = 0; n < 200 && heard.length < rows.length; n += 1) {
        await delivery.drain()
        clock.ms += 60_000
      }
      expect(heard.map(({ id }) => id).sort()).toEqual(ids(rows).sort())
      for (const client of new Set(rows.map((r) => r.clientId))) {
        const own = (some: readonly OutboxRow[]) => ids(some.filter((r) => r.clientId === client))
        expect(own(heard)).toEqual(own(rows))
      }
    }),
    { numRuns: 60 },
  )
})
