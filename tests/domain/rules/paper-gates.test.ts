import { describe, expect, it } from 'vitest'
import { assessed, type Paper, played } from './paper.ts'

const COLUMNS = 'sessions,planned,reach,pain,rungs,comfort,filled'
const on = (rungs: string, pain = 3, reach = 'calf', comfort = ''): string =>
  `2,2,${reach},${pain},${rungs},${comfort},`
const E1 = 'extension:1'
const paper = (...days: Paper['days']): Paper => ({ columns: COLUMNS, days })

type Case = readonly [what: string, paper: Paper, last: number, proposals: readonly string[]]
const cases: readonly Case[] = [
  ['five good check-ins and comfortable', paper([4, on(E1)], on(E1, 3, 'calf', 'yes')), 5, ['5 advance']],
  ['not asked', paper([5, on(E1)]), 5, []],
  ['not comfortable', paper([4, on(E1)], on(E1, 3, 'calf', 'no')), 5, []],
  [
    'comfortable once, then no longer',
    paper([4, on(E1)], on(E1, 3, 'calf', 'yes'), on(E1, 3, 'calf', 'no')),
    6,
    ['5 advance', '6 none'],
  ],
  [
    'four check-ins over seven days',
    paper([2, on(E1)], '-', '-', '-', on(E1), on(E1, 3, 'calf', 'yes')),
    7,
    [],
  ],
  ['without rungs', paper([4, on('')], on('', 3, 'calf', 'yes')), 5, []],
  ['pain 6 on one of the days', paper([2, on(E1)], on(E1, 6), on(E1), on(E1, 3, 'calf', 'yes')), 5, []],
  [
    'pain 5 is still allowed',
    paper([2, on(E1)], on(E1, 5), on(E1), on(E1, 3, 'calf', 'yes')),
    5,
    ['5 advance'],
  ],
  [
    'a day further than at the start, among the last three',
    paper([2, on(E1)], on(E1, 3, 'foot'), on(E1), on(E1, 3, 'calf', 'yes')),
    5,
    [],
  ],
  [
    'and before them',
    paper(on(E1), on(E1, 3, 'foot'), on(E1), on(E1), on(E1, 3, 'calf', 'yes')),
    5,
    ['5 advance'],
  ],
  [
    'eight of ten sessions are enough',
    paper([3, on(E1)], `1,2,calf,3,${E1},,`, `1,2,calf,3,${E1},yes,`),
    5,
    ['5 advance'],
  ],
  ['seven are not', paper([2, on(E1)], [2, `1,2,calf,3,${E1},,`], `1,2,calf,3,${E1},yes,`), 5, []],
  [
    'a row filled in two days later does not count',
    paper(on(E1), `2,2,calf,3,${E1},,{4}`, on(E1), on(E1), on(E1, 3, 'calf', 'yes'), on(E1)),
    6,
    ['6 advance'],
  ],
  [
    'one filled in the next day does',
    paper(on(E1), `2,2,calf,3,${E1},,{3}`, on(E1), on(E1), on(E1, 3, 'calf', 'yes')),
    5,
    ['5 advance'],
  ],
  [
    'nothing above a note may be open',
    paper(on(E1, 8), on(E1, 8), [6, on(E1)], on(E1, 3, 'calf', 'yes')),
    9,
    ['2 hold', '9 advance'],
  ],
  [
    'nor a soon sign',
    { columns: `${COLUMNS},signs`, days: [[4, `${on(E1)},`], `${on(E1, 3, 'calf', 'yes')},night-pain`] },
    5,
    ['5 hold'],
  ],
  [
    'the lowest number first, and two days between advances',
    paper(
      [4, on('extension:1;glide:1')],
      on('extension:1;glide:1', 3, 'calf', 'yes'),
      on('extension:2;glide:1'),
      on('extension:2;glide:1', 3, 'calf', 'yes'),
      on('extension:2;glide:1'),
    ),
    8,
    ['5 advance', '6 none', '8 advance'],
  ],
  [
    'lift opens with seven days of reach back and pain 3, the others at their last',
    paper([8, on('extension:3;extend-hip:3;lift:0', 3, 'back')]),
    8,
    ['7 advance'],
  ],
  [
    'not with pain 4',
    paper(
      [6, on('extension:3;extend-hip:3;lift:0', 3, 'back')],
      on('extension:3;extend-hip:3;lift:0', 4, 'back'),
    ),
    7,
    [],
  ],
  [
    'not with reach buttock',
    paper(
      [6, on('extension:3;extend-hip:3;lift:0', 3, 'back')],
      on('extension:3;extend-hip:3;lift:0', 3, 'buttock'),
    ),
    7,
    [],
  ],
  ['not before the rungs', paper([9, on('extension:2;extend-hip:3;lift:0', 3, 'back')]), 9, []],
  [
    'a lift begun by the coach climbs no higher while its own conditions are not met',
    paper([8, on('lift:1', 3, 'thigh')], on('lift:1', 3, 'thigh', 'yes')),
    9,
    [],
  ],
]

describe('gates on paper', () => {
  it.each(cases)('%s', (_, diary, last, proposals) => {
    expect(played(diary, last).proposals).toEqual(proposals)
  })

  it('names the ladder whose turn it is', () => {
    const diary = paper([4, on('glide:1;extension:1')], on('glide:1;extension:1', 3, 'calf', 'yes'))
    expect(assessed(diary, 5)).toMatchObject({ proposal: 'advance', ladder: 'extension' })
  })
})
