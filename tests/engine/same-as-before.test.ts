import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
  await practice.until('2026-03-02', '09:00')
})
afterEach(() => practice.close())

const last = () => practice.to('heron').at(-1)!
const names = () => last().buttons.map(({ name }) => name)
const day = async (on: string) => (await practice.file('heron')).checkIns.find((row) => row.day === on)

describe('"same as yesterday"', () => {
  it('is asked back with the values of that day on one button, beside the ordinary choices', async () => {
    await practice.say('heron', '2 calf 4, no signs')
    await practice.until('2026-03-03', '09:00')
    await practice.say('heron', 'same as yesterday')
    expect(last().buttons[0]).toMatchObject({ name: 'same', label: 'Same: 2 sessions, calf, pain 4' })
    expect(names()).toContain('sessions-1')
    expect((await day('2026-03-03'))?.pain ?? null).toBeNull()
    const answer = await practice.press('heron', 'same')
    expect(JSON.stringify(answer)).toContain('2 sessions, calf, pain 4')
    expect(await day('2026-03-03')).toMatchObject({ sessions: 2, reach: 'calf', pain: 4 })
    expect((await practice.file('heron')).asked.map(({ ask }) => ask)).not.toContain('sessions')
  })

  it('takes what was told otherwise as told', async () => {
    await practice.say('heron', '2 calf 4, no signs')
    await practice.until('2026-03-03', '09:00')
    await practice.say('heron', 'same but pain 5')
    expect(last().buttons[0]?.label).toBe('Same: 2 sessions, calf')
    await practice.press('heron', 'same')
    expect(await day('2026-03-03')).toMatchObject({ sessions: 2, reach: 'calf', pain: 5 })
  })

  it('may be answered the ordinary way', async () => {
    await practice.say('heron', '2 calf 4, no signs')
    await practice.until('2026-03-03', '09:00')
    await practice.say('heron', 'same as yesterday')
    await practice.say('heron', '1 knee 3')
    expect(await day('2026-03-03')).toMatchObject({ sessions: 1, reach: 'knee', pain: 3 })
  })

  it('is an ordinary question where the day before holds nothing', async () => {
    await practice.say('heron', '2 calf 4, no signs')
    await practice.until('2026-03-04', '09:00')
    await practice.say('heron', 'same as yesterday')
    expect(last().asks).toBe('sessions')
    expect(names()).not.toContain('same')
  })
})
