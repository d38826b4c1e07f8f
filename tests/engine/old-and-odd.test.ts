import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { textsFor } from '../../src/text/index.ts'
import { COACH, openPractice, type Practice, person } from './practice.ts'

const { client, course, courseForCoach, alerts, commands } = textsFor('en')
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const last = () => practice.to('heron').at(-1)!
const OTHER = { ...COACH, user: 'coach-2', guild: 'guild-2', roles: ['role-2'] }

/** A second practice, in whose server another coach works. */
async function secondPractice(): Promise<void> {
  const settings = { 'coach-role': 'role-2', 'coach-channel': 'channel-2', 'policy-settled': true }
  await practice.command('set-up', settings, OTHER)
  await practice.command('enrol', { person: 'user-heron', alias: 'wren', prompt: '09:00' }, OTHER)
  await practice.wait(1)
}

describe('a client who writes in another language than their own', () => {
  it('is asked about an urgent sign, and silence counts as yes', async () => {
    await practice.enrol('heron')
    const told = await practice.say('heron', 'no puedo orinar desde ayer')
    expect(told.at(-1)).toMatchObject({ asks: 'signs' })
    await practice.wait(11)
    expect(await practice.status('heron')).toBe('locked')
  })

  it('is heard the other way round too, and before a yes and after the end', async () => {
    await practice.enrol('heron', { language: 'es' })
    await practice.say('heron', "can't pee since this morning")
    expect(last().asks).toBe('signs')
    await practice.invite('plover')
    const [told] = await practice.say('plover', 'no puedo orinar desde ayer')
    expect(told?.kind).toBe('urgent')
  })
})

describe('an old button', () => {
  it('writes no figures and no "none" of a day long past, yet a sign counts', async () => {
    await practice.enrol('heron')
    await practice.until('2026-03-02', '08:30')
    await practice.say('heron', '2 calf')
    await practice.until('2026-03-09', '09:00')
    const answer = await practice.press('heron', 'pain-4')
    expect(answer?.text).toContain(client.tooOld)
    expect((await practice.file('heron')).checkIns.find(({ day }) => day === '2026-03-02')?.pain).toBeNull()
  })

  it('pressed twice changes nothing more', async () => {
    await practice.enrol('heron')
    await practice.until('2026-03-02', '08:30')
    await practice.say('heron', '2 calf')
    await practice.press('heron', 'pain-4')
    const before = (await practice.file('heron')).checkIns
    await practice.press('heron', 'pain-4')
    const figures = (rows: typeof before) =>
      rows.map(({ day, pain, reach, sessions }) => [day, pain, reach, sessions])
    expect(figures((await practice.file('heron')).checkIns)).toEqual(figures(before))
  })
})

describe('somebody who is not under way', () => {
  it('is neither discharged nor given a break', async () => {
    await practice.invite('heron')
    await practice.wait(1)
    const count = practice.to('heron').length
    expect((await practice.command('discharge', { client: 'heron' }))?.text).toBe(
      courseForCoach.notBegun('heron'),
    )
    expect((await practice.command('pause-client', { client: 'heron' }))?.text).toBe(
      courseForCoach.notUnderWay('heron'),
    )
    await practice.wait(1)
    expect(practice.to('heron')).toHaveLength(count)
    expect(await practice.status('heron')).toBe('invited')
  })

  it('and has left hears no more of clearance, release or undoing', async () => {
    await practice.enrol('heron', {}, { risks: ['anticoagulants'] })
    await practice.say('heron', 'numb between my legs since this morning')
    await practice.say('heron', 'leave')
    const count = practice.to('heron').length
    await practice.command('release', { client: 'heron', by: 'GP', on: '2026-03-02' })
    await practice.command('clear', { client: 'heron', by: 'surgeon', on: '2026-03-02' })
    await practice.wait(1)
    expect(practice.to('heron')).toHaveLength(count)
  })

  it('is named to the coach where a sign before the yes is open at the erasure', async () => {
    await practice.invite('heron')
    await practice.say('heron', 'numb between my legs since this morning')
    expect((await practice.command('erase-client', { client: 'heron' }))?.text).toContain(
      commands.eraseWithSign,
    )
    await practice.command('erase-client', { client: 'heron', sure: true })
    await practice.wait(1)
    expect(practice.toAlerts().at(-1)?.text).toBe(commands.erasedWithSign('heron'))
  })
})

describe('a person in two practices', () => {
  it('says yes to the second only once the first has ended', async () => {
    await practice.enrol('heron')
    await secondPractice()
    const answer = await practice.press('heron', 'consent-yes')
    expect(answer?.text).toBe(course.elsewhere)
    await practice.say('heron', 'leave')
    await practice.press('heron', 'consent-yes')
    const files = await practice.store.store.transaction((tx) => tx.clientsOfUser(person('heron').user))
    expect(files.map((file) => file.client.stage).sort()).toEqual(['left', 'screening'])
  })
})

describe('a cover', () => {
  const cover = (from: string, until: string, by: string, as = COACH, roles = ['role-coach']) =>
    practice.command('cover', { from, until, by }, as, { by: { roles } })

  it('needs the coach role', async () => {
    expect((await cover('2026-03-02', '2026-03-09', 'plumber', COACH, []))?.text).toBe(
      alerts.noCoach('<@plumber>'),
    )
  })

  it('who is away too is covered in turn, and a ring of covers calls somebody', async () => {
    await practice.enrol('heron')
    await cover('2026-03-02', '2026-03-09', 'coach-2')
    await cover('2026-03-02', '2026-03-09', 'coach-3', { ...COACH, user: 'coach-2' })
    await practice.say('heron', 'numb between my legs since this morning')
    expect(practice.toAlerts().at(-1)?.mentions.users).toEqual(['coach-3'])
    await cover('2026-03-02', '2026-03-09', 'coach-1', { ...COACH, user: 'coach-3' })
    await practice.enrol('plover')
    await practice.say('plover', 'numb between my legs since this morning')
    expect(practice.toAlerts().at(-1)?.mentions.users).toHaveLength(1)
  })
})
