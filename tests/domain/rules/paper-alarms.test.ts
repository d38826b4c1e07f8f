import { describe, expect, it } from 'vitest'
import { assessed, type Paper, played } from './paper.ts'

/** Each diary with what was worked out on paper from the rules in words, before it was run. */
const cases: readonly (readonly [string, Paper, number, readonly string[], readonly string[]])[] = [
  [
    'thigh to calf: below the knee at once, the sum (1.5, then 3) and the second day below a day later',
    {
      days: [
        [20, '2,thigh,3'],
        [2, '2,calf,3'],
      ],
    },
    22,
    ['21 below-knee hold', '22 reach-spread ease-back', '22 regain hold'],
    ['21 hold', '22 ease-back'],
  ],
  [
    'calf to foot: the sum alone, 0.5 a day, over 1.5 on the fourth',
    {
      days: [
        [20, '2,calf,3'],
        [5, '2,foot,3'],
      ],
    },
    25,
    ['24 reach-spread ease-back'],
    ['24 ease-back'],
  ],
  [
    'thigh to knee is not below the knee',
    {
      days: [
        [20, '2,thigh,3'],
        [4, '2,knee,3'],
      ],
    },
    24,
    ['24 reach-spread ease-back'],
    ['24 ease-back'],
  ],
  ['half a zone up and down', { days: Array(15).fill(['2,thigh,3', '2,buttock,3']).flat() }, 30, [], []],
  [
    'a jump by three zones is seen in one reply',
    { days: [[20, '2,thigh,3'], '2,foot,3'] },
    21,
    ['21 reach-spread ease-back', '21 below-knee hold'],
    ['21 ease-back'],
  ],
  [
    'five values are no usual level',
    { days: [[5, '2,thigh,3'], '-', '-', '2,,3', '2,,3', '2,foot,3'] },
    10,
    [],
    [],
  ],
  [
    'six values are one',
    { days: [[6, '2,thigh,3'], '-', '-', '2,,3', '2,,3', '2,foot,3'] },
    11,
    ['11 reach-spread ease-back', '11 below-knee hold'],
    ['11 ease-back'],
  ],
  [
    'over on the seventh answered day without it',
    {
      days: [
        [20, '2,thigh,3'],
        [4, '2,knee,3'],
        [8, '2,thigh,3'],
      ],
    },
    32,
    ['24 reach-spread ease-back', '31 reach-spread over'],
    ['24 ease-back', '31 none'],
  ],
  [
    'days without reply do not close it',
    { days: [[20, '2,thigh,3'], [4, '2,knee,3'], '2,thigh,3', '-', '-', [6, '2,thigh,3']] },
    33,
    ['24 reach-spread ease-back', '33 reach-spread over'],
    ['24 ease-back', '33 none'],
  ],
  [
    'a reply without reach is no quiet day of the reach',
    { days: [[20, '2,thigh,3'], [4, '2,knee,3'], '2,,3', [7, '2,thigh,3']] },
    32,
    ['24 reach-spread ease-back', '32 reach-spread over'],
    ['24 ease-back', '32 none'],
  ],
  [
    'a second alarm within the episode is no news and keeps it open; after its end it may fire again',
    {
      days: [
        [20, '2,thigh,3'],
        [4, '2,knee,3'],
        [3, '2,thigh,3'],
        '2,calf,3',
        '2,calf,3',
        [7, '2,thigh,3'],
        '2,foot,3',
      ],
    },
    37,
    [
      '24 reach-spread ease-back',
      '28 below-knee hold',
      '29 regain hold',
      '36 below-knee over',
      '36 reach-spread over',
      '36 regain over',
      '37 reach-spread ease-back',
      '37 regain hold',
    ],
    ['24 ease-back', '36 none', '37 ease-back'],
  ],
  [
    'pain by two points: one a day, over 3.25 on the fourth',
    {
      days: [
        [20, '2,back,3'],
        [4, '2,back,5'],
      ],
    },
    24,
    ['24 pain-up hold'],
    ['24 hold'],
  ],
  [
    'pain by one point is within the allowance',
    {
      days: [
        [20, '2,back,3'],
        [20, '2,back,4'],
      ],
    },
    40,
    [],
    [],
  ],
  [
    'nine values are no usual pain',
    {
      days: [
        [9, '2,back,2'],
        [5, '2,back,'],
        [3, '2,back,7'],
      ],
    },
    17,
    [],
    [],
  ],
  [
    'ten values are',
    { days: [[10, '2,back,2'], [4, '2,back,'], '2,back,7'] },
    15,
    ['15 pain-up hold'],
    ['15 hold'],
  ],
  [
    'pain 8 twice in a row; a day without reply lies between',
    { days: ['2,back,8', '-', '2,back,8'] },
    3,
    ['3 pain-severe hold'],
    ['3 hold'],
  ],
  ['pain 8, 7, 8', { days: ['2,back,8', '2,back,7', '2,back,8'] }, 3, [], []],
  [
    'a check-in without pain between two 8s does not calm them',
    { days: ['2,back,8', '2,back,', '2,back,9'] },
    3,
    ['3 pain-severe hold'],
    ['3 hold'],
  ],
  [
    'below the knee after exactly 14 days above',
    { days: [[3, '2,calf,3'], [14, '2,thigh,3'], '2,calf,3', '2,calf,3'] },
    19,
    ['18 below-knee hold', '19 regain hold', '19 reach-spread ease-back'],
    ['18 hold', '19 ease-back'],
  ],
  [
    'and after 13 (the usual level then is 48 of 14)',
    { days: [[3, '2,calf,3'], [13, '2,thigh,3'], '2,calf,3', '2,thigh,3', '2,calf,3'] },
    19,
    ['17 below-knee hold'],
    ['17 hold'],
  ],
  [
    '14 days above with 6 answers are too few',
    {
      days: [
        '2,calf,3',
        ...[
          '2,knee,3',
          '-',
          '-',
          '2,knee,3',
          '-',
          '-',
          '2,knee,3',
          '2,knee,3',
          '-',
          '-',
          '2,knee,3',
          '-',
          '-',
          '2,knee,3',
        ],
        '2,calf,3',
        '2,calf,3',
      ],
    },
    17,
    [],
    [],
  ],
  [
    'with 7 they are enough',
    {
      days: [
        '2,calf,3',
        ...[
          '2,knee,3',
          '-',
          '-',
          '2,knee,3',
          '-',
          '-',
          '2,knee,3',
          '2,knee,3',
          '-',
          '-',
          '2,knee,3',
          '2,knee,3',
          '-',
          '2,knee,3',
        ],
        '2,calf,3',
        '2,calf,3',
      ],
    },
    17,
    ['17 regain hold'],
    ['17 hold'],
  ],
]

