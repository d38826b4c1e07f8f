import { describe, expect, it } from 'vitest'
import { assessed, dayN, type Paper, played } from './paper.ts'

type Case = readonly [
  what: string,
  paper: Paper,
  last: number,
  about: readonly string[],
  events: readonly string[],
  proposals: readonly string[],
]

const planned = (...days: Paper['days']): Paper => ({ columns: 'sessions,planned', days })

const cases: readonly Case[] = [
  ['half of the sessions on four days', planned([4, '1,2']), 4, [], ['4 adherence note'], []],
  ['three days are too few', planned([3, '0,2']), 3, [], [], []],
  ['60 % exactly is not under it', planned('2,2', [4, '1,2']), 5, [], [], []],
  [
    'a day off is no answered day here',
    planned('1,2', '1,2', '0,0', '1,2', '1,2'),
    5,
    [],
    ['5 adherence note'],
    [],
  ],
  ['nor a day without sessions', planned('1,2', '1,2', ',2', '1,2', '1,2'), 5, [], ['5 adherence note'], []],
  [
    'a day without reply is unknown, not zero',
    planned([3, '2,2'], '-', '-', '-', '1,2'),
    7,
    ['quiet'],
    ['6 quiet note', '7 quiet over'],
    [],
  ],
  [
    'three silent days, ended by a reply',
    { days: [[3, '2,back,3'], '-', '-', '-', '-', '2,back,3'] },
    8,
    [],
    ['6 quiet note', '8 quiet over'],
    [],
  ],
  ['two silent days', { days: ['2,back,3', '-', '-', '2,back,3'] }, 4, [], [], []],
  [
    '"none" of the signs is a reply',
    { columns: 'pain,signs', days: ['3,', '-', '-', ',none', '-', '3,'] },
    6,
    [],
    [],
    [],
  ],
  [
    'a plateau of 42 days shows on the day after them',
    { days: [[45, '2,thigh,5']] },
    45,
    [],
    ['43 plateau note'],
    ['43 refer'],
  ],
  [
    'six weeks count from the start of the plan',
    { facts: ['start: 2026-03-12'], days: [[55, '2,thigh,5']] },
    55,
    [],
    ['53 plateau note'],
    ['53 refer'],
  ],
  [
    '19 answered days in the six weeks',
    { days: [[19, '2,thigh,5'], ...Array(11).fill(['-', '-']).flat(), '-', [5, '2,thigh,5']] },
    46,
    [],
    ['22 quiet note', '43 quiet over'],
    [],
  ],
  [
    'and 20',
    { days: [[19, '2,thigh,5'], '2,thigh,5', ...Array(11).fill(['-', '-']).flat(), [5, '2,thigh,5']] },
    47,
    [],
    ['23 quiet note', '43 quiet over', '46 plateau note'],
    ['46 refer'],
  ],
  [
    'two points better, and 40 %',
    { facts: ['baseline: thigh 5'], days: [[45, '2,thigh,3']] },
    45,
    [],
    [],
    [],
  ],
  [
    'two points of ten are no 30 %',
    { facts: ['baseline: thigh 10'], days: [[45, '2,thigh,8']] },
    45,
    [],
    ['2 pain-severe hold', '43 plateau note'],
    ['2 hold', '43 refer'],
  ],
  [
    'a zone nearer',
    { facts: ['baseline: calf 5'], days: [[45, '2,knee,5']] },
    45,
    ['meaningful'],
    ['4 meaningful note'],
    [],
  ],
  [
    '2 points and 33 %',
    { facts: ['baseline: calf 6'], days: [[4, '2,calf,4']] },
    4,
    ['meaningful'],
    ['4 meaningful note'],
    [],
  ],
  ['2 points and 25 %', { facts: ['baseline: calf 8'], days: [[5, '2,calf,6']] }, 5, ['meaningful'], [], []],
  ['30 % but 1 point', { facts: ['baseline: calf 2'], days: [[5, '2,calf,1']] }, 5, ['meaningful'], [], []],
]

