import { expect, it } from 'vitest'
import { createDelivery } from '../../src/chat/delivery.ts'
import { paced, paceOf } from '../../src/chat/delivery-pace.ts'
import type { OutboxStore } from '../../src/engine/ports.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import { fakeOutbox, message, row } from './outbox.ts'

/** A delivery whose courier is stuck with some rows until it is let go. */
function stuckWith(rows: OutboxRow[], stuck: (row: OutboxRow) => boolean, store: Partial<OutboxStore> = {}) {
  let letGo = (): void => {}
  const free = new Promise<void>((resolve) => {
    letGo = resolve
  })
  const heard: string[] = []
  const delivery = createDelivery({
    outbox: { ...fakeOutbox(rows), ...store },
    now: () => new Date('2026-03-08T12:00:00Z'),
    onSent: ({ id }) => heard.push(id),
    undelivered: async () => undefined,
    courier: {
      async deliver(given) {
        if (stuck(given)) await free
        return { channel: 'dm', platformId: given.id }
      },
    },
  })
  return { delivery, heard, letGo }
}

it('sends urgent messages, alerts and answers past one that is stuck, in order for each client', async () => {
  const prompt = row()
  const rows = [prompt]
  const { delivery, heard, letGo } = stuckWith(rows, ({ id }) => id === prompt.id)
  const first = delivery.drain()
  await new Promise((resolve) => setTimeout(resolve, 1))
  const answer = row({ priority: 2, clientId: 'c:dipper' })
  const next = row({ priority: 2, clientId: 'c:dipper' })
  const alert = row({ priority: 1, body: message({ address: { to: 'alerts', channel: '300' } }) })
  const urgent = row({ priority: 0 })
  rows.push(answer, next, alert, urgent, row())
  const second = delivery.drain()
  for (let n = 0; n < 100 && heard.length < 4; n += 1) await new Promise((resolve) => setTimeout(resolve, 5))
  expect(heard).toEqual([urgent.id, alert.id, answer.id, next.id])
  letGo()
  await Promise.all([first, second])
  expect(heard).toEqual([urgent.id, alert.id, answer.id, next.id, prompt.id, rows.at(-1)!.id])
})

it('sends an urgent message past alerts that wait for their channel', async () => {
  const alerts = Array.from({ length: 12 }, (_, n) =>
    row({ priority: 1, clientId: `c:${n}`, body: message({ address: { to: 'alerts', channel: '300' } }) }),
  )
  const rows = [...alerts]
  const { delivery, heard, letGo } = stuckWith(rows, ({ priority }) => priority === 1)
  const first = delivery.drain()
  await new Promise((resolve) => setTimeout(resolve, 1))
  const second = delivery.drain()
  const urgent = row({ priority: 0 })
  rows.push(urgent)
  const third = delivery.drain()
  for (let n = 0; n < 200 && heard.length < 1; n += 1) await new Promise((resolve) => setTimeout(resolve, 5))
  expect(heard).toEqual([urgent.id])
  letGo()
  await Promise.all([first, second, third])
  expect(heard).toHaveLength(13)
  expect(new Set(heard).size).toBe(13)
})

it('sends an urgent message unclaimed where the store cannot write the claim, and nothing else', async () => {
  const prompt = row({ clientId: 'c:dipper' })
  const urgent = row({ priority: 0 })
  const claim = () => Promise.reject(new Error('the disk is full'))
  const { delivery, heard } = stuckWith([prompt, urgent], () => false, { claim })
  await expect(delivery.drain()).rejects.toThrow('full')
  expect(heard).toEqual([urgent.id])
})

it('paces prompts evenly and lets urgent messages by', async () => {
  const budget = {
    globalRemaining: 100,
    globalReset: 0,
    options: { globalRequestsPerSecond: 100 },
  }
  const sent: string[] = []
  const courier = paced(
    {
      async deliver({ id }) {
        sent.push(id)
        return { channel: 'dm', platformId: id }
      },
    },
    paceOf(budget),
  )
  const begun = performance.now()
  const urgent = row({ priority: 0 })
  const prompts = Promise.all(Array.from({ length: 20 }, () => courier.deliver(row())))
  await courier.deliver(urgent)
  expect(sent.indexOf(urgent.id)).toBeLessThan(3)
  await prompts
  // 18 gaps of a hundredth of a second at least: it never takes less, however busy the machine
  expect(performance.now() - begun).toBeGreaterThan(170)
})
