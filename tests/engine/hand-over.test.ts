import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { textsFor } from '../../src/text/index.ts'
import { COACH, openPractice, type Practice } from './practice.ts'

const { alerts, backAgain, client, coach } = textsFor('en')
const WREN = { ...COACH, user: 'coach-2' }
const SIGN = 'numb between my legs since this morning'
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
  await practice.until('2026-03-02', '09:00')
})
afterEach(() => practice.close())

const alert = async () => (await practice.file('heron')).alerts[0]!
const handOver = (to: string, roles = ['role-coach']) =>
  practice.command('hand-over', { client: 'heron', to }, 'coach', { to: { roles } })

describe('an alert handed over', () => {
  beforeEach(async () => {
    await practice.say('heron', SIGN)
  })

  it('calls the other coach by name, and stays with the first until the other has pressed', async () => {
    await practice.command('take-up', { client: 'heron' })
    const told = practice.to('heron').length
    const answer = await handOver('coach-2')
    expect(answer?.text).toBe(alerts.offeredTo('heron', '<@coach-2>', '<@coach-1>'))
    const call = practice.toAlerts().at(-1)!
    expect(call.mentions).toEqual({ roles: [], users: ['coach-2'] })
    expect(call.text).toContain('Until then it stays with <@coach-1>')
    expect((await alert()).takenBy).toBe('<@coach-1>')
    await practice.wait(5)
    const taken = await practice.coachPress('heron', 'take-over', WREN)
    expect(taken?.text).toContain('<@coach-2> has it since Mon 2 Mar 09:05, after <@coach-1>')
    expect(await alert()).toMatchObject({
      takenBy: '<@coach-2>',
      had: [{ by: '<@coach-1>', at: '2026-03-02T09:00:00.000Z' }],
    })
    // the client knows that somebody has it, and hears nothing more
    expect(practice.to('heron')).toHaveLength(told)
    expect((await practice.command('client-record', { client: 'heron' }))?.text).toContain(
      'before: <@coach-1> since Mon 2 Mar 09:00',
    )
    expect((await practice.command('roster'))?.text).toContain('<@coach-2> has it since Mon 2 Mar 09:05')
  })

  it('that nobody has goes on calling until the other has pressed', async () => {
    expect((await handOver('coach-2'))?.text).toContain('Nobody has it yet')
    const before = practice.toAlerts().length
    await practice.wait(31)
    expect(practice.toAlerts().length).toBeGreaterThan(before)
    await practice.coachPress('heron', 'take-over', WREN)
    expect(await alert()).toMatchObject({ takenBy: '<@coach-2>', had: [] })
    expect(practice.to('heron').at(-1)?.kind).toBe('taken-up')
  })

  it('goes at once to a coach who names themselves', async () => {
    await practice.command('take-up', { client: 'heron' })
    const answer = await practice.command('hand-over', { client: 'heron', to: 'coach-2' }, WREN)
    expect(answer?.text).toContain('<@coach-2> has it since')
    expect((await alert()).had).toHaveLength(1)
  })

  it('that another coach closes calls whoever had it', async () => {
    await practice.command('take-up', { client: 'heron' })
    await practice.coachPress('heron', 'outcome-reached', WREN)
    expect(practice.toAlerts().at(-1)).toMatchObject({
      text: expect.stringContaining('<@coach-2> has closed the alert about **heron**'),
      mentions: { roles: [], users: ['coach-1'] },
    })
  })

  it('is not handed to somebody who may not see records', async () => {
    const before = practice.sent.length
    expect((await handOver('user-plover', []))?.text).toBe(alerts.noCoach('<@user-plover>'))
    expect(practice.sent).toHaveLength(before)
  })

  it('is not handed over where it is theirs, closed, or not there', async () => {
    await practice.command('take-up', { client: 'heron' })
    expect((await handOver('coach-1'))?.text).toBe(alerts.hasAlready('heron', '<@coach-1>'))
    await handOver('coach-2')
    await practice.command('take-up', { client: 'heron', outcome: 'hospital' })
    expect((await practice.coachPress('heron', 'take-over', WREN))?.text).toContain(coach.alertClosed)
    expect((await handOver('coach-2'))?.text).toBe(coach.noAlert('heron'))
    expect((await alert()).had).toEqual([])
  })

  it('taken up or closed by command is told where the alert stands, for the other coaches', async () => {
    await practice.command('take-up', { client: 'heron' })
    expect(practice.toAlerts().at(-1)?.text).toContain('**heron**, taken up by <@coach-1>')
    expect(
      practice
        .toAlerts()
        .at(-1)
        ?.buttons.map(({ name }) => name),
    ).toContain('outcome-hospital')
    await practice.command('take-up', { client: 'heron', outcome: 'hospital' })
    expect(practice.toAlerts().at(-1)?.text).toBe(
      alerts.closedBy('heron', '<@coach-1>', coach.outcome.hospital),
    )
  })

  it('names who has it to a coach who comes second', async () => {
    await practice.coachPress('heron', 'take-up')
    await practice.wait(3)
    const second = await practice.coachPress('heron', 'take-up', WREN)
    expect(second?.text).toContain('<@coach-1> has it already, since Mon 2 Mar 09:00')
  })
})

