import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { addDays } from '../../src/domain/day.ts'
import { openPractice, type Practice } from './practice.ts'

const START = '2026-03-02'
let practice: Practice
let next = START
beforeEach(async () => {
  next = START
  practice = await openPractice(START)
  await practice.enrol('heron')
})
afterEach(() => practice.close())

/** Replies of so many mornings, so many days apart; gives what the coach was told besides the digest. */
async function mornings(replies: number, reply: string, apart = 1): Promise<string[]> {
  const before = practice.toCoach().length
  for (let n = 0; n < replies; n += 1) {
    await practice.until(next, '09:00')
    await practice.say('heron', `${reply}, no signs`)
    next = addDays(next, apart)
  }
  return practice
    .toCoach()
    .slice(before)
    .filter((message) => message.kind === 'proposal')
    .map((message) => message.text)
}
const flags = async () =>
  (await practice.file('heron')).flags.filter((row) => row.closedAt === null).map((row) => row.rule)

describe('what the coach is told besides the digest', () => {
  it('pain that rises while the reach draws in waits as a note, and is told once it holds', async () => {
    await mornings(10, '2 calf 3')
    expect(await mornings(10, '2 thigh 3')).toEqual([])
    expect([...(await mornings(1, '2 thigh 7')), ...(await mornings(1, '2 thigh 5'))]).toEqual([])
    expect(await flags()).toContain('pain-up')
    const told = await mornings(2, '2 thigh 6')
    expect(told).toHaveLength(1)
    expect(told[0]).toContain('usual level')
    const row = (await practice.file('heron')).flags.find((flag) => flag.rule === 'pain-up')
    expect(row).toMatchObject({ level: 'hold', day: '2026-03-23' })
    // told once
    expect(await mornings(2, '2 thigh 6')).toEqual([])
  })

  it('a plateau waits for the digest, and stands there with its proposal', async () => {
    expect(await mornings(25, '2 calf 5', 2)).toEqual([])
    expect(await flags()).toContain('plateau')
    await practice.until('2026-04-19', '18:05')
    const digest = practice.toCoach().findLast((message) => message.kind === 'digest')
    expect(digest?.text).toContain('no change that matters in six weeks')
    expect(digest?.buttons.map((button) => button.name)).toContain('refer')
  })
})
