import { describe, expect, it } from 'vitest'
import { reachAt } from '../../../src/domain/reach.ts'
import { assess } from '../../../src/domain/rules/assess.ts'
import { day, flagOn, history, openDays, pains, reaches, span, times } from './build.ts'

describe('trend-pain and trend-reach', () => {
  it('name a fall over four weeks, both as notes, and nothing on a steady diary', () => {
    const falling = span(0, 27).map((n) => ({
      pain: 8 - Math.floor(n / 5),
      reach: reachAt(5 - Math.floor(n / 7)),
    }))
    const now = assess(history(falling), day(28))
    expect(now.flags.find((f) => f.rule === 'trend-pain')).toMatchObject({
      level: 'note',
      figures: { word: 'improving', n: 28 },
    })
    expect(now.flags.find((f) => f.rule === 'trend-reach')).toMatchObject({ figures: { word: 'improving' } })
    expect(now.direction).toBe('centralising')
    const steady = history(times(28))
    expect(openDays(steady, 'trend-pain')).toEqual([])
    expect(openDays(steady, 'trend-reach')).toEqual([])
  })

  it('names a slow rise that the moving level of the alarms takes in', () => {
    const rising = history(span(0, 27).map((n) => ({ pain: 2 + Math.floor(n / 9) })))
    expect(flagOn(rising, 28, 'trend-pain')?.figures).toMatchObject({ word: 'worsening' })
  })

  it('is silent with 9 values', () => {
    const few = history(
      span(0, 27).map((n) => (n % 3 === 0 && n < 27 ? { pain: 9 - Math.floor(n / 3) } : null)),
    )
    expect(flagOn(few, 28, 'trend-pain')).toBeUndefined()
    expect(assess(few, day(28)).pain).toMatchObject({ n: 9, slopePerWeek: null, p: null, ci: null })
  })
})

describe('meaningful', () => {
  const baseline = { reach: 'calf', pain: 6 } as const

  it('asks for 2 points and 30 %, or a zone', () => {
    expect(
      flagOn(history(pains(4, 4, 4, 4), { baseline: { reach: null, pain: 6 } }), 4, 'meaningful'),
    ).toMatchObject({
      level: 'note',
      figures: { painFrom: 6, painTo: 4, substantial: false },
    })
    const small = { reach: null, pain: 10 }
    expect(flagOn(history(pains(8, 8, 8, 8), { baseline: small }), 4, 'meaningful')).toBeUndefined()
    const low = { reach: null, pain: 2 }
    expect(flagOn(history(pains(1, 1, 1, 1), { baseline: low }), 4, 'meaningful')).toBeUndefined()
    expect(flagOn(history(reaches(4, 4, 4, 4), { baseline }), 4, 'meaningful')?.figures).toMatchObject({
      reachFrom: 5,
      reachTo: 4,
    })
  })

  it('waits for 4 answers and ends with its condition', () => {
    const h = history([...pains(3, 3, 3, 3), ...pains(6, 6, 6, 6, 6)], { baseline: { reach: null, pain: 6 } })
    expect(openDays(h, 'meaningful')).toEqual([4, 5, 6, 7])
  })

  it('takes the first 7 days where no baseline is given', () => {
    const h = history([...pains(6, 6, 6, 6, 6, 6, 6), ...pains(3, 3, 3, 3)])
    expect(openDays(h, 'meaningful')).toEqual([11])
  })
})

describe('adherence', () => {
  const done = (...sessions: (number | null)[]) => sessions.map((n) => (n === null ? null : { sessions: n }))

  it('fires on the 4th answered day under 60 %', () => {
    const h = history(done(1, 1, 1, 1))
    expect(openDays(h, 'adherence')).toEqual([4])
    expect(flagOn(h, 4, 'adherence')).toMatchObject({
      level: 'note',
      figures: { done: 4, planned: 8, percent: 50, replies: 4, days: 4 },
    })
  })

  it('holds a day without reply for unknown, and leaves days off aside', () => {
    expect(openDays(history(done(1, null, 1, null, 1)), 'adherence')).toEqual([])
    expect(openDays(history([...done(1, 1, 1), { sessions: 0, planned: 0 }]), 'adherence')).toEqual([])
    expect(openDays(history(done(2, 1, 1, 1)), 'adherence')).toEqual([])
  })

  it('gives sessions of planned and replies of days beside each other', () => {
    const h = history(done(2, 2, null, 2, 1, 2, 2, 3))
    expect(assess(h, day(8)).adherence).toMatchObject({
      done: 12,
      planned: 12,
      percent: 100,
      replies: 6,
      days: 7,
    })
    expect(assess(h, day(2)).adherence).toMatchObject({ done: 4, planned: 4, replies: 2, days: 2 })
  })
})

