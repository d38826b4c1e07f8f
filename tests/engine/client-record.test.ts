import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { textsFor } from '../../src/text/index.ts'
import { COACH, openPractice, type Practice } from './practice.ts'
import { namesOf, pressShown } from './shown.ts'

const { client, coach, record } = textsFor('en')
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
})
afterEach(() => practice.close())

async function twoWeeks(): Promise<void> {
  for (let n = 2; n <= 12; n++) {
    await practice.until(`2026-03-${String(n).padStart(2, '0')}`, '08:30')
    await practice.say('heron', `2 calf ${n % 3}, no signs`)
  }
}

describe('a client’s record', () => {
  it('shows the present week with its picture, and goes back and forth by week', async () => {
    await twoWeeks()
    const now = await practice.command('client-record', { client: 'heron' })
    expect(now?.text).toContain('2026-W11, Mon 9 Mar to Sun 15 Mar, week 2 of the plan')
    expect(now?.text).toContain('In charge: <@coach-1>')
    expect(now?.picture).toMatchObject({ name: 'record-heron-2026-03-12' })
    expect(namesOf(now)).toEqual(['week-before'])
    const before = await pressShown(practice, now, 'week-before')
    expect(before?.text).toContain('2026-W10')
    expect(before?.picture).toMatchObject({ name: 'record-heron-2026-03-08' })
    expect(before?.privately).toBe(false)
    expect(namesOf(before)).toContain('week-after')
    expect(namesOf(before)).not.toContain('week-before')
  })

  it('opens at the week that is named, by its number or a date in it', async () => {
    await twoWeeks()
    for (const week of ['2026-W10', '2026-03-04']) {
      const answer = await practice.command('client-record', { client: 'heron', week })
      expect(answer?.text).toContain('2026-W10')
    }
    const none = await practice.command('client-record', { client: 'heron', week: 'soon' })
    expect(none?.text).toBe(record.badWeek('soon'))
    const early = await practice.command('client-record', { client: 'heron', week: '2025-W10' })
    expect(early?.text).toBe(record.noWeek('heron', '2025-W10'))
  })

  it('shows every version of a day, and which of them were filled in later', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', '2 calf 4, no signs')
    await practice.until('2026-03-04', '09:00')
    await practice.say('heron', 'Monday 1 knee 5')
    await practice.say('heron', 'yesterday 2 knee 3')
    const text = (await practice.command('client-record', { client: 'heron' }))!.text
    const [monday, first, second, tuesday, third] = text
      .split('\n')
      .filter((line) => /Mar/.test(line))
      .slice(1)
    expect(monday).toContain('**Mon 2 Mar** 1 session, knee, pain 5')
    expect(first).toBe('  Mon 2 Mar 09:00 “2 calf 4, no signs”')
    expect(second).toBe('  Wed 4 Mar 09:00 “Monday 1 knee 5” (filled in later)')
    expect(tuesday).toContain('filled in later, Wed 4 Mar')
    expect(third).toContain('(filled in later)')
    expect(text).toContain('**Wed 4 Mar** no check-in')
  })

  it('keeps the client’s own words out where the practice does not quote', async () => {
    await practice.command('set-up', { quote: false })
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', '2 calf 4, no signs')
    const text = (await practice.command('client-record', { client: 'heron' }))!.text
    expect(text).not.toContain('“')
    expect(text).toContain('2 sessions, calf, pain 4')
  })

  it('holds signs with how they ended, the alert with who had it, decisions and notes', async () => {
    await twoWeeks()
    await practice.command('decide', { client: 'heron', do: 'hold', reason: 'travels next week' })
    await practice.command('note', { client: 'heron', text: 'sleeps badly' })
    await practice.say('heron', 'numb between my legs since this morning')
    await practice.command('take-up', { client: 'heron', outcome: 'hospital' })
    const text = (await practice.command('client-record', { client: 'heron' }))!.text
    expect(text).toContain('Decision Thu 12 Mar 08:30: Hold, by <@coach-1>: travels next week')
    expect(text).toContain('sleeps badly')
    expect(text).toMatch(
      /Alert of Thu 12 Mar 08:30 .*<@coach-1> has had it since .*closed .*: Going to hospital/,
    )
    expect(text).toMatch(/Sign: .*\(emergency\), Thu 12 Mar: open/)
    await practice.command('clear', { client: 'heron', by: 'emergency physician', on: '2026-03-12' })
    const after = (await practice.command('client-record', { client: 'heron' }))!.text
    expect(after).toContain('cleared Thu 12 Mar 08:30 (emergency physician, 2026-03-12)')
  })

  it('never shows the notes of coaches to the client', async () => {
    await practice.command('note', { client: 'heron', text: 'sleeps badly' })
    await practice.command('my-record', {}, 'heron')
    await practice.say('heron', 'my record')
    expect(JSON.stringify(practice.to('heron'))).not.toContain('sleeps badly')
    expect((await practice.command('my-record', {}, 'heron'))?.text).not.toContain('sleeps badly')
  })

  it('of a week full of words comes in parts', async () => {
    for (let n = 2; n <= 8; n++) {
      await practice.until(`2026-03-0${n}`, '08:30')
      for (let k = 0; k < 3; k++)
        await practice.say(
          'heron',
          `2 calf ${k + 1}, no signs, and it was a long day at the boathouse, number ${k}`,
        )
    }
    const first = await practice.command('client-record', { client: 'heron' })
    expect(first?.text).toMatch(/part 1 of [2-9]/)
    expect(first!.text.length).toBeLessThanOrEqual(2_000)
    const second = await pressShown(practice, first, 'more')
    expect(second?.text).toMatch(/part 2 of/)
  })

  it('opens from a message about the client, for whoever presses', async () => {
    await practice.until('2026-03-08', '18:01')
    const answer = await practice.coachPress('heron', 'record')
    expect(answer).toMatchObject({ privately: true, kind: 'report' })
    const wren = { ...COACH, user: 'coach-2' }
    await practice.until('2026-03-10', '09:00')
    const page = await practice.coachPress('heron', 'record', wren)
    expect((await pressShown(practice, page, 'week-before', { by: COACH }))?.text).toBe(client.notYours)
    expect((await pressShown(practice, page, 'week-before', { by: wren }))?.text).toContain('2026-W10')
  })

  it('refuses an alias that is not known, naming those that are', async () => {
    const answer = await practice.command('client-record', { client: 'osprey' })
    expect(answer?.text).toBe(coach.unknownClient('osprey', ['heron']))
  })
})
