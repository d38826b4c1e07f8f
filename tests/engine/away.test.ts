import SqliteDatabase from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createHeart } from '../../src/heartbeat.ts'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
  await practice.enrol('dipper')
})
afterEach(() => practice.close())

const at = (instant: string) => createHeart({ ...practice.store, now: () => new Date(instant) })
const told = async () => {
  await practice.bot.tick()
  return practice.toCoach().filter((message) => message.text.includes('I was away'))
}

describe('the bot was away', () => {
  it('the coach hears so once, with whose prompts fell into that time', async () => {
    await at('2026-03-01T23:00:00Z').beat()
    practice.away('2026-03-02', '11:30')
    await at('2026-03-02T11:30:00Z').awake()
    await at('2026-03-02T11:30:00Z').awake()
    const [message, ...more] = await told()
    expect(more).toEqual([])
    expect(message?.text).toContain('since Sun 1 Mar, 23:00 (13 hours)')
    expect(message?.text).toContain('they may have waited: **dipper**, **heron**')
    expect(message?.drills).toEqual([])
  })

  it('an urgent sign that nobody has taken up stands before the rest', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', "I can't pee since this morning")
    await at('2026-03-02T09:00:00Z').beat()
    practice.away('2026-03-02', '12:00')
    await at('2026-03-02T12:00:00Z').awake()
    expect((await told())[0]?.text.split('\n')[1]).toMatch(/urgent sign is open.*heron.*reach them now/)
  })

  it('says nothing after less than an hour, nor at the very first start', async () => {
    await at('2026-03-02T06:00:00Z').awake()
    await at('2026-03-02T06:00:00Z').beat()
    await at('2026-03-02T06:59:00Z').awake()
    expect(await told()).toEqual([])
  })
})

describe('no prompt reaches a client', () => {
  const dropped = async (day: string) => {
    const { id } = (await practice.file('heron')).client
    const row = await practice.store.store.transaction((tx) => tx.outboxByKey(`${id}/prompt/${day}`))
    await practice.bot.handle({ kind: 'undelivered', outbox: row!.id, reason: 'stale' })
    // the prompts of this practice were delivered: only past the store can one be made a dropped one
    const db = new SqliteDatabase(practice.path)
    db.prepare("update Outbox set state = 'dropped' where id = ?").run(row!.id)
    db.close()
  }
  const without = () =>
    practice.toCoach().filter((message) => message.text.includes('had no prompt for two days'))

  it('for two days, and the coach is told', async () => {
    await practice.until('2026-03-03', '23:30')
    await dropped('2026-03-02')
    expect(without()).toEqual([])
    await dropped('2026-03-03')
    expect(without().map((message) => message.about)).toEqual(['heron'])
  })
})

describe('the beat', () => {
  it('is well while ticks go through, and not when they no longer do', async () => {
    let now = new Date('2026-03-02T08:00:00Z')
    const heart = createHeart({ ...practice.store, now: () => now })
    expect(heart.isWell()).toBe(false)
    await heart.beat()
    expect(heart.isWell()).toBe(true)
    now = new Date('2026-03-02T08:05:00Z')
    expect(heart.isWell()).toBe(false)
  })
})
