import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { addDays } from '../../src/domain/day.ts'
import { instantOf, timeAt } from '../../src/domain/local-time.ts'
import { COACH, type Delivered, openPractice, type Practice } from './practice.ts'

const ZONE = 'Europe/Lisbon'
const WREN = { ...COACH, user: 'coach-2' }
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02', { deputy: 'deputy-1' })
  await practice.enrol('heron')
})
afterEach(() => practice.close())

const alerts = (): Delivered[] => practice.sent.filter((one) => one.to === 'alerts')
const minutesAfter = (day: string, time: string): number[] =>
  alerts().map((one) => (one.at.getTime() - instantOf(day, time, ZONE).getTime()) / 60_000)

describe('the alert of an emergency', () => {
  it('is repeated after 10, 30 and 70 minutes, then hourly for a day, then each morning', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', "can't pee since this morning")
    await practice.until('2026-03-05', '09:00')
    const at = minutesAfter('2026-03-02', '09:00')
    expect(at.slice(0, 6)).toEqual([0, 10, 30, 70, 130, 190])
    const day = at.filter((minutes) => minutes <= 24 * 60)
    expect(day.at(-1)).toBeGreaterThan(23 * 60)
    // from 9:00 to 7:00 two days and three days later
    expect(at.slice(day.length)).toEqual([46 * 60, 70 * 60])
    expect(practice.toAlerts().map((message) => message.kind)[1]).toBe('alert-repeat')
  })

  it('calls the coach who made the plan first, from 30 minutes on the whole role and the deputy', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', "can't pee since this morning")
    await practice.wait(31)
    const mentions = practice.toAlerts().map((message) => message.mentions)
    expect(mentions[0]).toEqual({ roles: [], users: ['coach-1'] })
    expect(mentions[1]).toEqual({ roles: [], users: ['coach-1'] })
    expect(mentions[2]).toEqual({ roles: ['role-coach'], users: ['coach-1', 'deputy-1'] })
  })

  it('ends with a take-up, the client hears so, and the lock stays', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', "can't pee since this morning")
    await practice.wait(12)
    await practice.coachPress('heron', 'take-up')
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'taken-up' })
    const before = alerts().length
    await practice.wait(600)
    expect(alerts()).toHaveLength(before)
    expect(practice.to('heron').some((message) => message.text.startsWith('Nobody'))).toBe(false)
    expect((await practice.coachPress('heron', 'outcome-false-alarm'))?.text).toContain('locked')
    expect(await practice.status('heron')).toBe('locked')
  })

  it('is had by the first of two coaches', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', "can't pee since this morning")
    await practice.coachPress('heron', 'take-up')
    const second = await practice.coachPress('heron', 'take-up', WREN)
    expect(second?.text).toContain('<@coach-1>')
    expect((await practice.file('heron')).alerts[0]?.takenBy).toBe('<@coach-1>')
    expect(practice.to('heron').filter((message) => message.kind === 'taken-up')).toHaveLength(1)
  })

  it('that nobody has taken up after an hour is told to the client, who is not to wait', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', "can't pee since this morning")
    await practice.wait(59)
    const told = () => practice.to('heron').filter((message) => message.text.includes('do not wait for us'))
    expect(told()).toHaveLength(0)
    await practice.wait(2)
    expect(told()).toHaveLength(1)
  })

  it('is repeated once, not for every step missed, after the bot was away', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', "can't pee since this morning")
    practice.away('2026-03-02', '11:00')
    await practice.until('2026-03-02', '11:01')
    expect(alerts()).toHaveLength(2)
  })

  it('runs for each of two events, each with its own hour', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', "can't pee since this morning")
    await practice.wait(50)
    await practice.say('heron', 'my foot drags when I walk since now')
    await practice.wait(75)
    expect(
      practice.to('heron').filter((message) => message.text.includes('do not wait for us')),
    ).toHaveLength(2)
    const answer = await practice.command('take-up', { client: 'heron', outcome: 'hospital' })
    expect(answer?.text).toContain('Going to hospital')
    expect((await practice.file('heron')).alerts.every((alert) => alert.closedAt !== null)).toBe(true)
  })
})