describe('an alert of somebody who then says no', () => {
  it('goes on for a day, says so to the coach, and then ends', async () => {
    await practice.invite('dipper')
    await practice.say('dipper', SIGN)
    await practice.wait(2)
    await practice.press('dipper', 'consent-no')
    expect(practice.toCoach().at(-1)?.text).toContain(alerts.declinedOpen)
    await practice.wait(20)
    expect(practice.toAlerts().at(-1)?.kind).toBe('alert-repeat')
    await practice.wait(24 * 60)
    const last = practice.toAlerts().at(-1)!
    expect(last).toMatchObject({ kind: 'notice', text: alerts.endedAway('dipper') })
    const count = practice.toAlerts().length
    await practice.wait(24 * 60)
    expect(practice.toAlerts()).toHaveLength(count)
    expect((await practice.file('dipper')).alerts[0]?.closedAt).not.toBeNull()
  })

  it('ends with a take-up', async () => {
    await practice.invite('dipper')
    await practice.say('dipper', SIGN)
    await practice.press('dipper', 'consent-no')
    await practice.command('take-up', { client: 'dipper', outcome: 'reached' })
    const count = practice.toAlerts().length
    await practice.wait(24 * 60)
    expect(practice.toAlerts()).toHaveLength(count)
  })
})

describe('what is said where another lock stays', () => {
  it('after a talk about self-harm: the plan is locked by the other sign', async () => {
    await practice.say('heron', 'I want to kill myself')
    await practice.say('heron', SIGN)
    const answer = await practice.command('spoken-with', { client: 'heron' })
    expect(answer?.text).toContain('The plan stays locked')
    expect(answer?.text).toContain('/clear')
    expect(await practice.status('heron')).toBe('locked')
  })

  it('after a talk about self-harm alone: the plan is open again', async () => {
    await practice.say('heron', 'I want to kill myself')
    const answer = await practice.command('spoken-with', { client: 'heron' })
    expect(answer?.text).toBe(alerts.spoken('heron'))
    expect(await practice.status('heron')).toBe('active')
  })

  it('after a break: no prompt is promised to somebody who is locked, by coach or client', async () => {
    await practice.say('heron', SIGN)
    await practice.command('pause-client', { client: 'heron' })
    const answer = await practice.command('resume-client', { client: 'heron' })
    expect(answer?.text).toBe(alerts.resumedLocked('heron'))
    expect(practice.to('heron').at(-1)?.text).toBe(backAgain.locked)
    await practice.say('heron', 'take a break')
    await practice.command('resume', {}, 'heron')
    const again = await practice.command('resume', {}, 'heron')
    expect(again?.text).toContain(client.notPaused)
  })

  it('after a break: the next prompt is named where it comes', async () => {
    await practice.command('pause-client', { client: 'heron' })
    const answer = await practice.command('resume-client', { client: 'heron' })
    expect(answer?.text).toBe(alerts.resumed('heron', '08:00'))
    expect(practice.to('heron').at(-1)?.text).toBe(client.resumed('08:00'))
  })
})
