import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { CheckInRow } from '../../src/engine/rows.ts'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const day = async (on: string, client = 'heron'): Promise<CheckInRow | undefined> =>
  (await practice.file(client)).checkIns.find((row) => row.day === on)
const prompts = (client = 'heron') =>
  practice.sent.filter((one) => one.to === `user-${client}` && one.message.kind === 'prompt')

describe('the day of a reply', () => {
  beforeEach(() => practice.enrol('heron'))

  it('is that of the latest prompt, after midnight as well, until the next one', async () => {
    await practice.until('2026-03-03', '01:30')
    await practice.say('heron', '2 calf 4')
    await practice.until('2026-03-03', '07:30')
    await practice.say('heron', 'today 1 knee 3')
    expect(await day('2026-03-02')).toMatchObject({ sessions: 1, reach: 'knee', pain: 3 })
    expect(await day('2026-03-03')).toBeUndefined()
    await practice.until('2026-03-03', '08:30')
    await practice.say('heron', '2 back 1')
    expect(await day('2026-03-03')).toMatchObject({ reach: 'back', pain: 1 })
  })

  it('is that of the prompt before, for what was written before this morning’s prompt and read after it', async () => {
    await practice.until('2026-03-03', '08:30')
    await practice.say('heron', '2 calf 4', { minutesAgo: 90 })
    expect(await day('2026-03-02')).toMatchObject({ sessions: 2, filled: '2026-03-03' })
    expect(await day('2026-03-03')).toBeUndefined()
  })

  it('is the day of writing where the bot was away, and not marked as filled in later', async () => {
    practice.away('2026-03-05', '09:00')
    await practice.say('heron', '2 calf 4', { minutesAgo: 2 * 1440 - 60 })
    const row = (await practice.file('heron')).checkIns.at(-1)
    expect(row).toMatchObject({ day: '2026-03-03', filled: '2026-03-03', late: false })
  })

  it('is the one named, up to three days back, and several in one message', async () => {
    await practice.until('2026-03-06', '09:00')
    const told = await practice.say('heron', 'yesterday 1 calf 5, today 2 knee 3')
    expect(await day('2026-03-05')).toMatchObject({ pain: 5, filled: '2026-03-06' })
    expect(await day('2026-03-06')).toMatchObject({ pain: 3 })
    expect(told.filter((message) => message.kind === 'receipt')).toHaveLength(1)
    expect(told[0]!.text).toContain('yesterday')
    await practice.say('heron', 'tuesday 2 foot 6')
    expect(await day('2026-03-03')).toMatchObject({ reach: 'foot', late: true })
  })

  it('is asked back where it lies further back, with the values kept', async () => {
    await practice.until('2026-03-09', '09:00')
    const told = await practice.say('heron', '20 Feb 2 foot 6')
    expect(told.map((message) => [message.kind, message.asks])).toEqual([['ask', 'day']])
    await practice.press('heron', 'day-2026-03-08')
    expect(await day('2026-03-08')).toMatchObject({ sessions: 2, reach: 'foot', pain: 6 })
  })

  it('is told to lie too far back where other days of the message are written down', async () => {
    await practice.until('2026-03-09', '09:00')
    const told = await practice.say('heron', '20 Feb 2 foot 6, yesterday 1 calf 5, today 2 knee 3')
    expect(await day('2026-03-09')).toMatchObject({ sessions: 2, reach: 'knee', pain: 3 })
    expect(await day('2026-03-08')).toMatchObject({ sessions: 1, reach: 'calf', pain: 5 })
    expect(told.map((message) => message.kind)).toEqual(['receipt'])
    expect(told[0]!.text).toContain('last three days only')
  })

  it('keeps its first mark when it is corrected, and is marked late where only its signs were told in time', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', 'no signs')
    await practice.until('2026-03-04', '21:00')
    await practice.say('heron', 'monday 2 calf 4')
    expect(await day('2026-03-02')).toMatchObject({ filled: '2026-03-04', late: true, denied: 'all' })
    await practice.say('heron', '2 calf 4')
    await practice.until('2026-03-05', '09:00')
    await practice.say('heron', 'yesterday 2 calf 5')
    expect(await day('2026-03-04')).toMatchObject({ pain: 5, filled: '2026-03-04', late: false })
  })

  it('keeps every version in the trail, edits and messages taken back too', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', '2 calf 4', { id: 'm1' })
    await practice.wait(1)
    await practice.say('heron', 'sorry pain was 5')
    await practice.wait(1)
    await practice.say('heron', '2 calf 6', { edits: 'm1' })
    await practice.wait(1)
    await practice.takeBack('heron')
    const { versions } = await practice.store.store.transaction(async (tx) =>
      tx.told((await tx.clientByRef('guild-1', 'heron'))!.client.id),
    )
    expect(versions.map((version) => version.via)).toEqual(['words', 'words', 'edit', 'deleted'])
    expect(versions.map((version) => version.words).slice(0, 3)).toEqual([
      '2 calf 4',
      'sorry pain was 5',
      '2 calf 6',
    ])
    expect(await day('2026-03-02')).toMatchObject({ pain: 6 })
  })
})

