import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { addDays, type Day } from '../../src/domain/day.ts'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const START: Day = '2026-03-02'
const TWO = { activities: 'rowing 7, sitting 5' }
const last = () => practice.to('heron').at(-1)!
const asked = () => practice.to('heron').filter((message) => message.asks === 'activities').length
const scores = async () => (await practice.file('heron')).activities.map((row) => row.scores)

/** The check-in of the n-th day after the start. */
async function checkIn(n: number, words = '2 back 2, no signs'): Promise<void> {
  await practice.until(addDays(START, n), '08:30')
  await practice.say('heron', words)
}

describe('the activities that matter', () => {
  it('are asked about two weeks on, just after a check-in, and answered in a line', async () => {
    await practice.enrol('heron', {}, TWO)
    await checkIn(13)
    expect(asked()).toBe(0)
    await checkIn(14)
    expect(last()).toMatchObject({ kind: 'receipt', asks: 'activities' })
    expect(last().text).toContain('rowing')
    const told = await practice.say('heron', 'Rowing 4 and sitting: 3')
    expect(told.map((message) => message.kind)).toEqual(['receipt'])
    expect(told[0]?.text).toContain('rowing 7 → 4, sitting 5 → 3')
    expect(await scores()).toEqual([{ rowing: 4, sitting: 3 }])
    await practice.say('heron', 'rowing 5', { edits: 'message-1' })
    expect(await scores()).toEqual([{ rowing: 5, sitting: 3 }])
    await checkIn(27)
    expect(asked()).toBe(1)
    await checkIn(28)
    expect(asked()).toBe(2)
  })

  it('are no sessions where they are told unasked, and a zone stays a zone', async () => {
    await practice.enrol('heron', {}, { activities: 'rowing 7, knee 5, running 6' })
    await checkIn(1, 'rowing 4')
    await practice.say('heron', 'rowing 4, running 2')
    expect((await practice.file('heron')).checkIns).toEqual([])
    expect(await scores()).toEqual([{ rowing: 4, running: 2 }])
    await practice.say('heron', 'knee 4')
    expect((await practice.file('heron')).checkIns.at(-1)).toMatchObject({ reach: 'knee', pain: 4 })
    expect(await scores()).toHaveLength(1)
  })

  it('are asked of somebody who answers in words without a list of numbers', async () => {
    await practice.enrol('heron', {}, TWO)
    await practice.store.store.transaction(async (tx) => {
      const { client } = (await tx.clientByRef('guild-1', 'heron'))!
      await tx.apply({ changes: [{ put: 'client', row: { ...client, wordsOnly: true } }], postings: [] })
    })
    await checkIn(14)
    expect(last()).toMatchObject({ asks: 'activities', buttons: [] })
    expect(last().text).not.toContain('1: ')
    await practice.say('heron', 'row 4, sitting 3')
    expect(await scores()).toEqual([{ rowing: 4, sitting: 3 }])
  })

  it('are answered in a form as well, and by bare numbers once the day is told', async () => {
    await practice.enrol('heron', {}, TWO)
    await checkIn(14)
    const told = await practice.fill('heron', 'activities', { 'activity-0': '6' })
    expect(told[0]?.text).toContain('rowing 7 → 6')
    await practice.fill('heron', 'activities', {})
    expect(last().text).toContain('could not read')
    await checkIn(28)
    await practice.say('heron', '3, 2')
    expect((await scores()).at(-1)).toEqual({ rowing: 3, sitting: 2 })
  })

  it('left without an answer are asked again after three days, and a check-in stays a check-in', async () => {
    await practice.enrol('heron', {}, TWO)
    await checkIn(14)
    await checkIn(15, '1 calf 4, no signs')
    expect((await practice.file('heron')).checkIns.at(-1)).toMatchObject({
      sessions: 1,
      reach: 'calf',
      pain: 4,
    })
    expect(asked()).toBe(1)
    await checkIn(17)
    expect(asked()).toBe(2)
    // a sign beside the numbers is heard all the same
    const told = await practice.say('heron', 'rowing 5, sitting 3, numb between my legs since today')
    expect(told.map((message) => message.kind)).toContain('urgent')
  })

  it('are asked twice a round at most, then wait for the next fortnight', async () => {
    await practice.enrol('heron', {}, TWO)
    for (let n = 14; n < 28; n++) await checkIn(n)
    expect(asked()).toBe(2)
    for (let n = 28; n < 32; n++) await checkIn(n)
    expect(asked()).toBe(3)
  })

  it('wait on a day on which a sign was asked about', async () => {
    await practice.enrol('heron', {}, TWO)
    for (let n = 0; n < 14; n++) await checkIn(n)
    await checkIn(14, '2 back 2, bit of a weak leg maybe')
    expect(last().asks).toBe('signs')
    await practice.press('heron', 'no')
    await practice.say('heron', '2 back 2, no signs')
    expect(asked()).toBe(0)
    for (let n = 15; n < 18; n++) await checkIn(n)
    expect(asked()).toBe(1)
  })

  it('wait while an alarm is open', async () => {
    await practice.enrol('heron', {}, TWO)
    for (let n = 0; n < 13; n++) await checkIn(n)
    await checkIn(13, '2 foot 3, no signs')
    expect((await practice.file('heron')).flags.some(({ rule }) => rule === 'below-knee')).toBe(true)
    for (let n = 14; n < 19; n++) await checkIn(n)
    expect(asked()).toBe(0)
    for (let n = 19; n < 24; n++) await checkIn(n)
    expect(asked()).toBeGreaterThan(0)
  })

  it('may stand beside a check-in in one line', async () => {
    await practice.enrol('heron', {}, TWO)
    await checkIn(1, '2 calf 4, rowing 5')
    expect((await practice.file('heron')).checkIns.at(-1)).toMatchObject({
      sessions: 2,
      reach: 'calf',
      pain: 4,
    })
    expect(await scores()).toEqual([{ rowing: 5 }])
    expect(last()).toMatchObject({ kind: 'receipt' })
    expect(last().text).toContain('rowing 7 → 5')
    expect(last().text).toContain('2 sessions, calf, pain 4')
    const told = await practice.say('heron', 'sitting 3, rowing 4, numb between my legs since today')
    expect(told[0]?.kind).toBe('urgent')
  })

  it('are not asked about while parked, paused or locked, nor where none were named', async () => {
    await practice.enrol('heron', {}, { ...TWO, risks: ['cancer'] })
    await practice.enrol('plover', {}, { activities: '' })
    await checkIn(14)
    await practice.say('plover', '2 back 2, no signs')
    expect(asked()).toBe(0)
    expect(practice.to('plover').some((message) => message.asks === 'activities')).toBe(false)
  })

  it('stand on the card of the digest, with the lift wanted once lifting is under way', async () => {
    await practice.enrol('heron', {}, TWO, 'extension:3 extend-hip:3 lift:1')
    await checkIn(14)
    await practice.say('heron', 'rowing 4')
    await practice.command('digest')
    await practice.wait(1)
    const card = practice.toCoach().findLast((message) => message.kind === 'digest')!
    expect(card.text).toContain('rowing 7 → 4, sitting 5')
    expect(card.text).toContain('Wants back: deadlift')
    expect(card.text.length).toBeLessThanOrEqual(2000)
  })
})
