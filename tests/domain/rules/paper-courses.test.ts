import { describe, expect, it } from 'vitest'
import { daysBetween } from '../../../src/domain/day.ts'
import { historyKnownOn, readDiary } from '../../../src/domain/history-csv/history.ts'
import type { HistoryDecision } from '../../../src/domain/rules/assessment.ts'
import { replay } from '../../../src/domain/rules/replay.ts'
import { day, flagOn, history, openDays, span, times } from './build.ts'
import { assessed, dayN, type Paper, played } from './paper.ts'

type Case = readonly [
  what: string,
  paper: Paper,
  last: number,
  about: readonly string[],
  events: readonly string[],
  proposals: readonly string[],
]
const SETTLED = 'sessions,planned,reach,pain,settled'
const SIGNS = 'reach,pain,signs,cleared,noted'
const GATE = 'sessions,planned,reach,pain,rungs,comfort,filled'
const thighAndKnee = Array(10).fill(['2,thigh,3', '2,knee,3']).flat()
const step = (comfort = '', filled = '', planned = 2): string =>
  `${planned},${planned},calf,3,extension:1,${comfort},${filled}`
const calm = (filled = ''): string => `2,2,back,3,extension:3;extend-hip:3;lift:0,,${filled}`

/** Judged day by day on paper from the rules in words, before any of them was run. */
const cases: readonly Case[] = [
  [
    'sessions on a day off count for a flare as any others do',
    { columns: SETTLED, days: [[20, '2,2,back,3,'], '1,0,back,6,', '2,2,back,3,no'] },
    22,
    [],
    ['22 flare hold'],
    ['22 hold'],
  ],
  [
    'a flare holds until the seventh answered day without one; a day without pain is none of them',
    {
      columns: SETTLED,
      days: [[20, '2,2,back,3,'], '2,2,back,6,', '2,2,back,3,no', '2,2,back,,', [7, '2,2,back,3,']],
    },
    30,
    [],
    ['22 flare hold', '30 flare over'],
    ['22 hold', '30 none'],
  ],
  [
    'a usual level of 3.5 exactly is not below it; the second day adds up to 2',
    { days: [...thighAndKnee, '2,calf,3', '2,calf,3'] },
    22,
    [],
    ['22 reach-spread ease-back', '22 regain hold'],
    ['22 ease-back'],
  ],
  [
    'one thigh more and it is (3.43)',
    { days: [...thighAndKnee.slice(0, 17), '2,thigh,3', '2,thigh,3', '2,knee,3', '2,calf,3'] },
    21,
    [],
    ['21 below-knee hold'],
    ['21 hold'],
  ],
  [
    'days without reply leave the sum of the reach as it is: 0.5, 1, 1.45, 1.9',
    { days: [[20, '2,thigh,3'], '2,knee,3', '-', '-', '-', [3, '2,knee,3']] },
    27,
    [],
    ['24 quiet note', '25 quiet over', '27 reach-spread ease-back'],
    ['27 ease-back'],
  ],
  [
    'pain that creeps up a point a week: the sum on day 20, the word once three days of a first week are 21 days old',
    {
      days: [
        [7, '2,back,2'],
        [7, '2,back,3'],
        [7, '2,back,4'],
        [7, '2,back,5'],
      ],
    },
    24,
    ['trend-pain'],
    ['20 pain-up hold', '24 trend-pain note'],
    ['20 hold'],
  ],
  [
    'below the knee again 14 days after the first time',
    { days: [[20, '2,thigh,3'], '2,calf,3', [13, '2,thigh,3'], '2,calf,3'] },
    35,
    [],
    ['21 below-knee hold', '28 below-knee over', '35 below-knee hold', '35 regain hold'],
    ['21 hold', '28 none', '35 hold'],
  ],
  [
    'and a day later it is a first time again',
    { days: [[20, '2,thigh,3'], '2,calf,3', [14, '2,thigh,3'], '2,calf,3'] },
    36,
    [],
    ['21 below-knee hold', '28 below-knee over', '36 below-knee hold'],
    ['21 hold', '28 none', '36 hold'],
  ],
  [
    'what a sign covers comes to light when it is cleared',
    {
      columns: SIGNS,
      days: [[20, 'thigh,3,none,,'], 'foot,3,bladder-change,,', 'foot,3,none,bladder-change,'],
    },
    22,
    [],
    [
      '21 below-knee hold',
      '21 reach-spread ease-back',
      '21 sign emergency',
      '22 regain hold',
      '22 sign over',
    ],
    ['21 stop', '22 ease-back'],
  ],
  [
    'a pair of soon signs that became same-day is not ended by a note, only by a clinician',
    {
      columns: SIGNS,
      days: [
        'back,3,night-pain,,',
        'back,3,none,,',
        'back,3,weight-loss,,',
        'back,3,none,,night-pain;weight-loss',
        'back,3,none,night-pain;weight-loss,',
      ],
    },
    5,
    [],
    ['1 sign hold', '3 sign same-day', '5 sign over'],
    ['1 hold', '3 stop', '5 none'],
  ],
  [
    'three days filled in late leave five check-ins to the eighth day',
    { columns: GATE, days: [step(), [3, step('', '{6}')], step('yes'), [3, step()]] },
    8,
    ['gate'],
    ['4 quiet note', '5 quiet over', '8 gate note'],
    ['8 advance'],
  ],
  [
    'a gate closes over three silent days, and opens at the return',
    { columns: GATE, days: [[4, step()], step('yes'), '-', '-', '-', step()] },
    9,
    [],
    ['5 gate note', '8 gate over', '8 quiet note', '9 gate note', '9 quiet over'],
    ['5 advance', '8 none', '9 advance'],
  ],
  [
    'days off alone show no sessions, so no gate',
    { columns: GATE, days: [[6, step('', '', 0)], step('yes', '', 0)] },
    7,
    [],
    [],
    [],
  ],
  [
    'of the days before lift one filled in late is none: the eighth day opens it',
    { columns: GATE, days: [[3, calm()], calm('{6}'), [4, calm()]] },
    8,
    ['gate'],
    ['8 gate note'],
    ['8 advance'],
  ],
  [
    'an off week is no bad week, and the first trained days are too few to tell',
    { columns: 'sessions,planned', days: [[7, '0,0'], [3, '0,2'], '0,2'] },
    11,
    [],
    ['11 adherence note'],
    [],
  ],
  [
    'sessions beyond the plan make good for others of the week',
    {
      columns: 'sessions,planned',
      days: [
        [2, '0,2'],
        [2, '4,2'],
      ],
    },
    4,
    [],
    [],
    [],
  ],
  [
    'pain 0 and reach none from the start is no plateau',
    { facts: ['baseline: none 0'], days: [[50, '2,none,0']] },
    50,
    [],
    [],
    [],
  ],
  [
    'a plateau is off while four of the last seven days are better',
    {
      facts: ['baseline: thigh 5'],
      days: [
        [45, '2,thigh,5'],
        [4, '2,thigh,2'],
        [7, '2,thigh,5'],
      ],
    },
    56,
    [],
    ['43 plateau note', '49 plateau over', '53 plateau note'],
    ['43 refer', '49 none', '53 refer'],
  ],
]

