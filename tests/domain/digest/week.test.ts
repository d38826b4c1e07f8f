import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/domain/day.ts'
import type { WeekExtra } from '../../../src/domain/digest/facts.ts'
import { weekFacts } from '../../../src/domain/digest/week.ts'
import { assess } from '../../../src/domain/rules/assess.ts'
import type { Flag, History } from '../../../src/domain/rules/assessment.ts'
import { assessment, checkIn, diary } from './diary.ts'

const START = '2026-03-02'
const EXTRA: WeekExtra = {
  ref: 'heron',
  standing: 'active',
  rungs: { glide: 1, extension: 2 },
  resting: [],
  barrier: null,
  urgentOpen: false,
  alertOpen: false,
}
const facts = (history: History, on: string, extra: Partial<WeekExtra> = {}) =>
  weekFacts(history, assess(history, on), on, { ...EXTRA, ...extra })

describe('the facts of a week, counted by hand', () => {
  // week 1: pain 6 6 7 5 6 6 -> 6; week 2 (sessions 2 2 1 2 2 2 of 12, one day without reply): pain 5 4 4 4 3 4 -> 4
  const history = diary(START, '2c6 2c6 1c7 2c5 - 2c6 2c6  2c5 2c4 1k4 - 2k4~ 2k3 2k4', {
    baseline: { reach: 'calf', pain: 6 },
  })
  const week = facts(history, '2026-03-15')

  it('are of the 7 local dates up to the day', () => {
    expect([week.first, week.on, week.week]).toEqual(['2026-03-09', '2026-03-15', 2])
  })

  it('count replies and sessions of the days answered, with a Wilson interval', () => {
    expect(week.replies).toEqual({ answered: 6, days: 7 })
    expect(week.sessions).toMatchObject({ done: 11, planned: 12 })
    // 11 of 12: 91.7 %, 64.6 to 98.5 % (Wilson score without continuity correction, by hand)
    expect(week.sessions.percent).toBeCloseTo(91.67, 2)
    expect(week.sessions.low).toBeCloseTo(64.61, 1)
    expect(week.sessions.high).toBeCloseTo(98.51, 1)
  })

  it('give reach week by week and pain now, a week ago and at baseline', () => {
    // calf calf knee knee knee knee in week 2: median knee
    expect(week.reach.path).toEqual(['calf', 'knee'])
    expect(week.reach.baseline).toBe('calf')
    expect(week.pain).toMatchObject({ now: 4, weekAgo: 6, baseline: 6, change: -2, meaningful: true })
    expect(week.pain.worst).toEqual({ pain: 5, day: '2026-03-09' })
  })

  it('name what was filled in later and the rungs in order of the ladders', () => {
    expect(week.filledLater).toEqual(['2026-03-13'])
    expect(week.rungs).toEqual([
      { ladder: 'extension', rung: 2, last: 3, resting: false },
      { ladder: 'glide', rung: 1, last: 2, resting: false },
    ])
  })

  it('count days of silence up to the day', () => {
    expect(week.silentDays).toBe(0)
    expect(facts(diary(START, '2c6 - - -'), '2026-03-05').silentDays).toBe(3)
    expect(facts(diary(START, '- - - -'), '2026-03-05').silentDays).toBe(4)
  })
})

describe('what is not known', () => {
  it('stays a gap in the path of the reach, and the path starts where anything is known', () => {
    const blank = Array(7).fill('-').join(' ')
    const week = facts(diary(START, `${blank} 2c6 - - - - - -  ${blank} 2k4 - - - - - -`), '2026-03-29')
    expect(week.reach.path).toEqual(['calf', null, 'knee'])
  })

  it('looks back six weeks at most', () => {
    const week = facts(diary(START, Array(56).fill('2c5').join(' ')), '2026-04-26')
    expect(week.reach.path).toHaveLength(6)
  })

  it('is null in an empty week', () => {
    const week = facts(diary(START, '-'), START)
    expect(week.reach.path).toEqual([])
    expect(week.pain).toMatchObject({ now: null, weekAgo: null, worst: null })
    expect(week.sessions).toMatchObject({ done: 0, planned: 0, percent: null })
  })

  it('names days on which nothing was said of the signs, never counting them as none', () => {
    const silent = { day: START, checkIn: checkIn(START, { pain: 3, denied: null }), cleared: [], noted: [] }
    const next = addDays(START, 1)
    const denied = { ...silent, day: next, checkIn: checkIn(next, { pain: 3, denied: 'all' }) }
    const history = { ...diary(START, '-'), days: [silent, denied] }
    expect(facts(history, next).signsNotSaid).toEqual([START])
  })

  it('leaves the last rung of an unknown ladder open unless told', () => {
    const history = diary(START, '2c6')
    const rungs = { 'boat-carry': 2 }
    expect(facts(history, START, { rungs }).rungs[0]!.last).toBeNull()
    expect(facts(history, START, { rungs, lastRungs: { 'boat-carry': 4 } }).rungs[0]!.last).toBe(4)
  })
})

describe('flags', () => {
  it('come the weightiest first, with signs apart', () => {
    const flag = (rule: Flag['rule'], level: Flag['level'], day: string): Flag => ({
      rule,
      level,
      day,
      figures: {},
      source: '',
    })
    const on = '2026-03-08'
    const found = weekFacts(
      diary(START, '2c6'),
      assessment(on, {
        flags: [
          flag('gate', 'note', '2026-03-03'),
          flag('pain-up', 'hold', '2026-03-06'),
          flag('sign', 'emergency', '2026-03-05'),
          flag('below-knee', 'hold', '2026-03-04'),
        ],
        openSigns: [{ sign: 'bladder-change', care: 'emergency', day: '2026-03-05' }],
        reasons: ['sign', 'pain-up'],
      }),
      on,
      EXTRA,
    )
    expect(found.flags.map(({ rule }) => rule)).toEqual(['below-knee', 'pain-up', 'gate'])
    expect(found.signs).toHaveLength(1)
    expect(found.reasons).toEqual([
      { rule: 'sign', day: '2026-03-05' },
      { rule: 'pain-up', day: '2026-03-06' },
    ])
  })

  it('refuses an assessment of another day', () => {
    expect(() => weekFacts(diary(START, '2c6'), assessment(START), '2026-03-03', EXTRA)).toThrow(RangeError)
  })
})

describe('any diary', () => {
  const word = fc.constantFrom('2c6', '1k4', '0f9', '??5', '2n0', 'off0t3', '-', '2b1~')
  it('never counts more replies than days, and says nothing that a later day would change', () => {
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 50 }), fc.nat(49), (words, n) => {
        const on = addDays(START, Math.min(n, words.length - 1))
        const whole = diary(START, words.join(' '))
        const sofar = { ...whole, days: whole.days.filter(({ day }) => day <= on) }
        const week = facts(whole, on)
        expect(week.replies.answered).toBeLessThanOrEqual(week.replies.days)
        expect(week.silentDays).toBeGreaterThanOrEqual(0)
        expect(week).toEqual(facts(sofar, on))
        expect(JSON.parse(JSON.stringify(week))).toEqual(week)
      }),
      { numRuns: 60 },
    )
  })
})
