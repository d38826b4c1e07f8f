import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { textsFor } from '../../src/text/index.ts'
import { openPractice, type Practice } from './practice.ts'

const { client, coach, commands } = textsFor('en')
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const last = () => practice.to('heron').at(-1)!
const lock = () => practice.say('heron', 'numb between my legs since this morning')
const clear = (on: string) => practice.command('clear', { client: 'heron', by: 'surgeon', on })
const release = (on: string, by = 'GP') => practice.command('release', { client: 'heron', by, on })

describe('a clearance', () => {
  it('says whether any ladder starts lower', async () => {
    await practice.enrol('heron', {}, {}, 'extension:2')
    await lock()
    expect((await clear('2026-03-02'))?.text).toBe(commands.cleared('heron', true))
    await lock()
    expect((await clear('2026-03-02'))?.text).toBe(commands.cleared('heron', false))
  })

  it('promises no plan where there is none, nor an easier step to somebody whose way has ended', async () => {
    await practice.enrol('heron', {}, {}, '')
    await lock()
    expect((await clear('2026-03-02'))?.text).toBe(commands.cleared('heron', null))
    await practice.enrol('plover', {}, {}, 'extension:2')
    await practice.say('plover', 'numb between my legs since this morning')
    await practice.command('discharge', { client: 'plover' })
    const told = await practice.command('clear', { client: 'plover', by: 'surgeon', on: '2026-03-02' })
    expect(told?.text).toBe(commands.cleared('plover', null))
    await practice.wait(1)
    expect(practice.to('plover').at(-1)?.text).not.toContain('easier')
  })

  it('may bear the coach’s own date where that is ahead of the client’s', async () => {
    await practice.enrol('heron', { zone: 'America/New_York' })
    await practice.until('2026-03-03', '02:00')
    await lock()
    await practice.wait(10)
    expect((await clear('2026-03-03'))?.text).toContain('open again')
  })
})

describe('a release', () => {
  it('names who agreed and no day to come', async () => {
    await practice.enrol('heron', {}, { risks: ['anticoagulants'] })
    expect((await release('2026-03-03'))?.text).toBe(coach.notYet('2026-03-02'))
    expect((await release('2026-03-02', ' '))?.text).toBe(coach.whoCleared)
    expect(await practice.status('heron')).toBe('parked')
    await release('2026-03-02')
    expect(await practice.status('heron')).toBe('active')
  })

  it('does not say "we can go on" while a sign is open', async () => {
    await practice.enrol('heron', {}, { risks: ['anticoagulants'] })
    await lock()
    await release('2026-03-02')
    await practice.wait(1)
    expect(last()).toMatchObject({ text: client.releasedLocked, drills: [] })
    expect(await practice.status('heron')).toBe('locked')
  })
})
