import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron', { region: 'PT' })
})
afterEach(() => practice.close())

const last = () => practice.to('heron').at(-1)!
const lastToCoach = () => practice.toCoach().at(-1)!

describe('the end of the way', () => {
  it('tells client and coach where it began and where it is, and asks for one word later', async () => {
    for (const day of ['2026-03-02', '2026-03-03']) {
      await practice.until(day, '08:30')
      await practice.say('heron', '1 back 2, no signs')
    }
    await practice.until('2026-03-12', '09:00')
    const answer = await practice.command('discharge', { client: 'heron' })
    expect(answer?.text).toContain('discharged')
    expect(last()).toMatchObject({ kind: 'discharge', asks: 'remind' })
    for (const part of ['2 weeks', 'calf, pain 6', 'back, pain 2', 'rowing 7', '50 %', 'comes back'])
      expect(last().text).toContain(part)
    expect(last().text.length).toBeLessThanOrEqual(600)
    expect(lastToCoach()).toMatchObject({ kind: 'discharge', about: 'heron' })
    for (const part of ['2 weeks', 'rowing 7', 'deadlift', 'Erased after'])
      expect(lastToCoach().text).toContain(part)
    expect((await practice.command('discharge', { client: 'heron' }))?.text).toContain('not in a plan')
    const refused = { client: 'heron', sessions: 2, ladders: 'extension:1', do: 'hold' }
    for (const name of ['plan', 'decide'])
      expect((await practice.command(name, refused))?.text).toContain('not in a plan any more')
    expect((await practice.command('discharge', { client: 'heron' }))?.kind).toBe('notice')
  })

  it('asks once after four weeks where that is wanted, without a drill, and carries the answer', async () => {
    await practice.command('discharge', { client: 'heron' })
    await practice.press('heron', 'remind-yes')
    expect(lastToCoach().text).toContain('would like one word')
    const before = practice.to('heron').length
    await practice.until('2026-03-30', '07:59')
    expect(practice.to('heron')).toHaveLength(before)
    await practice.until('2026-03-30', '08:01')
    expect(last()).toMatchObject({ kind: 'follow-up', asks: 'come-back', drills: [] })
    await practice.say('heron', 'a bit stiff but rowing again')
    expect(lastToCoach().text).toContain('rowing again')
    expect(last().text).toContain('passed it on')
    await practice.until('2026-05-30', '08:01')
    expect(practice.to('heron').filter((message) => message.asks === 'come-back')).toHaveLength(1)
    expect((await practice.say('heron', 'hello'))[0]?.text).toContain('not in a plan')
  })

  it('takes a sign in the answer the urgent way', async () => {
    await practice.command('discharge', { client: 'heron' })
    await practice.say('heron', 'yes')
    expect((await practice.file('heron')).client.remind).toBe(true)
    await practice.until('2026-03-30', '09:00')
    const told = await practice.say('heron', 'numb between my legs since yesterday')
    expect(told.map((message) => message.kind)).toEqual(['urgent', 'alert'])
  })

  it('asks nothing more once a sign that came after it is cleared', async () => {
    await practice.command('discharge', { client: 'heron' })
    await practice.say('heron', 'numb between my legs since yesterday')
    await practice.until('2026-03-03', '12:00')
    const prompts = async () => (await practice.file('heron')).dues.filter(({ kind }) => kind === 'prompt')
    expect(await prompts()).toHaveLength(1)
    await practice.command('clear', { client: 'heron', by: 'emergency physician', on: '2026-03-03' })
    expect(await prompts()).toEqual([])
    const before = practice.to('heron').length
    await practice.until('2026-03-06', '12:00')
    expect(practice.to('heron')).toHaveLength(before)
  })

  it('clears a hint of a sign up, and asks for nothing else beside it', async () => {
    await practice.command('discharge', { client: 'heron' })
    const told = await practice.say('heron', 'something is off down there, calf')
    expect(told[0]?.buttons.map(({ name }) => name)).toEqual(['yes', 'no'])
    const before = practice.to('heron').length
    await practice.press('heron', 'no')
    expect(practice.to('heron').slice(before)).toEqual([])
    const { dues, asked } = await practice.file('heron')
    expect(dues.filter(({ kind }) => kind === 'activities')).toEqual([])
    expect(asked.map(({ ask }) => ask)).toEqual(['remind'])
  })

  it('does not write again where that is not wanted', async () => {
    await practice.command('discharge', { client: 'heron' })
    const told = await practice.say('heron', 'No, thank you')
    expect(told.some((message) => message.text.includes('not write again'))).toBe(true)
    expect((await practice.file('heron')).client.remind).toBe(false)
    const before = practice.to('heron').length
    await practice.until('2026-05-30', '08:01')
    expect(practice.to('heron')).toHaveLength(before)
  })

  it('asks for nothing later while an urgent sign is open, and names no exercise', async () => {
    await practice.say('heron', "can't pee since this morning")
    await practice.command('discharge', { client: 'heron' })
    expect(last()).toMatchObject({ kind: 'discharge', asks: null, buttons: [] })
    expect(last().text).not.toMatch(/breathing/)
    expect(lastToCoach().text).toContain('urgent sign is still open')
  })

  it('is no bar to beginning again: another record, and no word about the old one', async () => {
    await practice.command('discharge', { client: 'heron' })
    await practice.press('heron', 'remind-yes')
    const answer = await practice.invite('heron')
    expect(answer?.text).toMatch(/Invited heron-2[\s\S]*earlier record/)
    await practice.press('heron', 'consent-yes')
    expect(await practice.status('heron-2')).toBe('screening')
    expect(await practice.status('heron')).toBe('discharged')
    await practice.until('2026-03-31', '09:00')
    expect(practice.to('heron').some((message) => message.asks === 'come-back')).toBe(false)
    expect((await practice.invite('heron'))?.text).toContain('client here already')
  })

  it('waits for the clearance before a new beginning, which would know nothing of the sign', async () => {
    await practice.command('discharge', { client: 'heron' })
    await practice.say('heron', 'numb between my legs since yesterday')
    const again = { person: 'user-heron', alias: 'heron' }
    expect((await practice.command('enrol', again))?.text).toContain(
      '“heron”, the same person, is still open',
    )
    await practice.command('clear', { client: 'heron', by: 'surgeon', on: '2026-03-02' })
    expect((await practice.command('enrol', again))?.text).toContain('Invited heron-2')
  })

  it('carries the wish to begin again to the coach', async () => {
    await practice.command('discharge', { client: 'heron' })
    await practice.say('heron', 'no thanks')
    const told = await practice.say('heron', 'can we start again?')
    expect(told[0]).toMatchObject({ address: { to: 'coach' } })
    expect(told[0]?.text).toContain('can we start again?')
  })

  it('still carries a question to the coach', async () => {
    await practice.command('discharge', { client: 'heron' })
    await practice.say('heron', 'can I go back to the press-ups?')
    expect(practice.toCoach().at(-1)?.text).toContain('press-ups')
  })
})

