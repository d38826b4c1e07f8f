import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { isServed } from '../../src/engine/course/served.ts'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const firstPart = { signs: ['none'], age: '41', onset: 'May', earlier: ['no'], seen: ['no'] }
const last = () => practice.to('heron').at(-1)!
const serveOnly = (...regions: string[]) => practice.command('set-up', { regions: regions.join(' ') })

describe('before a yes', () => {
  it('nothing is stored but the invitation, whatever is written', async () => {
    await practice.invite('heron')
    await practice.say('heron', 'hello? my calf hurts, 2 calf 4')
    await practice.say('heron', 'what does it cost?')
    const file = await practice.file('heron')
    const { checkIns, signs, holds, flags, decisions, alerts, plan, screening, consent, questions } = file
    expect([checkIns, signs, holds, flags, decisions, alerts, questions]).toEqual([
      [],
      [],
      [],
      [],
      [],
      [],
      [],
    ])
    expect([plan, screening, consent]).toEqual([null, null, null])
    expect(file.dues.map((due) => due.kind)).toEqual(['retention'])
    const told = await practice.store.store.transaction((tx) => tx.told(file.client.id))
    expect(told).toEqual({ checkIns: [], versions: [] })
    // their words stand in no message either
    expect(JSON.stringify(practice.sent)).not.toContain('calf hurts')
  })

  it('a no keeps the no alone, and after 30 days not even that', async () => {
    await practice.invite('heron')
    await practice.press('heron', 'consent-no')
    const file = await practice.file('heron')
    expect(file.client).toMatchObject({ stage: 'left' })
    expect(file.client.endedAt).not.toBeNull()
    await practice.until('2026-03-31', '12:00')
    expect((await practice.file('heron')).consent?.answer).toBe('no')
    await practice.until('2026-04-01', '12:00')
    await expect(practice.file('heron')).rejects.toThrow('no client')
    expect(practice.toCoach().at(-1)).toMatchObject({ about: null })
    expect(practice.toCoach().at(-1)?.text).toMatch(/1 record has been erased/)
    expect(practice.toCoach().at(-1)?.text).not.toContain('heron')
  })

  it('an invitation that nobody answers goes after 30 days too', async () => {
    await practice.invite('heron')
    await practice.until('2026-04-02', '12:00')
    await expect(practice.file('heron')).rejects.toThrow('no client')
  })

  it('goes on alerting about a sign told of before a no', async () => {
    await practice.invite('heron')
    await practice.say('heron', "can't pee since this morning")
    await practice.press('heron', 'consent-no')
    await practice.wait(12)
    expect(practice.toAlerts().at(-1)?.kind).toBe('alert-repeat')
  })
})

describe('the yes of its own to one question', () => {
  beforeEach(async () => {
    await practice.invite('heron')
    await practice.press('heron', 'consent-yes')
  })

  const listed = (name: string): string[] =>
    last()
      .buttons.flatMap((button) => button.form?.fields ?? [])
      .find((field) => field.name === name)!
      .options!.map((option) => option.value)

  it('a yes puts it into the form', async () => {
    expect(last()).toMatchObject({ asks: 'screening:sexual' })
    await practice.press('heron', 'sexual-yes')
    expect((await practice.file('heron')).consent).toMatchObject({ answer: 'yes', sexualQuestions: true })
    expect(listed('signs')).toContain('sexual-change')
  })

  it('a no leaves it out of every form and list; told in words it counts all the same', async () => {
    await practice.say('heron', 'No')
    expect((await practice.file('heron')).consent).toMatchObject({ answer: 'yes', sexualQuestions: false })
    expect(listed('signs')).not.toContain('sexual-change')
    await practice.fill('heron', 'fill-in', firstPart)
    expect(listed('known')).not.toContain('sexual-change')
    await practice.fill('heron', 'fill-in', {
      risks: ['none'],
      known: ['none'],
      reach: ['calf'],
      pain: ['6'],
      side: ['left'],
    })
    await practice.fill('heron', 'fill-in', { eases: ['extension'] })
    await practice.command('plan', { client: 'heron', sessions: 2, ladders: 'extension:1' })
    await practice.until('2026-03-02', '08:30')
    expect(listed('signs')).not.toContain('sexual-change')
    await practice.press('heron', 'one-of-these')
    expect(last().pick?.options.map((option) => option.value)).not.toContain('sexual-change')
    await practice.press('heron', 'which-sign', ['night-pain'])
    const told = await practice.say('heron', 'I lost all feeling during sex since yesterday')
    expect(told.map((message) => message.kind)).toContain('urgent')
  })
})