const flare = (day21: string, day22: string, day23 = '2,back,3,'): Paper => ({
  columns: 'sessions,reach,pain,settled',
  days: [[20, '2,back,3,'], day21, day22, day23],
})
const flares: readonly (readonly [string, Paper, readonly string[]])[] = [
  ['not settled', flare('2,back,6,', '2,back,3,no'), ['22 flare hold']],
  ['two over the usual level and 5 are just enough', flare('1,back,5,', '2,back,3,no'), ['22 flare hold']],
  ['settled', flare('2,back,6,', '2,back,3,yes'), []],
  ['not asked, not answered', flare('2,back,6,', '2,back,3,'), []],
  ['without sessions', flare('0,back,6,', '2,back,3,no'), []],
  ['pain 4', flare('2,back,4,', '2,back,3,no'), []],
  [
    'the answer of the day after next is about another day',
    flare('2,back,6,', '2,back,3,', '2,back,3,no'),
    [],
  ],
  ['the answer alone, without anything else that day', flare('2,back,6,', ',,,no'), ['22 flare hold']],
]

describe('alarms on paper', () => {
  it.each(cases)('%s', (_, paper, last, events, proposals) => {
    const found = played(paper, last)
    expect([...found.events].sort()).toEqual([...events].sort())
    expect(found.proposals).toEqual(proposals)
  })

  it.each(flares)('flare: %s', (_, paper, events) => {
    expect(played(paper, 23).events).toEqual(events)
  })

  const drawingIn: Paper = {
    days: [[10, '2,calf,3'], [10, '2,thigh,3'], '2,thigh,7', '2,thigh,5', [2, '2,thigh,6']],
  }
  it('a small rise of pain while the reach draws in is a note that says why', () => {
    const { events, proposals } = played(drawingIn, 22)
    expect(events).toEqual(['22 pain-up note'])
    expect(proposals).toEqual([])
    expect(assessed(drawingIn, 22).direction).toBe('centralising')
  })
  it('and a hold once the weekly median is two points up, in the same episode', () => {
    expect(played(drawingIn, 24).proposals).toEqual(['24 hold'])
    expect(assessed(drawingIn, 24).flags.find(({ rule }) => rule === 'pain-up')).toMatchObject({
      level: 'hold',
      day: '2026-03-23',
    })
  })
  it('the same rise of pain with the reach where it was is a hold', () => {
    const staying: Paper = { days: [[20, '2,thigh,3'], '2,thigh,7', '2,thigh,5'] }
    expect(played(staying, 22).events).toEqual(['22 pain-up hold'])
  })
})
