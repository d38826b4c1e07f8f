import { expect, it } from 'vitest'
import { createBot } from '../src/bot.ts'
import type { DueRow } from '../src/engine/rows.ts'

const due = (id: string): DueRow => ({
  id,
  practiceId: 'p',
  clientId: id,
  kind: 'prompt',
  at: new Date(0),
  data: {},
})

/** A bot whose engine cannot handle some rows; handled ones are gone, as the engine's transaction leaves them. */
function botWith(ids: readonly string[], broken: (id: string) => boolean, sending = async () => {}) {
  let rows = ids.map(due)
  const handled: string[] = []
  const troubles: unknown[] = []
  const bot = createBot({
    engine: {
      handle: async (event) => {
        if (event.kind !== 'due' || broken(event.due.id)) throw new Error('cannot be handled')
        handled.push(event.due.id)
        rows = rows.filter((row) => row.id !== event.due.id)
        return { answer: null }
      },
    },
    dues: { dueBy: async (_now, most) => rows.slice(0, most), nextDue: async () => null },
    outbox: {
      waiting: async () => [],
      claim: async () => {
        await sending()
        return []
      },
      marked: async () => new Set(),
      sent: async () => {},
      failed: async () => {},
      dropped: async () => {},
      retry: async () => {},
      nextDue: async () => null,
    },
    courier: { deliver: async () => ({ channel: 'c', platformId: 'm' }) },
    now: () => new Date(1),
    onTrouble: (error) => troubles.push(error),
  })
  const add = (id: string) => {
    rows = [...rows, due(id)]
  }
  return { bot, handled, troubles, add, left: () => rows.map((row) => row.id) }
}

it('handles everybody else where one row cannot be handled, and keeps that row for the next tick', async () => {
  const { bot, handled, troubles, left } = botWith(['dipper', 'heron', 'wren'], (id) => id === 'heron')
  await bot.tick()
  expect(handled).toEqual(['dipper', 'wren'])
  expect(left()).toEqual(['heron'])
  expect(troubles).toHaveLength(1)
})

it('lets others in after each row: whoever writes while many are due must be heard', async () => {
  const many = Array.from({ length: 250 }, (_, n) => `client-${n}`)
  const { bot, handled } = botWith(many, () => false)
  const heard: number[] = []
  const hear = (): void => {
    heard.push(handled.length)
    if (handled.length < many.length) setImmediate(hear)
  }
  setImmediate(hear)
  await bot.tick()
  const gaps = heard.map((before, n) => before - (heard[n - 1] ?? 0))
  expect(Math.max(...gaps)).toBeLessThanOrEqual(2)
})

it('sends what the first hundred rows led to while the next hundred are handled, and no more than those', async () => {
  const many = Array.from({ length: 250 }, (_, n) => `client-${n}`)
  const at: number[] = []
  const { bot, handled } = botWith(
    many,
    () => false,
    async () => {
      at.push(handled.length)
      // the second look for messages is the first run of the lane for all
      if (at.length === 2) while (handled.length < 200) await new Promise((resolve) => setImmediate(resolve))
    },
  )
  await bot.tick()
  expect(at.slice(0, 2)).toEqual([100, 100])
  expect(at[2]).toBe(200)
  expect(handled).toHaveLength(250)
})

it('gives up a tick in which everything fails', async () => {
  const many = Array.from({ length: 50 }, (_, n) => `client-${n}`)
  const { bot, left } = botWith(many, () => true)
  await expect(bot.tick()).rejects.toThrow('cannot be handled')
  expect(left()).toHaveLength(50)
})

it('handles what comes due while a long line is being sent, each row once', async () => {
  let end: () => void = () => {}
  const long = new Promise<void>((resolve) => {
    end = resolve
  })
  let lines = 0
  const { bot, handled, add } = botWith(
    ['dipper'],
    () => false,
    () => (++lines === 1 ? long : Promise.resolve()),
  )
  const first = bot.tick()
  await expect.poll(() => lines).toBe(1)
  add('heron')
  await bot.tickBeside()
  expect(handled).toEqual(['dipper', 'heron'])
  end()
  await first
  expect(handled).toEqual(['dipper', 'heron'])
})