describe('whole courses on paper', () => {
  it.each(cases)('%s', (_, paper, last, about, events, proposals) => {
    const found = played(paper, last, about)
    expect([...found.events].sort()).toEqual([...events].sort())
    expect(found.proposals).toEqual(proposals)
  })

  it('and is the same episode after it', () => {
    const paper: Paper = {
      facts: ['baseline: thigh 5'],
      days: [
        [45, '2,thigh,5'],
        [4, '2,thigh,2'],
        [7, '2,thigh,5'],
      ],
    }
    expect(assessed(paper, 56).flags.find(({ rule }) => rule === 'plateau')?.day).toBe(dayN(43))
  })

  it('silence is counted to the day: 3, 5, 14', () => {
    const paper: Paper = { days: [[3, '2,back,3']] }
    const silent = (n: number) => assessed(paper, n).flags.map(({ rule, figures }) => [rule, figures.days])
    expect([5, 6, 8, 17].map(silent)).toEqual([[], [['quiet', 3]], [['quiet', 5]], [['quiet', 14]]])
  })
})

describe('a day corrected', () => {
  const days = Array.from({ length: 20 }, (_, n) => `${dayN(n + 1)},2,thigh,3,`)
  const events = (...more: string[]) => {
    const known = historyKnownOn(readDiary(['date,sessions,reach,pain,filled', ...days, ...more].join('\n')))
    return [...replay(known, dayN(1), dayN(22))].flatMap(({ day: on, raised, closed, proposal }) => {
      const said = [...raised.map(({ rule }) => rule), ...closed.map((rule) => `${rule} over`)]
      return said.length === 0 ? [] : [`${daysBetween(dayN(1), on) + 1}: ${said.join(', ')}: ${proposal}`]
    })
  }

  it('within the day leaves no trace', () => {
    expect(events(`${dayN(21)},2,foot,3,`, `${dayN(21)},2,thigh,3,`, `${dayN(22)},2,thigh,3,`)).toEqual([])
  })

  it('on the next day takes the alarm back then, not before', () => {
    expect(
      events(`${dayN(21)},2,foot,3,`, `${dayN(21)},,thigh,,${dayN(22)}`, `${dayN(22)},2,thigh,3,`),
    ).toEqual(['21: reach-spread, below-knee: ease-back', '22: reach-spread over, below-knee over: none'])
  })

  it('the same row twice is one day', () => {
    expect(events(...days, `${dayN(21)},2,thigh,3,`, `${dayN(21)},2,thigh,3,`)).toEqual([])
  })
})

describe('what the coach has decided', () => {
  const decided = (
    n: number,
    decision: HistoryDecision['decision'],
    ladder: string | null,
  ): HistoryDecision => ({
    day: day(n),
    ladder,
    decision,
  })
  const met = times(14, { rungs: { extension: 1, glide: 1 }, comfort: true })

  it('against a gate silences it that day and for 4 days', () => {
    const left = history(met, { decisions: [decided(5, 'hold', 'extension')] })
    expect(openDays(left, 'gate')).toEqual(span(10, 14))
  })

  it('against the gate of another ladder does not', () => {
    const left = history(met, { decisions: [decided(5, 'hold', 'glide')] })
    expect(openDays(left, 'gate')).toEqual(span(5, 14))
  })

  it('on a plateau silences it that day and for 14 days, and it is then a new episode', () => {
    const flat = times(60, { reach: 'thigh', pain: 5 })
    const referred = history(flat, { decisions: [decided(44, 'refer', null)] })
    expect(openDays(referred, 'plateau')).toEqual([43, 59, 60])
    expect(flagOn(referred, 60, 'plateau')?.day).toBe(day(59))
  })

  it('an advance of any ladder keeps the next two days free of another', () => {
    const advanced = history(met, { decisions: [decided(6, 'advance', 'glide')] })
    expect(openDays(advanced, 'gate')).toEqual([5, ...span(8, 14)])
  })

  it('a resting ladder leaves the turn to the next one', () => {
    const rested = history(
      times(6, { rungs: { extension: 1, glide: 1 }, resting: ['extension'], comfort: true }),
    )
    expect(flagOn(rested, 6, 'gate')?.figures).toMatchObject({ ladder: 'glide', rung: 1 })
  })
})