describe('the alert of a same-day sign', () => {
  it('comes at once at night and then hourly from 7 to 22 in the practice’s zone, until taken up', async () => {
    await practice.enrol('dipper', { zone: 'America/New_York' })
    await practice.until('2026-03-03', '02:30')
    await practice.say('dipper', 'I have a fever and chills')
    await practice.until('2026-03-05', '12:00')
    const times = alerts().map((one) => timeAt(one.at, ZONE))
    expect(times.slice(0, 4)).toEqual(['02:30', '07:00', '08:00', '09:00'])
    expect(times).toContain('22:00')
    expect(times.filter((time) => time > '22:00' || time < '02:30')).toEqual([])
    expect(times.filter((time) => time === '07:00')).toHaveLength(3)
    await practice.command('take-up', { client: 'dipper' })
    const before = alerts().length
    await practice.until('2026-03-06', '12:00')
    expect(alerts()).toHaveLength(before)
  })

  it('tells of the out-of-hours service in the evening, of a time today by day', async () => {
    await practice.until('2026-03-02', '09:00')
    expect((await practice.say('heron', 'I have a fever and chills'))[0]?.text).toContain('a time today')
    await practice.enrol('dipper')
    await practice.until('2026-03-02', '21:00')
    expect((await practice.say('dipper', 'I have a fever and chills'))[0]?.text).toContain('out-of-hours')
  })
})

describe('while locked', () => {
  beforeEach(async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', "can't pee since this morning")
  })

  it('asks after 30 minutes whether they are on the way, understood in words too', async () => {
    await practice.wait(31)
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'follow-up', asks: 'on-the-way' })
    const told = await practice.say('heron', 'no')
    expect(told).toHaveLength(1)
    expect(told[0]!.text).toContain('Please go now')
  })

  it.each(['👍', '👍🏽', 'ok', 'Okay.', 'will do'])(
    'takes %s for no yes to that, and asks again',
    async (said) => {
      await practice.wait(31)
      const [told] = await practice.say('heron', said)
      expect(told?.text).toContain('I ask again')
      expect(told?.asks).toBe('on-the-way')
      const [yes] = await practice.say('heron', 'yes')
      expect(yes?.text).toContain('do not put it off')
    },
  )

  it.each(['thanks', 'help', 'how long is the waiting list for the boathouse?', 'I am back', 'leave'])(
    'answers "%s" and says that drills stay stopped and care comes first',
    async (said) => {
      await practice.say('heron', said)
      expect(practice.to('heron').at(-1)?.text).toContain('Your drills are still stopped. Please get care')
    },
  )

  it('asks each morning whether they were seen and whether anything is new, and sends no prompt, nudge or lapse', async () => {
    await practice.until('2026-03-20', '09:00')
    const kinds = practice
      .to('heron')
      .filter((m) => m.kind !== 'notice')
      .map((m) => m.kind)
    expect(kinds.filter((kind) => ['nudge', 'lapse', 'reminder'].includes(kind))).toEqual([])
    const mornings = practice.sent.filter((one) => one.to === 'user-heron' && one.message.asks === 'signs')
    expect(mornings.map((one) => timeAt(one.at, ZONE))).toEqual(Array.from({ length: 18 }, () => '08:00'))
    expect(practice.toCoach().filter((message) => message.kind === 'lapse')).toEqual([])
  })

  it('takes a new sign from the morning question as a new event', async () => {
    await practice.until('2026-03-03', '08:30')
    await practice.press('heron', 'one-of-these')
    expect(practice.to('heron').at(-1)?.pick?.name).toBe('which-sign')
    await practice.press('heron', 'which-sign', ['leg-weakness'])
    expect(practice.toAlerts().filter((message) => message.kind === 'alert')).toHaveLength(2)
  })

  it('tells the coach when the client says they were seen', async () => {
    await practice.until('2026-03-03', '08:30')
    await practice.press('heron', 'seen-yes')
    expect(practice.toCoach().at(-1)?.text).toContain('/clear')
    expect(await practice.status('heron')).toBe('locked')
  })

  it('stands at the head of the digest and the roll-call', async () => {
    await practice.enrol('avocet')
    await practice.until('2026-03-08', '19:00')
    const roll = practice.toCoach().find((message) => message.kind === 'roll-call')!
    expect(roll.text.indexOf('heron')).toBeLessThan(roll.text.indexOf('avocet'))
    expect(
      practice
        .toCoach()
        .filter((message) => message.kind === 'digest')
        .map((message) => message.about),
    ).toEqual(['heron', 'avocet'])
  })
})