describe('a receipt', () => {
  beforeEach(async () => {
    await practice.enrol('heron')
    await practice.until('2026-03-02', '08:30')
  })

  it.each([
    ['2 calf 4', null],
    ['calf 4', 'sessions'],
    ['2 calf', 'pain'],
    ['2 sessions pain 4', 'reach'],
  ])('is one message, which may carry the next question: “%s”', async (words, asks) => {
    const told = await practice.say('heron', words)
    expect(told.map((message) => message.kind)).toEqual(['receipt'])
    expect(told[0]!.asks).toBe(asks)
    expect(told[0]!.text).toContain('Got it')
  })

  it('offers a way to put it right, by form', async () => {
    await practice.say('heron', '2 calf 4')
    const told = await practice.fill('heron', 'put-right', { pain: '6' })
    expect(told.filter((message) => message.kind === 'receipt')).toHaveLength(1)
    expect(await day('2026-03-02')).toMatchObject({ sessions: 2, reach: 'calf', pain: 6 })
  })

  it('asks what is unclear and writes nothing down for it', async () => {
    const told = await practice.say('heron', 'pain is bad')
    expect(told.map((message) => [message.kind, message.asks])).toEqual([['ask', 'pain']])
    expect((await day('2026-03-02'))?.pain ?? null).toBeNull()
    await practice.say('heron', '7')
    expect(await day('2026-03-02')).toMatchObject({ pain: 7 })
  })

  it('goes on asking one thing at a time until all is there, by press and in words', async () => {
    await practice.say('heron', 'calf')
    expect(practice.to('heron').at(-1)?.asks).toBe('sessions')
    await practice.press('heron', 'sessions-1')
    expect(practice.to('heron').at(-1)?.asks).toBe('pain')
    const told = await practice.say('heron', '4')
    expect(told.map((message) => [message.kind, message.asks])).toEqual([['receipt', null]])
    expect(await day('2026-03-02')).toMatchObject({ sessions: 1, reach: 'calf', pain: 4 })
  })

  it('drops a question with the day: a bare number next day is no answer to it', async () => {
    await practice.say('heron', '2 calf')
    await practice.until('2026-03-03', '08:30')
    await practice.say('heron', '4')
    expect((await day('2026-03-02'))?.pain ?? null).toBeNull()
  })

  it('passes a question beside the values on to the coach', async () => {
    const told = await practice.say('heron', 'can I row tomorrow?')
    expect(told.map((message) => message.kind).sort()).toEqual(['notice', 'notice'])
    expect(practice.toCoach().at(-1)?.text).toContain('can I row tomorrow?')
    await practice.command('answer', { client: 'heron', text: 'Easy pieces only.' })
    expect(practice.to('heron').at(-1)?.text).toContain('Easy pieces only.')
  })

  it('says kindly what it cannot read', async () => {
    for (const attached of ['voice', 'file'] as const) {
      const told = await practice.say('heron', '', { attached })
      expect(told[0]!.text).toContain('write it in a line')
    }
    expect((await practice.say('heron', 'qwertz'))[0]?.text).toContain('could not make that out')
  })
})