describe('the time of a record', () => {
  it('is up after the days of the practice: all of it goes, and the channel hears that one has gone', async () => {
    await practice.command('discharge', { client: 'heron' })
    await practice.until('2027-03-01', '12:00')
    expect(await practice.status('heron')).toBe('discharged')
    await practice.until('2027-03-02', '12:00')
    await expect(practice.file('heron')).rejects.toThrow('no client')
    expect(lastToCoach()).toMatchObject({
      about: null,
      text: '1 record has been erased: its time was up. Backups made before now may hold a copy until Thu 1 Apr 2027.',
    })
  })

  it('waits while an urgent sign is open, and the coach is told once', async () => {
    await practice.say('heron', "can't pee since this morning")
    await practice.say('heron', 'leave')
    await practice.until('2027-03-05', '12:00')
    expect(await practice.status('heron')).toBe('left')
    const waits = practice.toCoach().filter((message) => message.text.includes('still open. It is erased'))
    expect(waits).toHaveLength(1)
    await practice.command('clear', { client: 'heron', by: 'surgeon', on: '2026-03-03' })
    await practice.until('2027-03-07', '12:00')
    await expect(practice.file('heron')).rejects.toThrow('no client')
  })
})

it('an erasure says how many rows went, and what is out of reach', async () => {
  await practice.until('2026-03-02', '08:30')
  await practice.say('heron', '2 calf 4')
  const told = (await practice.command('erase-me', { sure: true }, 'heron'))?.text ?? ''
  expect(Number(/(\d+) rows are gone/.exec(told)?.[1])).toBeGreaterThan(15)
  // the last backup made before it goes after 30 days
  expect(told).toContain('Backups made before now may hold a copy until Wed 1 Apr 2026')
})