describe('clearance', () => {
  const clear = (on: string, by = 'emergency physician') =>
    practice.command('clear', { client: 'heron', by, on })
  beforeEach(async () => {
    await practice.until('2026-03-04', '09:00')
    await practice.command('plan', {
      client: 'heron',
      sessions: 2,
      ladders: 'extension:3 glide:1',
      anyway: true,
    })
    await practice.say('heron', "can't pee since this morning")
    await practice.until('2026-03-06', '09:00')
  })

  it.each(['2026-03-03', '2026-03-07', 'soon', '2026-02-30'])('is refused with the date %s', async (on) => {
    await clear(on)
    expect(await practice.status('heron')).toBe('locked')
  })

  it('needs a name of a profession', async () => {
    expect((await clear('2026-03-05', '  '))?.text).toContain('profession')
    expect(await practice.status('heron')).toBe('locked')
  })

  it('must not lie before the latest sign', async () => {
    await practice.say('heron', 'my foot drags when I walk since now')
    await clear('2026-03-05')
    expect(await practice.status('heron')).toBe('locked')
    await clear('2026-03-06')
    expect(await practice.status('heron')).toBe('active')
  })

  it('opens the plan a rung lower, tells both, ends the alerts, and the next prompt asks the signs again', async () => {
    const before = alerts().length
    const answer = await clear('2026-03-05')
    expect(answer?.kind).toBe('cleared')
    expect(await practice.status('heron')).toBe('active')
    expect(await practice.rungs('heron')).toEqual({ extension: 2, glide: 1 })
    expect(practice.to('heron').at(-1)).toMatchObject({ kind: 'cleared' })
    await practice.until('2026-03-07', '08:30')
    expect(alerts()).toHaveLength(before)
    const prompt = practice.to('heron').at(-1)!
    expect(prompt.kind).toBe('prompt')
    expect(prompt.drills).toEqual(['extension:2', 'glide:1'])
    expect(prompt.buttons.map((button) => button.name)).toContain('one-of-these')
    const file = await practice.file('heron')
    expect(file.signs[0]).toMatchObject({ state: 'cleared', endedBy: 'emergency physician, 2026-03-05' })
    expect(file.checkIns.find((row) => row.day === '2026-03-04')?.signs).toEqual(['bladder-change'])
  })

  it('stops a step up that was still to come', async () => {
    await clear('2026-03-05')
    await practice.command('decide', { client: 'heron', do: 'advance', ladder: 'glide' })
    await practice.say('heron', "can't pee again since now")
    await clear('2026-03-06')
    expect((await practice.rungs('heron', addDays('2026-03-06', 2))).glide).toBe(1)
  })

  it('counts silent days anew from that day', async () => {
    await practice.until('2026-03-16', '09:00')
    await clear('2026-03-16')
    await practice.until('2026-03-18', '09:00')
    expect(practice.to('heron').at(-1)?.kind).toBe('prompt')
    expect(await practice.status('heron')).toBe('active')
  })

  it('by no press and no outcome', async () => {
    for (const outcome of ['reached', 'hospital', 'seen', 'no-answer', 'false-alarm'])
      await practice.command('take-up', { client: 'heron', outcome })
    await practice.press('heron', 'seen-yes')
    await practice.press('heron', 'none-of-these')
    await practice.command('resume-client', { client: 'heron' })
    await practice.say('heron', 'I am back')
    expect(await practice.status('heron')).toBe('locked')
  })
})
