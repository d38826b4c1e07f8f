import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { instantOf } from '../../src/domain/local-time.ts'
import { textsFor } from '../../src/text/index.ts'
import { copyClient, refsOf } from './many.ts'
import { COACH, openPractice, type Practice } from './practice.ts'
import { namesOf, pressShown } from './shown.ts'

const { client, roster } = textsFor('en')
const WREN = { ...COACH, user: 'coach-2' }
const PLOVER = { ...COACH, roles: [] }
const STRANGER = { ...COACH, guild: 'guild-2' }
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
})
afterEach(() => practice.close())

const rows = async (): Promise<number> => {
  const { waiting } = practice.store.outbox
  return (await waiting(instantOf('2030-01-01', '00:00', 'UTC'), 1000)).length
}

describe('the roster', () => {
  it('says in a line each who needs the coach, who can move on, and how the rest are', async () => {
    await practice.enrol('dipper')
    await practice.invite('curlew')
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', '2 calf 4, no signs')
    await practice.say('dipper', 'numb between my legs since this morning')
    const answer = await practice.command('roster')
    expect(answer?.text.split('\n')).toEqual([
      expect.stringContaining('1 needs you, 0 can move on, 2 besides'),
      '**Needs you**',
      expect.stringMatching(/^• \*\*dipper\*\*: nobody has taken up the alert of .*; urgent sign open/),
      '**The others**',
      '• **curlew**: invited',
      expect.stringMatching(/^• \*\*heron\*\*: 1\/1 replies, calf, pain 4/),
    ])
    await practice.command('take-up', { client: 'dipper' })
    const taken = (await practice.command('roster'))?.text
    expect(taken).toContain('<@coach-1> has it since Mon 2 Mar 09:00')
    expect(taken).not.toContain('nobody has taken up')
  })

  it('is turned page by page, with the clients of the page to choose from', async () => {
    await copyClient(practice, 'heron', refsOf(45))
    const first = await practice.command('roster')
    expect(first?.text).toContain('page 1 of 3')
    expect(namesOf(first)).toEqual(['next'])
    const second = await pressShown(practice, first, 'next')
    expect(second?.text).toContain('page 2 of 3')
    expect(namesOf(second)).toEqual(['previous', 'next'])
    const last = await pressShown(practice, second, 'next')
    expect(namesOf(last)).toEqual(['previous'])
    const shown = [first, second, last].flatMap((page) => page?.choices?.pick?.options.map((o) => o.value))
    expect(shown).toHaveLength(46)
    expect(new Set(shown).size).toBe(46)
    for (const page of [first, second, last]) expect(page!.text.length).toBeLessThanOrEqual(1_900)
    expect((await pressShown(practice, last, 'previous'))?.text).toContain('page 2 of 3')
  })

  it('opens the record of the client who is chosen, beside it and in private', async () => {
    const answer = await practice.command('roster')
    const record = await pressShown(practice, answer, 'open-record', { values: ['heron'] })
    expect(record).toMatchObject({ about: 'heron', kind: 'report', privately: true })
    expect(record?.text).toContain('**heron**')
  })

  it('is answered to whoever asked alone, as long as they have the role', async () => {
    const answer = await practice.command('roster')
    await copyClient(practice, 'heron', refsOf(30))
    const paged = await practice.command('roster')
    const before = await rows()
    for (const by of [WREN, PLOVER, STRANGER]) {
      expect((await pressShown(practice, paged, 'next', { by }))?.text).toBe(client.notYours)
      const tried = await pressShown(practice, answer, 'open-record', { by, values: ['heron'] })
      expect(tried?.text).toBe(client.notYours)
      expect(tried?.choices).toBeUndefined()
    }
    expect(await rows()).toBe(before)
  })

  it('says nothing twice to a press that is heard twice', async () => {
    await copyClient(practice, 'heron', refsOf(30))
    const paged = await practice.command('roster')
    expect(await pressShown(practice, paged, 'next', { event: 'press-1' })).not.toBeNull()
    expect(await pressShown(practice, paged, 'next', { event: 'press-1' })).toBeNull()
  })

  it('does not open a record that has been erased meanwhile', async () => {
    await practice.enrol('dipper')
    const answer = await practice.command('roster')
    await practice.command('erase-client', { client: 'dipper', sure: true })
    const record = await pressShown(practice, answer, 'open-record', { values: ['dipper'] })
    expect(record?.text).toBe(roster.gone)
    const kept = await practice.store.store.transaction((tx) => tx.outbox(answer!.choices!.outbox!))
    expect(JSON.stringify(kept)).not.toContain('dipper')
  })

  it('keeps no words of what was shown in private, only what can be pressed', async () => {
    const answer = await practice.command('roster')
    const kept = await practice.store.store.transaction((tx) => tx.outbox(answer!.choices!.outbox!))
    expect(kept).toMatchObject({ state: 'sent', body: { text: '', address: { only: 'coach-1' } } })
  })

  it('of 200 clients comes within a second', async () => {
    for (const day of ['2026-03-02', '2026-03-03', '2026-03-04']) {
      await practice.until(day, '08:30')
      await practice.say('heron', '2 calf 4, no signs')
    }
    await copyClient(practice, 'heron', refsOf(200))
    await practice.command('roster')
    const began = process.cpuUsage()
    const answer = await practice.command('roster')
    const { user, system } = process.cpuUsage(began)
    // of this process's own time, whatever else the machine does; 0.5 to 0.7 s were measured, with 60 days of replies each
    expect((user + system) / 1_000).toBeLessThan(3_000)
    expect(answer?.text).toContain('201 besides')
  })
})
