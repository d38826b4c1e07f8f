import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/domain/day.ts'
import { assessedDays, historyOfDiary } from '../../../src/domain/diaries/assessed.ts'
import { CAUSES, coachMessages, coachRules } from '../../../src/domain/diaries/coach.ts'
import { COURSES, type Diary, diaryOf } from '../../../src/domain/diaries/diary.ts'
import { FIRST_DAY } from '../../../src/domain/diaries/series.ts'
import { replay } from '../../../src/domain/rules/replay.ts'

const LENGTH = 60
/** Pain and reach the same every day but for what is said. */
const diary = (change: (day: number) => Partial<{ pain: number; reach: number }> | null): Diary => {
  const days = Array.from({ length: LENGTH }, (_, day) => change(day))
  return {
    pain: days.map((day) => (day === null ? null : (day.pain ?? 3))),
    reach: days.map((day) => (day === null ? null : (day.reach ?? 1))),
    onset: 30,
  }
}
const told = (made: Diary): string[] =>
  coachMessages(made)
    .sort((a, b) => a.at - b.at)
    .map(({ at, cause }) => `${at} ${cause}`)

describe('a made-up diary before the rules', () => {
  it('becomes a history of its answered days, without sessions or rungs', () => {
    const history = historyOfDiary(diary((day) => (day === 2 ? null : {})))
    expect(history.days).toHaveLength(LENGTH - 1)
    expect(history.days[2]).toMatchObject({ day: addDays(FIRST_DAY, 3), checkIn: { pain: 3, reach: 'back' } })
    expect(history.days.every(({ checkIn, rungs }) => checkIn?.sessions === null && !rungs)).toBe(true)
  })

  it('is assessed as a replay has it, whatever span is asked for', () => {
    const made = diaryOf(7, 4, COURSES.both, LENGTH)
    const history = historyOfDiary(made)
    const raised = [...replay(() => history, FIRST_DAY, addDays(FIRST_DAY, LENGTH - 1))].map((day) =>
      day.raised.map(({ rule }) => rule),
    )
    const whole = assessedDays(made, 0, LENGTH - 1)
    for (const [at, rules] of raised.entries())
      expect(whole[at]!.flags.map(({ rule }) => rule)).toEqual(expect.arrayContaining(rules))
    expect(raised.flat().length).toBeGreaterThan(0)
    expect(assessedDays(made, 40, 50)).toEqual(whole.slice(40, 51))
    expect(assessedDays(made, 0, LENGTH - 1)).toBe(whole)
  })
})

describe('messages to the coach', () => {
  it('a spread: one message, and one more where easing back has not helped', () => {
    const spread = diary((day) => ({ pain: 0, reach: day >= 30 && day < 40 ? 3 : 0 }))
    // 3 zones over the usual level pass the limit at once; three answered days later it is no nearer
    expect(told(spread)).toEqual(['30 reach-spread', '33 all-rest'])
  })

  it('a state for the digest alone brings none, be it a plateau', () => {
    expect(told(diary((day) => ({ pain: day < 20 ? 6 : 2 })))).toEqual([])
    expect(told(diary(() => ({})))).toEqual([])
  })

  it('silence: told on the 5th day, paused on the 14th, and the rungs lowered at the return', () => {
    const from = (first: number, days: number) =>
      told(diary((day) => (day >= first && day < first + days ? null : { pain: 0, reach: 0 })))
    expect(from(20, 4)).toEqual([])
    expect(from(20, 6)).toEqual(['24 quiet'])
    expect(from(20, 14)).toEqual(['24 quiet', '33 lapse', '34 return'])
  })

  it('each cause by itself makes up the whole', () => {
    const made = diaryOf(7, 4, COURSES.both, LENGTH)
    const asked = { from: 0, to: LENGTH - 1, worse: false }
    const apart = CAUSES.flatMap((cause) => [...coachRules[`coach ${cause}`]!(made, asked)])
    const all = coachMessages(made).map(({ at }) => at)
    expect(apart.sort((a, b) => a - b)).toEqual(all.sort((a, b) => a - b))
    expect(all.length).toBeGreaterThan(0)
  })
})
