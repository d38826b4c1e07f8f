import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { addDays, daysFrom } from '../../src/domain/day.ts'
import { openPractice, type Practice } from './practice.ts'

const START = '2026-03-02'
const dayNo = (n: number): string => addDays(START, n - 1)
let practice: Practice
beforeEach(async () => {
  practice = await openPractice(START)
})
afterEach(() => practice.close())

async function reply(first: number, last: number, words: string): Promise<void> {
  for (const day of daysFrom(dayNo(first), dayNo(last))) {
    await practice.until(day, '08:30')
    await practice.say('heron', `${words}, no signs`)
  }
}

describe('the proposals looked back on', () => {
  it('says in private that there are none yet', async () => {
    await practice.enrol('heron', {}, {}, 'extension:1')
    const answer = await practice.command('proposals')
    expect(answer?.privately).toBe(true)
    expect(answer?.text).toContain('Last 90 days')
    expect(answer?.text).toContain('none decided or over yet')
  })

  it('counts what was taken up, turned down and left, rule by rule', async () => {
    await practice.enrol('heron', {}, {}, 'extension:1')
    await reply(1, 5, '2 calf 4')
    await practice.press('heron', 'comfort-yes')
    await practice.command('decide', { client: 'heron', do: 'advance', ladder: 'extension' })
    await reply(6, 7, '2 calf 8')
    await practice.command('decide', { client: 'heron', do: 'refer' })
    const { text } = (await practice.command('proposals'))!
    expect(text).toContain('gate to the next rung met: 1 of 1 taken up (100 %), 0 turned down')
    expect(text).toContain('pain 8 or more twice in a row: 0 of 1 taken up (0 %), 1 turned down')
    expect(text).not.toContain('hardly ever')
  })

  it('is for coaches alone', async () => {
    await practice.enrol('heron', {}, {}, 'extension:1')
    expect((await practice.command('proposals', {}, 'heron'))?.text).not.toContain('Last 90 days')
  })
})