describe('quiet', () => {
  it('fires on the third day without reply, days off included, and ends with any reply', () => {
    const h = history([
      {},
      null,
      null,
      null,
      null,
      { sessions: null, reach: null, pain: null, denied: 'all' },
    ])
    expect(openDays(h, 'quiet')).toEqual([4, 5])
    expect(flagOn(h, 5, 'quiet')).toMatchObject({ level: 'note', day: day(4), figures: { days: 4 } })
  })

  it('counts dates that are not there at all, also from the start of the plan', () => {
    expect(flagOn(history([{}]), 15, 'quiet')).toMatchObject({ day: day(4), figures: { days: 14 } })
    expect(flagOn(history([], { start: day(1) }), 3, 'quiet')).toMatchObject({ figures: { days: 3 } })
    expect(flagOn(history([]), 3, 'quiet')).toBeUndefined()
  })

  it('is not said while a sign has the plan locked, and counts anew from the clearance', () => {
    const locked = [{ signs: ['bladder-change'] as const }, ...times(6, null)]
    const h = history([...locked, { cleared: ['bladder-change'], sessions: null, reach: null, pain: null }])
    expect(openDays(h, 'quiet', 12)).toEqual([11, 12])
  })
})

describe('plateau', () => {
  it('fires six weeks after the start, not before, and proposes to refer', () => {
    const h = history(times(50), { start: day(1) })
    expect(openDays(h, 'plateau')).toEqual(span(43, 50))
    expect(flagOn(h, 50, 'plateau')?.day).toBe(day(43))
    expect(assess(h, day(43))).toMatchObject({ proposal: 'refer', reasons: ['plateau'] })
  })

  it('keeps its first day in a longer diary', () => {
    expect(flagOn(history(times(90), { start: day(1) }), 90, 'plateau')?.day).toBe(day(43))
  })

  it('needs 20 answered days in the six weeks', () => {
    const answered = (n: number) => [...times(n), ...times(42 - n, null), ...times(4)]
    expect(openDays(history(answered(19)), 'plateau')).toEqual([])
    expect(openDays(history(answered(20)), 'plateau')).toEqual([46])
  })

  it('does not fire where pain or reach is better by the least that matters, or nothing is left', () => {
    const better = times(43, { pain: 3, reach: 'calf' })
    expect(openDays(history(better, { baseline: { pain: 6, reach: 'calf' } }), 'plateau')).toEqual([])
    expect(openDays(history(better, { baseline: { pain: 3, reach: 'foot' } }), 'plateau')).toEqual([])
    expect(openDays(history(times(43, { pain: 0, reach: 'none' })), 'plateau')).toEqual([])
  })

  it("is silent for 14 days after the coach's decision", () => {
    const decisions = [{ day: day(44), ladder: null, decision: 'hold' as const }]
    expect(openDays(history(times(62), { decisions }), 'plateau')).toEqual([43, ...span(59, 62)])
  })
})

describe('a plateau broken by a few better days', () => {
  const better = { reach: 'back' } as const

  it('is the same episode again when it comes back within two weeks, a new one after that', () => {
    const soon = history([...times(44), ...times(5, better), ...times(8)], { start: day(1) })
    expect(openDays(soon, 'plateau')).toEqual([...span(43, 47), ...span(53, 57)])
    expect(flagOn(soon, 57, 'plateau')?.day).toBe(day(43))
    const late = history([...times(44), ...times(14, better), ...times(8)], { start: day(1) })
    expect(flagOn(late, 66, 'plateau')?.day).toBe(day(62))
  })
})