const signs = (...days: Paper['days']): Paper => ({ columns: 'pain,signs,cleared,noted', days })
const calm: readonly [number, string] = [3, '3,none,,']
const signCases: readonly Case[] = [
  [
    'an emergency until a clinician has cleared it',
    signs('3,none,,', '3,bladder-change,,', '3,none,,', '3,none,bladder-change,', '3,none,,'),
    5,
    [],
    ['2 sign emergency', '4 sign over'],
    ['2 stop', '4 none'],
  ],
  [
    'noted does not end it, nor does silence',
    signs('3,saddle-numbness,,', '3,none,,saddle-numbness', '-', '-', '-', '3,,,'),
    6,
    [],
    ['1 sign emergency'],
    ['1 stop'],
  ],
  ['same-day', signs('3,calf-swelling,,'), 1, [], ['1 sign same-day'], ['1 stop']],
  [
    'soon: a hold, and refer once older than 7 days',
    signs('3,night-pain,,', [9, '3,none,,']),
    10,
    [],
    ['1 sign hold'],
    ['1 hold', '9 refer'],
  ],
  [
    'soon and noted',
    signs('3,night-pain,,', calm, '3,none,,night-pain', calm),
    8,
    [],
    ['1 sign hold', '5 sign over'],
    ['1 hold', '5 none'],
  ],
  [
    'two soon signs 14 days apart are same-day',
    signs('3,night-pain,,', [13, '3,none,,'], '3,weight-loss,,'),
    15,
    [],
    ['1 sign hold', '15 sign same-day'],
    ['1 hold', '9 refer', '15 stop'],
  ],
  [
    '15 days apart they are not',
    signs('3,night-pain,,', [14, '3,none,,'], '3,weight-loss,,'),
    16,
    [],
    ['1 sign hold', '16 sign hold'],
    ['1 hold', '9 refer'],
  ],
  [
    'a first one that the coach has noted still makes a pair',
    signs('3,night-pain,,', '3,none,,night-pain', '3,weight-loss,,'),
    3,
    [],
    ['1 sign hold', '2 sign over', '3 sign same-day'],
    ['1 hold', '2 none', '3 stop'],
  ],
  [
    'one that a clinician has cleared does not',
    signs('3,night-pain,,', '3,none,night-pain,', '3,weight-loss,,'),
    3,
    [],
    ['1 sign hold', '2 sign over', '3 sign hold'],
    ['1 hold', '2 none', '3 hold'],
  ],
  [
    'the same sign twice is no pair',
    signs('3,night-pain,,', '3,night-pain,,', '3,night-pain,,'),
    3,
    [],
    ['1 sign hold'],
    ['1 hold'],
  ],
  [
    'known and unchanged trouble is noted, not flagged; another sign is',
    { ...signs('3,bladder-change,,', '3,bladder-change;new-numbness,,'), facts: ['known: bladder-change'] },
    2,
    [],
    ['2 sign same-day'],
    ['2 stop'],
  ],
  [
    'cleared and said again',
    signs('3,leg-weakness,,', '3,none,leg-weakness,', '3,leg-weakness,,'),
    3,
    [],
    ['1 sign emergency', '2 sign over', '3 sign emergency'],
    ['1 stop', '2 none', '3 stop'],
  ],
  [
    'no quiet while a sign is open',
    signs('3,bladder-change,,', '-', '-', '-', '-', '-', '3,none,,'),
    7,
    [],
    ['1 sign emergency'],
    ['1 stop'],
  ],
]

describe('states on paper', () => {
  it.each(cases)('%s', (_, paper, last, about, events, proposals) => {
    const found = played(paper, last, about)
    expect([...found.events].sort()).toEqual([...events].sort())
    expect(found.proposals).toEqual(proposals)
  })
})

describe('signs on paper', () => {
  it.each(signCases)('%s', (_, paper, last, about, events, proposals) => {
    const found = played(paper, last, about)
    expect(found.events).toEqual(events)
    expect(found.proposals).toEqual(proposals)
  })

  it('a sign from longer ago than any rule looks back is still open', () => {
    const paper = signs('3,bowel-change,,', [120, '3,none,,'])
    const { proposal, flags } = assessed(paper, 121)
    expect(proposal).toBe('stop')
    expect(flags[0]).toMatchObject({ rule: 'sign', day: dayN(1) })
  })
})

describe('figures on paper', () => {
  it('adherence with its interval: 4 of 8 is 21.5 to 78.5', () => {
    const { adherence } = assessed(planned([4, '1,2']), 4)
    expect(adherence).toMatchObject({ done: 4, planned: 8, percent: 50, replies: 4, days: 4 })
    expect(adherence.low).toBeCloseTo(21.5, 1)
    expect(adherence.high).toBeCloseTo(78.5, 1)
  })

  it('direction needs ten recorded reaches', () => {
    const paper: Paper = { days: [[10, '2,calf,3']] }
    expect(assessed(paper, 9).direction).toBe('unclear')
    expect(assessed(paper, 10).direction).toBe('steady')
  })

  it('a first day further than the week before is no centralising any more', () => {
    const paper: Paper = { days: [[7, '2,calf,3'], [10, '2,thigh,3'], '2,knee,3'] }
    expect(assessed(paper, 17).direction).toBe('centralising')
    expect(assessed(paper, 18).direction).toBe('steady')
  })

  it('the path is the median zone of each week back from the day', () => {
    const paper: Paper = {
      days: [
        [7, '2,calf,6'],
        [7, '2,knee,5'],
        [7, '2,thigh,4'],
      ],
    }
    const { reach, pain } = assessed(paper, 21)
    expect(reach).toMatchObject({ path: ['calf', 'knee', 'thigh'], median7: 3, baseline: 5, change: -2 })
    expect(pain).toMatchObject({ median7: 4, medianBaseline: 6, change: -2, meaningful: true, n: 21 })
    expect(pain.percent).toBeCloseTo(-33.3, 1)
  })

  it('before the first row there is nothing, and nothing is claimed', () => {
    const before = assessed({ days: [[20, '2,calf,8']] }, 0)
    expect(before).toMatchObject({ direction: 'unclear', flags: [], proposal: 'none' })
    expect(before.pain).toMatchObject({ median7: null, percent: null, meaningful: null, n: 0 })
    expect(before.adherence).toMatchObject({ percent: null, replies: 0, days: 0 })
  })
})
