import { addDays, type Day } from '../../src/domain/day.ts'
import { type Weeks, type WeeksLog, weeksOf } from '../../src/domain/digest/weeks.ts'
import type { RungChange } from '../../src/domain/ladder/plan.ts'
import type { Figures, History, RuleId } from '../../src/domain/rules/assessment.ts'
import type { SignId } from '../../src/domain/signs/catalogue.ts'
import { diary } from '../domain/digest/diary.ts'

const START = '2026-02-16'
const day = (n: number): Day => addDays(START, n - 1)
const log = (ref: string, given: Partial<WeeksLog> = {}): WeeksLog => ({
  ref,
  direction: 'steady',
  baseline: { reach: 'calf', pain: 6 },
  flags: [],
  rungChanges: [],
  ...given,
})
const flag = (
  rule: RuleId,
  n: number,
  level: WeeksLog['flags'][number]['level'] = 'note',
  figures: Figures = {},
) => ({
  rule,
  level,
  day: day(n),
  figures,
})
const rung = (n: number, ladder: string, from: number, to: number, why: RungChange['why']): RungChange => ({
  day: day(n),
  ladder,
  from,
  to,
  why,
})

function withSigns(history: History, signs: Readonly<Record<Day, SignId>>, cleared: Day | null): History {
  const days = history.days.map((entry) => {
    const sign = signs[entry.day]
    const checkIn = sign && entry.checkIn ? { ...entry.checkIn, signs: [sign], denied: null } : entry.checkIn
    return { ...entry, checkIn, cleared: entry.day === cleared ? Object.values(signs) : [] }
  })
  return { ...history, days }
}

const IMPROVING = `2c6 2c7 1f6 2c5 - 2c6 2c5  2c6 2c5 - - 2k5 2c4 2k5  2k4 2k5 1k4~ 2t4 - 2t3 2t4
  2t3 2t4 2u3 0t5 2t3 2u3 -`
const SIX = `2c6 1c7 2c6 0f8 2c6 - 2c5  2c6 2c6 2k5 2k6 - - 2k5  2k4 2k5 2c6 1c7 1c6 2k5 2k4
  2t4 2t4 - 2t3 2t4 2k4 2t3  2t3 2u3 2u2 2u3~ 2u2~ 2t3 2u2  2b2 2b1 2u2 - 2b1 2b1 2n0`

const improving = weeksOf(
  diary(START, IMPROVING),
  log('heron', {
    direction: 'centralising',
    flags: [
      flag('gate', 19),
      flag('meaningful', 24, 'note', { painFrom: 6, painTo: 4, reachFrom: 5, reachTo: 3 }),
    ],
    rungChanges: [rung(1, 'extension', 0, 1, 'plan'), rung(20, 'extension', 1, 2, 'advance')],
  }),
  day(28),
)

const sparse = weeksOf(
  diary(START, '2c5 - - - - ?t4 - - - - - - 1?3 - - - - - - - -'),
  log('dipper', { direction: 'unclear', flags: [flag('quiet', 5), flag('quiet', 16)] }),
  day(21),
)

const firstWeek = weeksOf(
  diary(day(3), '2c6 1c6 2c5 - 2c6'),
  log('wren', { direction: 'unclear', flags: [flag('below-knee', 4, 'hold')] }),
  day(7),
)

const URGENT = `2k4 2k4 2k3 2k4 2t4 2t3 2t3  2t4 2k3 2t4 2t3 2k4 2t4 2t3  2t4 2t4 2k5 2c6 1f8 0f9 0f9
  - 0c7 0c6 - 0k5 0k5 -`
const urgent = weeksOf(
  withSigns(diary(START, URGENT), { [day(19)]: 'new-numbness', [day(20)]: 'leg-weakness' }, day(26)),
  log('curlew', {
    direction: 'peripheralising',
    flags: [
      flag('below-knee', 18, 'hold'),
      flag('reach-spread', 19, 'ease-back'),
      flag('pain-up', 19, 'hold'),
      flag('pain-severe', 20, 'hold'),
      flag('sign', 19, 'same-day'),
    ],
    rungChanges: [
      rung(19, 'extension', 2, 1, 'ease-back'),
      rung(26, 'extension', 2, 1, 'clearance'),
      rung(26, 'glide', 2, 1, 'clearance'),
    ],
  }),
  day(28),
)

const OFF = `2t4 2t4 1t5 2t4 off0t4 2t3 off0t3  2t4 2k4 2t4 1t3 off0t4 2t3 off-`
const daysOff = weeksOf(
  diary(START, `${OFF.replace('off-', '-')} 2t3 2u3 3u3 2t4 off1u3 2u2 off0u2 2u3 0u2 2u2 2u3 off0u2 2b2 -`),
  log('plover', { direction: 'centralising', baseline: { reach: 'thigh', pain: 4 } }),
  day(28),
)

const painless = weeksOf(
  diary(START, '2n0 2n0 2n0 2b0 2n0 - 2n0 2n0 2n0 2n0 2n0 2n0 2n0 2n0'),
  log('siskin', { baseline: { reach: 'none', pain: 0 } }),
  day(14),
)

const six = weeksOf(
  {
    ...diary(START, SIX),
    decisions: [
      { day: day(7), ladder: null, decision: 'hold' },
      { day: day(41), ladder: null, decision: 'refer' },
    ],
  },
  log('grey-wagtail', {
    direction: 'centralising',
    flags: [
      flag('adherence', 9),
      flag('pain-up', 18, 'hold'),
      flag('gate', 15),
      flag('meaningful', 29, 'note', { reachFrom: 5, reachTo: 3 }),
      flag('trend-reach', 30, 'note', { word: 'improving' }),
      flag('trend-pain', 30, 'note', { word: 'improving' }),
    ],
    rungChanges: [
      rung(16, 'extension', 1, 2, 'advance'),
      rung(18, 'extension', 2, 1, 'ease-back'),
      rung(26, 'extension', 1, 2, 'advance'),
      rung(31, 'glide', 1, 2, 'advance'),
      rung(39, 'extension', 2, 3, 'advance'),
    ],
  }),
  day(42),
)

const oddName = weeksOf(
  diary(START, '2c10 2c10 2c10 2c10 2c10 2c10 2c10'),
  log('<b>&"\'wren\u202e\u0007]]> of the very long name that goes on and on beyond any card', {
    flags: [1, 2, 3, 4, 5, 6, 7].map((n) => flag('flare', n, 'hold')),
  }),
  day(7),
)

const blank = weeksOf(
  diary(START, '- - - - - - -'),
  log('teal', { baseline: { reach: null, pain: null } }),
  day(7),
)

export const CASES: Readonly<Record<string, Weeks>> = {
  improving,
  sparse,
  firstWeek,
  urgent,
  daysOff,
  painless,
  six,
  oddName,
  blank,
}