describe('somebody who answers in words', () => {
  beforeEach(async () => {
    await practice.invite('heron', { 'in-words': true })
    for (const text of [
      'yes, I agree',
      'yes',
      'none',
      '41',
      'may',
      '1',
      'yes',
      'none',
      'none',
      'calf',
      '6',
      'left',
      '2',
      'none',
      'none',
    ])
      await practice.say('heron', text)
    await practice.command('plan', { client: 'heron', sessions: 2, ladders: 'extension:1' })
    await practice.until('2026-03-02', '08:30')
  })

  it('is never shown a button, and can answer every choice by its number', async () => {
    await practice.say('heron', 'worried about my bladder, not sure if it is weak')
    const asked = practice.to('heron').at(-1)!
    expect(asked.text).toContain('1: Yes')
    expect(asked.text).toContain('2: No')
    const told = await practice.say('heron', '2')
    expect(told[0]!.text).toContain('If it does come')
    await practice.until('2026-03-03', '08:30')
    await practice.say('heron', 'yes')
    expect(practice.to('heron').at(-1)?.text).toContain('Answer with the number')
    await practice.say('heron', '13, 14')
    expect(await practice.status('heron')).toBe('locked')
    await practice.wait(31)
    expect(practice.to('heron').at(-1)?.text).toContain('1: Yes, or there already')
    for (const message of practice.to('heron')) expect([message.buttons, message.pick]).toEqual([[], null])
  })

  it('can still give values by bare numbers after the prompt', async () => {
    const told = await practice.say('heron', '2 calf 4')
    expect(told.map((message) => message.kind)).toEqual(['receipt'])
    expect(practice.to('heron').find((message) => message.kind === 'prompt')?.text).not.toContain('1: ')
  })
})

describe('one prompt a local day', () => {
  it('through both changes of the clock', async () => {
    await practice.enrol('heron', { zone: 'America/New_York', prompt: '02:30' })
    await practice.until('2026-03-12', '12:00')
    const days = prompts().map((one) => one.message.key.split('/').at(-1))
    expect(new Set(days).size).toBe(days.length)
    expect(days).toContain('2026-03-08')
  })

  it('where the client moves to another zone, east or west, or changes the time', async () => {
    await practice.enrol('heron')
    await practice.until('2026-03-03', '12:00')
    await practice.command('my-times', { zone: 'America/Los_Angeles', region: 'US' }, 'heron')
    await practice.until('2026-03-05', '12:00')
    await practice.command('my-times', { zone: 'Asia/Tokyo', region: 'JP' }, 'heron')
    await practice.until('2026-03-07', '12:00')
    await practice.command('my-times', { prompt: '21:00' }, 'heron')
    await practice.until('2026-03-10', '12:00')
    const days = prompts().map((one) => one.message.key.split('/').at(-1))
    expect(new Set(days).size).toBe(days.length)
    expect(days).toEqual([...days].sort())
  })

  it('where the new time of today has just passed, is sent at once', async () => {
    await practice.enrol('heron', { prompt: '12:00' })
    await practice.until('2026-03-03', '09:00')
    await practice.command('my-times', { prompt: '08:00' }, 'heron')
    await practice.until('2026-03-03', '09:01')
    expect(prompts().map((one) => one.message.key.split('/').at(-1))).toContain('2026-03-03')
  })

  it('asks for the country and names no digits when the zone changes', async () => {
    await practice.enrol('heron')
    await practice.until('2026-03-02', '09:00')
    const answer = await practice.command('my-times', { zone: 'Asia/Tokyo' }, 'heron')
    expect(answer?.text).toContain('country')
    const told = await practice.say('heron', "can't pee since this morning")
    expect(told[0]!.text).toContain('local emergency number')
    expect(told[0]!.text).not.toContain('112')
  })

  it('leaves stale ones out after days away, with their reminders, and goes on', async () => {
    await practice.enrol('heron', { reminder: '19:00' })
    await practice.until('2026-03-02', '12:00')
    const before = practice.to('heron').length
    practice.away('2026-03-05', '12:00')
    await practice.until('2026-03-05', '12:05')
    expect(
      practice
        .to('heron')
        .slice(before)
        .map((message) => message.kind),
    ).toEqual(['nudge', 'prompt'])
    await practice.until('2026-03-06', '08:30')
    expect(prompts().at(-1)?.message.key).toContain('2026-03-06')
  })

  it('plans no sessions on a day off, and says so', async () => {
    await practice.enrol('heron', { off: 'Tue' })
    await practice.until('2026-03-03', '08:30')
    expect(practice.to('heron').at(-1)).toMatchObject({ drills: [] })
    expect(practice.to('heron').at(-1)?.text).toContain('day off')
    await practice.say('heron', 'calf 4')
    expect(await day('2026-03-03')).toMatchObject({ planned: 0 })
    expect(practice.to('heron').at(-1)?.asks).toBeNull()
  })
})
