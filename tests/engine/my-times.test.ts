import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { textsFor } from '../../src/text/index.ts'
import { openPractice, type Practice } from './practice.ts'

const { client, commands } = textsFor('en')
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
})
afterEach(() => practice.close())

const mine = (options: Record<string, string>) => practice.command('my-times', options, 'heron')
const row = async () => (await practice.file('heron')).client

describe('a client’s own times', () => {
  it('take days by name in any case, by their Spanish names, and none', async () => {
    await mine({ off: 'sunday, Wed' })
    expect((await row()).off).toEqual(['Sun', 'Wed'])
    await mine({ off: 'sáb dom' })
    expect((await row()).off).toEqual(['Sat', 'Sun'])
    await mine({ off: 'none' })
    expect((await row()).off).toEqual([])
    expect((await mine({ off: 'every day' }))?.text).toBe(commands.badOff('every day'))
  })

  it('take an hour with one digit, and end a reminder with none', async () => {
    await mine({ prompt: '7:30', reminder: '19:00' })
    expect(await row()).toMatchObject({ prompt: '07:30', reminder: '19:00' })
    await mine({ reminder: 'none' })
    expect(await row()).toMatchObject({ prompt: '07:30', reminder: null })
    expect((await mine({ prompt: 'noon' }))?.text).toBe(commands.badTime('noon'))
  })
})

describe('words while the plan is locked', () => {
  it('that are no check-in go to the coach and are not called unreadable', async () => {
    await practice.say('heron', 'numb between my legs since this morning')
    const told = await practice.say('heron', 'home again after the operation')
    expect(told).toMatchObject([{ about: 'heron' }, { kind: 'notice', text: client.heardLocked('112') }])
    expect(practice.toCoach().at(-1)?.text).toContain('home again after the operation')
  })
})

describe('a return after a clearance', () => {
  it('lowers the ladders once', async () => {
    await practice.command('plan', { client: 'heron', sessions: 2, ladders: 'extension:3', anyway: true })
    await practice.until('2026-03-03', '08:30')
    await practice.say('heron', '2 calf 4, no signs')
    await practice.say('heron', 'numb between my legs since this morning')
    await practice.until('2026-03-20', '12:00')
    await practice.command('clear', { client: 'heron', by: 'surgeon', on: '2026-03-20' })
    await practice.until('2026-03-21', '08:30')
    await practice.say('heron', '2 calf 4, no signs')
    expect(await practice.rungs('heron')).toEqual({ extension: 2 })
    expect(practice.toCoach().some(({ text }) => text.includes('is back after'))).toBe(false)
  })
})

describe('a return after days without a reply', () => {
  it('is told to the coach once, however often the client writes that day', async () => {
    await practice.say('heron', '2 calf 4')
    await practice.until('2026-03-12', '09:00')
    for (const text of ['1 calf 4', 'sorry pain was 5', '2 calf 5']) await practice.say('heron', text)
    expect(practice.toCoach().filter(({ text }) => text.includes('is back after'))).toHaveLength(1)
  })
})
