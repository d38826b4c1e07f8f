import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { emptyPractice } from '../../../src/rehearsal/page/session.ts'
import type { Explanation } from '../../../src/rehearsal/page/wire.ts'
import { playText } from '../player/playing.ts'
import { firstSteps, type Living, liveIn } from './living.ts'

const HOSTILE = '<img src=x onerror=alert(1)></script> \u202e4 flac 2 👍 </data>\n\nevent: change\ndata: {}'

describe('a practice that is lived in', () => {
  let living: Living
  beforeAll(async () => {
    living = await liveIn(emptyPractice('2026-03-02', 'Europe/Lisbon'))
  }, 60_000)
  afterAll(() => living.server.close())

  it('leads from nothing to the first prompt by hand', async () => {
    await firstSteps(living)
    await living.act({ do: 'time', to: 'event' })
    const { cards, firstSteps: first, days, clients } = await living.snapshot()
    expect(first?.step).toBe('done')
    expect(clients[0]).toMatchObject({ ref: 'heron', status: 'active' })
    expect(cards.findLast((card) => card.side === 'client')).toMatchObject({
      kind: 'prompt',
      local: '2026-03-02T08:00',
    })
    expect(days[0]?.marks.map(({ kind }) => kind)).toContain('prompt')
  }, 60_000)

  it('takes words, changes of them, forms, and says how they were read', async () => {
    const said = await living.act({ do: 'say', as: 'heron', text: '2 calf 4, no signs' })
    const { cards } = await living.snapshot('heron')
    const mine = cards.find(({ id }) => id === said.cards[0])!
    expect(mine).toMatchObject({ kind: 'words', from: 'client', text: '2 calf 4, no signs' })
    expect(cards.find(({ id, kind }) => said.cards.includes(id) && kind === 'receipt')).toBeDefined()
    const read = (await (await fetch(`${living.server.url}explain?card=${mine.id}`)).json()) as Explanation
    expect(read.reading?.slots).toContainEqual({ slot: 'reach', value: 'calf', words: 'calf' })
    await living.act({ do: 'edit', as: 'heron', card: mine.id, text: '2 calf 5, no signs' })
    expect((await living.snapshot('heron')).cards.find(({ id }) => id === mine.id)?.edited).not.toBeNull()
    const form = await living.press('heron', /form|fill/i)
    const fields = { sessions: '2', reach: 'knee', pain: '4', signs: ['none'] }
    await living.act({ do: 'submit', as: 'heron', form: form!.form, fields })
  })

  it('carries hostile words as text', async () => {
    await living.act({ do: 'say', as: 'heron', text: HOSTILE })
    const { cards } = await living.snapshot('heron')
    expect(cards.findLast(({ kind }) => kind === 'words')?.text).toBe(HOSTILE)
  })

  it('breaks chat and database, is killed, and loses nothing', async () => {
    await living.act({ do: 'time', to: 'date', day: 2 })
    await living.act({ do: 'break', what: 'chat', on: true })
    expect((await living.snapshot()).faults.chatDown).toBe(true)
    await living.act({ do: 'say', as: 'heron', text: '2 knee 3, no signs' })
    await living.act({ do: 'break', what: 'chat', on: false })
    await living.act({ do: 'break', what: 'database', on: true })
    await living.act({ do: 'say', as: 'heron', text: 'and it feels numb between my legs' })
    await living.act({ do: 'break', what: 'database', on: false })
    const { cards: before, troubles } = await living.snapshot('heron')
    // what the bot reported came of the fault, and is over with it
    expect(troubles).toEqual([])
    expect(before.some(({ kind }) => kind === 'urgent')).toBe(true)
    expect(before.some(({ kind, place }) => kind === 'alert' && place === 'alerts')).toBe(true)
    await living.act({ do: 'break', what: 'kill' })
    const after = (await living.snapshot('heron')).cards.map(({ id }) => id)
    expect(after).toEqual(expect.arrayContaining(before.map(({ id }) => id)))
    await living.press('coach', /take|on it|mine/i)
    await living.act({
      do: 'command',
      as: 'coach',
      line: '/clear client:heron by:emergency physician on:2026-03-03',
    })
    await living.act({ do: 'break', what: 'clock', hours: 1 })
    await living.act({ do: 'time', to: 'day' })
    expect((await living.snapshot()).faults).toMatchObject({
      clockAheadMinutes: 60,
      clockChangeTonight: false,
    })
  }, 30_000)

  it('refuses in a sentence what cannot be done', async () => {
    for (const action of [
      { do: 'say', as: 'nobody', text: 'x' },
      { do: 'command', as: 'coach', line: '/nothing' },
      { do: 'press', as: 'heron', card: 'x', control: 'y' },
      { do: 'time', to: 'date', day: 1 },
      { do: 'sing' },
      { do: 'break', what: 'chat', on: false },
    ])
      expect(await living.refused(action)).toMatchObject({
        ok: false,
        problem: expect.stringMatching(/\w+.*\w/),
      })
  })

  it('is saved as a scenario that plays the same', async () => {
    const text = await (await fetch(`${living.server.url}scenario`)).text()
    const { lines, troubles } = living.hub.session.programme.log
    const until = living.hub.session.now.toISOString()
    const played = await playText(text, 'chat')
    const short = ({ at, to, kind, text: said }: (typeof played.messages)[number]) =>
      `${at} ${to} ${kind} ${said}`
    expect(played.messages.filter(({ at }) => at <= until).map(short)).toEqual(
      lines.map(({ message }) => short(message)),
    )
    expect(played.checks.failed).toEqual([])
    expect(troubles.filter((one) => !one.startsWith('the bot reports'))).toEqual([])
  }, 60_000)
})