describe('questions half done', () => {
  beforeEach(async () => {
    await practice.invite('heron')
    await practice.press('heron', 'consent-yes')
    await practice.press('heron', 'sexual-yes')
    await practice.fill('heron', 'fill-in', firstPart)
  })

  it('are kept, and go on at the next message or command', async () => {
    for (const words of ['go on', 'Hello!']) {
      await practice.say('heron', words)
      expect(last()).toMatchObject({ kind: 'screening', asks: 'screening:risks' })
    }
    expect((await practice.command('today', {}, 'heron'))?.text).toContain('go on')
    expect(last()).toMatchObject({ kind: 'screening', asks: 'screening:risks' })
    expect((await practice.file('heron')).screening?.answers).toMatchObject({ age: 41, signs: [] })
  })

  it('are asked for once after a day, and not again', async () => {
    await practice.until('2026-03-03', '04:59')
    expect(practice.to('heron').filter((message) => message.text.includes('not done yet'))).toHaveLength(0)
    await practice.until('2026-03-06', '12:00')
    expect(practice.to('heron').filter((message) => message.text.includes('not done yet'))).toHaveLength(1)
  })
})

describe('the countries of a practice', () => {
  it('are looked at in the invitation', async () => {
    await serveOnly('PT', 'GB')
    expect((await practice.invite('heron', { region: 'US' }))?.text).toContain(
      'does not work with people in US',
    )
    expect(practice.to('heron')).toEqual([])
    expect((await practice.invite('heron', { region: 'GB-NIR' }))?.text).toContain('Invited')
  })

  it('refuse politely who tells of another before the plan', async () => {
    await serveOnly('PT')
    await practice.invite('heron')
    await practice.press('heron', 'consent-yes')
    const answer = await practice.command('my-times', { region: 'US' }, 'heron')
    expect(answer?.text).toMatch(/sorry.*may not work/)
    expect(await practice.status('heron')).toBe('left')
    expect(practice.toCoach().at(-1)?.text).toContain('refused politely')
  })

  it('give a break to who is there later, and keep the country for the emergency number', async () => {
    await practice.enrol('heron')
    await serveOnly('PT')
    await practice.command('my-times', { zone: 'America/New_York' }, 'heron')
    expect(await practice.status('heron')).toBe('active')
    const answer = await practice.command('my-times', { region: 'US' }, 'heron')
    expect(answer?.text).toContain('break')
    expect(await practice.status('heron')).toBe('paused')
    expect((await practice.file('heron')).client.region).toBe('US')
    const [urgent] = await practice.say('heron', "can't pee since this morning")
    expect(urgent?.text).toContain('911')
  })

  it('give a break that ends with the country or by the coach, not with a word', async () => {
    await practice.enrol('heron')
    await serveOnly('PT')
    await practice.command('pause', {}, 'heron')
    await practice.command('my-times', { region: 'US' }, 'heron')
    const [told] = await practice.say('heron', 'I am back')
    expect(told?.text).toContain('Your break goes on')
    expect((await practice.command('resume', {}, 'heron'))?.text).toContain('Your break goes on')
    expect((await practice.command('pause', {}, 'heron'))?.text).toContain('Your break goes on')
    expect(await practice.status('heron')).toBe('paused')
    const back = await practice.command('my-times', { region: 'PT' }, 'heron')
    expect(back?.text).toContain('Welcome back')
    expect(await practice.status('heron')).toBe('active')
    expect(practice.toCoach().at(-1)?.text).toContain('is in PT now')
  })

  it('and the days for which a record is kept are settings of their own', async () => {
    expect((await practice.command('set-up', { regions: 'PT QQ' }))?.text).toContain('“QQ”')
    await practice.command('set-up', { regions: 'pt, es', retention: 90 })
    await practice.invite('heron')
    expect((await practice.file('heron')).practice).toMatchObject({
      regions: ['PT', 'ES'],
      retentionDays: 90,
      zone: 'Europe/Lisbon',
    })
    expect(last().text).toContain('90 days after the end')
    await practice.command('set-up', { regions: 'any' })
    expect((await practice.file('heron')).practice.regions).toEqual([])
  })

  it('are not limited where none are named', async () => {
    const { practice: row } = await practice.invite('heron').then(() => practice.file('heron'))
    expect(isServed(row, 'NZ')).toBe(true)
    expect(isServed({ ...row, regions: ['GB'] }, 'UK')).toBe(true)
    expect(isServed({ ...row, regions: ['GB'] }, null)).toBe(true)
  })
})

it('speaks a language or says that it does not', async () => {
  expect((await practice.invite('heron', { language: 'xx' }))?.text).toContain('do not speak')
  await practice.invite('heron', { language: 'en' })
  expect((await practice.command('my-times', { language: 'xx' }, 'heron'))?.text).toContain('do not speak')
  expect((await practice.file('heron')).client.language).toBe('en')
})
