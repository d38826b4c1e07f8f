import { expect, it } from 'vitest'
import { addDays, daysFrom } from '../../src/domain/day.ts'
import { openPractice } from '../engine/practice.ts'

const START = '2026-03-02'
const MINUTE = 60_000
const CLIENTS = [
  'bunting',
  'curlew',
  'dipper',
  'dunlin',
  'gannet',
  'heron',
  'linnet',
  'plover',
  'siskin',
  'wren',
]

it('prompts are spread over the practice’s window, each client at the same instant every day', async () => {
  const practice = await openPractice(addDays(START, -1))
  try {
    await practice.command('set-up', { window: 30 })
    for (const client of CLIENTS) await practice.enrol(client)
    const days = daysFrom(START, addDays(START, 1))
    await practice.until(addDays(START, 1), '12:00')

    const prompts = practice.sent.filter(
      ({ message, at }) => message.kind === 'prompt' && at >= new Date(START),
    )
    for (const client of CLIENTS) {
      const own = prompts.filter(({ to }) => to === `user-${client}`).map(({ at }) => at)
      expect(own.map((at) => at.toISOString().slice(0, 10))).toEqual(days)
      const [late, again] = own.map((at, n) => at.getTime() - Date.parse(`${days[n]}T08:00Z`))
      expect(late).toBeGreaterThanOrEqual(0)
      expect(late).toBeLessThan(30 * MINUTE)
      expect(again).toBe(late)
    }
    // ten in half an hour: hardly any two in the same minute
    const minutes = new Set(prompts.map(({ at }) => at.toISOString().slice(11, 16)))
    expect(minutes.size).toBeGreaterThanOrEqual(7)
  } finally {
    await practice.close()
  }
}, 60_000)
