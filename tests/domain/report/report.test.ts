import { describe, expect, it } from 'vitest'
import { reportFacts } from '../../../src/domain/report/report.ts'
import { course, day, history, START, sign } from './course.ts'

describe('the facts of a report', () => {
  const facts = reportFacts(course(98))

  it('go back to the first day, a row a week', () => {
    expect(facts.begun).toBe(START)
    expect(facts.weeks).toHaveLength(14)
    expect(facts.weeks.map(({ first }) => first)).toEqual(
      Array.from({ length: 14 }, (_, n) => day(n * 7 + 1)),
    )
    expect(facts.weeks[0]).toMatchObject({
      reach: 'calf',
      farthest: 'calf',
      replies: { answered: 7, days: 7 },
    })
    expect(facts.weeks.at(-1)).toMatchObject({ reach: 'back' })
  })

  it('have the last week end where the report does', () => {
    expect(reportFacts(course(10)).weeks.at(-1)).toMatchObject({ first: day(8), replies: { days: 3 } })
  })

  it('count replies, and those filled in later, over the whole course', () => {
    // every eighth of 98 days is without a reply, every ninth of the others filled in a day later
    expect(facts.replies).toMatchObject({ answered: 86, days: 98, later: 9 })
    expect(facts.weeks.reduce((sum, { replies }) => sum + replies.later, 0)).toBe(9)
  })

  it('hold silence about the signs apart from a no', () => {
    const past = history(10, () => ({ denied: null }))
    expect(reportFacts(course(10, { history: past })).replies.signsNotSaid).toBe(9)
    const denied = history(10, () => ({ denied: 'all' }))
    expect(reportFacts(course(10, { history: denied })).replies.signsNotSaid).toBe(0)
  })

  it('give adherence with its interval: 20 of 40 is 50 %, Wilson 35 to 65 % (Newcombe 1998, method 3)', () => {
    const past = history(22, () => ({ sessions: 1 }))
    const { adherence } = reportFacts(course(22, { history: past }))
    expect(adherence).toMatchObject({ done: 20, planned: 40, percent: 50 })
    expect(adherence.low).toBeCloseTo(35.2, 1)
    expect(adherence.high).toBeCloseTo(64.8, 1)
  })

  it('say of pain what the rules say', () => {
    const { assessment } = course(98)
    expect(facts.pain).toMatchObject({
      now: assessment.pain.median7,
      baseline: 6,
      change: assessment.pain.change,
      meaningful: true,
    })
    expect(facts.reach).toEqual({ baseline: 'calf', now: 'back', direction: assessment.direction })
  })

  it('put open signs first, then the graver, then the later', () => {
    const open = sign({ sign: 'night-pain', care: 'soon', state: 'open', ended: null, by: null })
    const same = sign({ sign: 'fever-unwell', care: 'same-day', day: day(50) })
    const first = sign({ day: day(20) })
    const later = sign({ day: day(40) })
    const { signs } = reportFacts(course(98, { signs: [first, same, later, open] }))
    expect(signs).toEqual([open, later, first, same])
  })

  it('join the scores of each activity, first and last', () => {
    const { activities } = reportFacts(
      course(40, {
        activitiesFirst: { rowing: 7, stairs: 3 },
        activities: [
          { day: day(15), scores: { rowing: 5 } },
          { day: day(29), scores: { rowing: 2, lifting: 6 } },
        ],
      }),
    )
    expect(activities).toEqual([
      { name: 'lifting', first: 6, last: 6, day: day(29) },
      { name: 'rowing', first: 7, last: 2, day: day(29) },
      { name: 'stairs', first: 3, last: 3, day: null },
    ])
  })

  it('tell each decision once, and what changed without the coach, in order of day', () => {
    expect(facts.events.map(({ kind, day }) => `${day} ${kind}`)).toEqual([
      `${day(10)} decision`,
      `${day(30)} stop`,
      `${day(32)} rungs`,
      `${day(40)} decision`,
    ])
    expect(facts.events[2]).toMatchObject({ why: 'clearance', ladders: ['extension', 'glide'] })
  })

  it('survive JSON unchanged, as they wait in the outbox', () => {
    expect(JSON.parse(JSON.stringify(facts))).toEqual(facts)
  })

  it('can be had of a course without a single reply', () => {
    const past = { ...history(3), days: [] }
    const empty = reportFacts(course(3, { history: past, activitiesFirst: {}, activities: [] }))
    expect(empty.replies).toEqual({ answered: 0, days: 3, later: 0, signsNotSaid: 0 })
    expect(empty.adherence).toEqual({ done: 0, planned: 0, percent: null, low: null, high: null })
    expect(empty.weeks[0]).toMatchObject({ reach: null, pain: null, worst: null })
  })
})
