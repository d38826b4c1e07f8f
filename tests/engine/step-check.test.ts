import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
})
afterEach(() => practice.close())

const advance = (ladder: string, more: Record<string, boolean> = {}) =>
  practice.command('decide', { client: 'heron', do: 'advance', ladder, ...more })
const decisions = () => practice.to('heron').filter((message) => message.kind === 'decision')

describe('a step onto a rung that works with a band', () => {
  it('asks for band and anchor first, and nothing is changed until the coach goes on', async () => {
    const asked = await advance('glide')
    expect(asked?.text).toMatch(/Nothing is changed yet.*\n.*works with a band.*anchor/)
    expect(await practice.rungs('heron', '2026-03-04')).toMatchObject({ glide: 1 })
    expect(decisions()).toEqual([])
    const done = await practice.answerPress(asked, 'all-the-same')
    expect(done?.text).toContain('Decided for **heron**')
    expect(await practice.rungs('heron', '2026-03-04')).toMatchObject({ glide: 2 })
    expect((await practice.file('heron')).plan?.checked).toContain('glide')
    expect(decisions()).toHaveLength(1)
  })

  it('is taken at once where the coach says so in the command', async () => {
    expect((await advance('glide', { anyway: true }))?.text).toContain('Decided for **heron**')
  })

  it('is not asked for a rung without one', async () => {
    expect((await advance('extension'))?.text).toContain('Decided for **heron**')
  })
})
