import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/domain/day.ts'
import { exportCsv } from '../../../src/domain/export/csv.ts'
import { readCsv } from '../../../src/domain/history-csv/csv.ts'
import { COLUMNS } from '../../../src/domain/history-csv/diary.ts'
import { historyKnownOn, readDiary } from '../../../src/domain/history-csv/history.ts'
import { DEFAULT_GATE } from '../../../src/domain/ladder/plan.ts'
import { REACHES } from '../../../src/domain/reach.ts'
import { assess } from '../../../src/domain/rules/assess.ts'
import type { History, HistoryDay } from '../../../src/domain/rules/assessment.ts'
import { SIGN_IDS } from '../../../src/domain/signs/catalogue.ts'

const START = '2026-03-02'
const some = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null, freq: 6 })
const signs = fc.subarray([...SIGN_IDS], { maxLength: 2 })
const ladder = fc.constantFrom('extension', 'glide')

const checkIn = (day: string) =>
  fc
    .record({
      planned: fc.integer({ min: 0, max: 3 }),
      reach: some(fc.constantFrom(...REACHES)),
      pain: some(fc.integer({ min: 0, max: 10 })),
      signs: fc.oneof({ weight: 9, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: signs }),
      denied: fc.constantFrom('all' as const, null),
      comfort: fc.option(fc.boolean(), { nil: null }),
      settled: fc.option(fc.boolean(), { nil: null }),
      later: fc.constantFrom(0, 0, 0, 0, 1, 2),
      late: fc.boolean(),
      more: fc.integer({ min: 0, max: 2 }),
    })
    .map(({ later, late, more, ...rest }) => ({
      ...rest,
      day,
      sessions: more === 2 && rest.planned === 0 ? null : Math.min(rest.planned, more + 1),
      side: null,
      filled: addDays(day, later),
      late: later > 0 && late,
      denied: rest.signs.length > 0 ? null : rest.denied,
    }))

const day = (n: number): fc.Arbitrary<HistoryDay> => {
  const date = addDays(START, n)
  const nothing = fc.constant([])
  return fc.record({
    day: fc.constant(date),
    checkIn: some(checkIn(date)),
    rungs: fc.record({ extension: fc.integer({ min: 1, max: 3 }), glide: fc.constant(1) }),
    resting: fc.oneof({ weight: 6, arbitrary: nothing }, { weight: 1, arbitrary: fc.constant(['glide']) }),
    cleared: fc.oneof({ weight: 6, arbitrary: nothing }, { weight: 1, arbitrary: signs }),
    noted: nothing,
  })
}

const history: fc.Arbitrary<History> = fc.record({
  side: fc.constantFrom('left' as const, 'right' as const, null),
  baseline: fc.constantFrom({ reach: 'calf' as const, pain: 6 }, { reach: null, pain: 5 }, null),
  start: fc.constant(START),
  known: fc.subarray([...SIGN_IDS], { maxLength: 1 }),
  days: fc
    .integer({ min: 1, max: 40 })
    .chain((n) => fc.tuple(...Array.from({ length: n }, (_, at) => day(at)))),
  decisions: fc.array(
    fc.record({
      day: fc.integer({ min: 0, max: 40 }).map((n) => addDays(START, n)),
      ladder: fc.option(ladder, { nil: null }),
      decision: fc.constantFrom('advance' as const, 'hold' as const, 'ease-back' as const, 'refer' as const),
    }),
    { maxLength: 3 },
  ),
  gate: fc.constantFrom(DEFAULT_GATE, { ...DEFAULT_GATE, checkIns: 3, share: 0.5 }),
})

describe('the export as CSV', () => {
  it('assessed again, comes to what the live history comes to', () => {
    fc.assert(
      fc.property(history, (live) => {
        const on = live.days.at(-1)!.day
        const diary = readDiary(exportCsv(live, new Map([[on, '=SUM(A1), "quoted"\nsecond line']])))
        expect(diary.problems).toEqual([])
        expect(assess(historyKnownOn(diary)(on), on)).toEqual(assess(live, on))
      }),
      { numRuns: 300 },
    )
  })

  it('has the columns that assess reads, and keeps a spreadsheet from taking words for a formula', () => {
    const live: History = {
      side: 'left',
      baseline: { reach: 'calf', pain: 6 },
      start: START,
      known: ['bladder-change'],
      openBefore: [{ sign: 'night-pain', care: 'soon', day: '2026-03-01' }],
      days: [{ day: START, checkIn: null, cleared: ['night-pain'], noted: [] }],
      decisions: [{ day: START, ladder: null, decision: 'hold' }],
      gate: DEFAULT_GATE,
    }
    const text = exportCsv(live, new Map([[START, '=1+1, "so"']]))
    expect(text.split('\r\n')).toEqual([
      '# side: left',
      '# baseline: calf 6',
      '# start: 2026-03-02',
      '# known: bladder-change',
      `# decisions: 2026-03-02 hold`,
      '# gate: 5 5 0.8 5 2',
      '# late: none',
      COLUMNS.join(','),
      '2026-03-01,,0,,,night-pain,,,,,,,',
      `2026-03-02,,,,,,"'=1+1, ""so""",,,,,night-pain,`,
      '',
    ])
    expect(readCsv(text).filter(({ kind }) => kind === 'row')).toHaveLength(3)
  })

  it('names what cannot be right in the facts that an export adds', () => {
    const text =
      '# decisions: 2026-03-09 leap\n# resting: glide\n# gate: 5 5 2 5 2\n# late: soon\ndate\n2026-03-02'
    expect(readDiary(text).problems.map(({ line, what }) => [line, what])).toEqual([
      [1, 'decisions'],
      [2, 'resting'],
      [3, 'gate'],
      [4, 'late'],
    ])
  })
})
