import { describe, expect, it } from 'vitest'
import { type WeeksLog, weeksOf } from '../../../src/domain/digest/weeks.ts'
import type { History } from '../../../src/domain/rules/assessment.ts'
import { checkIn, diary } from './diary.ts'

const START = '2026-03-02'
const LOG: WeeksLog = {
  ref: 'heron',
  direction: 'steady',
  baseline: { reach: 'calf', pain: 6 },
  flags: [],
  rungChanges: [],
}
const MONTH = diary(START, Array(28).fill('2c5').join(' '))

describe('the weeks of the picture', () => {
  it('are whole weeks that end on the day, as many as the plan is old, at most six', () => {
    const span = (history: History, on: string) => weeksOf(history, LOG, on).first
    expect(span(MONTH, '2026-03-08')).toBe('2026-03-02')
    expect(span(MONTH, '2026-03-09')).toBe('2026-02-24')
    expect(span(MONTH, '2026-03-29')).toBe('2026-03-02')
    expect(span(diary('2026-01-01', '2c5'), '2026-03-29')).toBe('2026-02-16')
    expect(weeksOf(MONTH, LOG, '2026-03-29', 2).days).toHaveLength(14)
  })

  it('keep no reply, not answered, none done, a day off and a day before the plan apart', () => {
    const { days } = weeksOf(diary(START, '2c5 - ??4 0c4 off0c3 2c3~'), LOG, '2026-03-07')
    expect(days.map(({ state }) => state)).toEqual([
      'before',
      'answered',
      'no-reply',
      'answered',
      'answered',
      'answered',
      'answered',
    ])
    expect(days[2]).toMatchObject({ sessions: null, planned: null, pain: null, reach: null })
    expect(days[3]).toMatchObject({ sessions: null, planned: 2, reach: null, pain: 4 })
    expect(days[4]).toMatchObject({ sessions: 0, planned: 2 })
    expect(days[5]).toMatchObject({ sessions: 0, planned: 0 })
    expect(days.map(({ filledLater }) => filledLater)).toEqual([
      false,
      false,
      false,
      false,
      false,
      false,
      true,
    ])
  })

  it('survive JSON', () => {
    const weeks = weeksOf(MONTH, LOG, '2026-03-29')
    expect(JSON.parse(JSON.stringify(weeks))).toEqual(weeks)
  })
})

describe('marks', () => {
  const on = '2026-03-29'
  it('show an advance once, though coach and plan both wrote it down', () => {
    const history: History = {
      ...MONTH,
      decisions: [
        { day: '2026-03-10', ladder: 'extension', decision: 'advance' },
        { day: '2026-03-12', ladder: null, decision: 'hold' },
      ],
    }
    const rungChanges = [
      { day: START, ladder: 'extension', from: 0, to: 1, why: 'plan' },
      { day: '2026-03-11', ladder: 'extension', from: 1, to: 2, why: 'advance' },
    ] as const
    expect(weeksOf(history, { ...LOG, rungChanges }, on).marks).toEqual([
      {
        kind: 'rungs',
        day: '2026-03-11',
        why: 'advance',
        ladders: [{ ladder: 'extension', from: 1, to: 2 }],
      },
      { kind: 'decision', day: '2026-03-12', decision: 'hold', ladder: null },
    ])
  })

  it('show a sign where it opens and where it ends, not on each day it is said', () => {
    const days = MONTH.days.map((day) => {
      if (day.day === '2026-03-16') return { ...day, cleared: ['bladder-change' as const] }
      if (day.day !== '2026-03-12' && day.day !== '2026-03-13') return day
      return { ...day, checkIn: checkIn(day.day, { pain: 5, signs: ['bladder-change'], denied: null }) }
    })
    expect(weeksOf({ ...MONTH, days }, LOG, on).marks).toEqual([
      { kind: 'sign', day: '2026-03-12', sign: 'bladder-change', care: 'emergency' },
      { kind: 'signs-ended', day: '2026-03-16', signs: ['bladder-change'], how: 'cleared' },
    ])
    expect(weeksOf({ ...MONTH, days, known: ['bladder-change'] }, LOG, on).marks).toEqual([])
  })

  it('show a sign that was said and cleared on one day', () => {
    const days = MONTH.days.map((day) =>
      day.day === '2026-03-12'
        ? {
            ...day,
            checkIn: checkIn(day.day, { pain: 5, signs: ['leg-weakness'], denied: null }),
            cleared: ['leg-weakness' as const],
          }
        : day,
    )
    expect(weeksOf({ ...MONTH, days }, LOG, on).marks.map(({ kind }) => kind)).toEqual([
      'sign',
      'signs-ended',
    ])
  })

  it('are nine at most, the weightier and later ones, and say how many are left out', () => {
    const note = (n: number) => ({ rule: 'gate', level: 'note', day: `2026-03-0${n}`, figures: {} }) as const
    const alarm = { rule: 'reach-spread', level: 'ease-back', day: '2026-03-02', figures: {} } as const
    const flags = [...[2, 3, 4, 5, 6, 7, 8, 9].map(note), note(9), note(9), alarm]
    const { marks, marksLeftOut } = weeksOf(MONTH, { ...LOG, flags }, on)
    expect(marks).toHaveLength(9)
    expect(marksLeftOut).toBe(2)
    expect(marks[0]).toMatchObject({ rule: 'reach-spread' })
    expect(marks.map(({ day }) => day)).toEqual(marks.map(({ day }) => day).toSorted())
  })
})
