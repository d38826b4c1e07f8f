import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, daysFrom } from '../../../src/domain/day.ts'
import { readCsv } from '../../../src/domain/history-csv/csv.ts'
import { type Diary, UnreadableDiary } from '../../../src/domain/history-csv/diary.ts'
import { historyKnownOn, readDiary, spanOf } from '../../../src/domain/history-csv/history.ts'
import { assess } from '../../../src/domain/rules/assess.ts'
import { replay } from '../../../src/domain/rules/replay.ts'

const HEAD = 'date,sessions,planned,reach,pain,signs,note'
const csv = (...lines: string[]): Diary => readDiary([HEAD, ...lines].join('\n'))
const history = (diary: Diary) => historyKnownOn(diary)(spanOf(diary)!.last)
const what = (diary: Diary) => diary.problems.map((p) => [p.line, p.what])

describe('the CSV reader (RFC 4180)', () => {
  const cells = (text: string) =>
    readCsv(text).map((r) => (r.kind === 'row' ? [r.line, ...r.cells] : [r.line, '#', r.text]))

  it('takes quotes, doubled quotes, line breaks inside them, CR LF, a byte-order mark, blank and comment lines', () => {
    expect(cells('\uFEFFa,b\r\n"x, ""y""", z \r\n\r\n# side: left\r\n"1\n2",3\n4,')).toEqual([
      [1, 'a', 'b'],
      [2, 'x, "y"', 'z'],
      [4, '#', 'side: left'],
      [5, '1\n2', '3'],
      [7, '4', ''],
    ])
  })

  it('does not let a quote that is never closed swallow the days after it', () => {
    expect(cells('a,b\n1,"open\n2,x')).toEqual([
      [1, 'a', 'b'],
      [2, '1', '"open'],
      [3, '2', 'x'],
    ])
  })
})

describe('a diary from CSV', () => {
  it('reads facts, columns in any order, empty cells and rows without trailing cells', () => {
    const text = `# Side: Left\n# baseline: 6 calf\n# start: 2026-03-01\n# known: bladder-change\n# just a remark\n
pain,date,reach,signs,planned,sessions,rungs,comfort,cleared\n4,2026-03-02,Calf,none,2,1,extension:2;glide:1,yes,\n,2026-03-03`
    const diary = readDiary(text)
    expect(diary).toMatchObject({
      side: 'left',
      baseline: { reach: 'calf', pain: 6 },
      start: '2026-03-01',
      known: ['bladder-change'],
      problems: [],
    })
    expect(history(diary).days).toMatchObject([
      {
        checkIn: { pain: 4, reach: 'calf', sessions: 1, denied: 'all', comfort: true },
        rungs: { extension: 2, glide: 1 },
      },
      { checkIn: null },
    ])
  })

  it('tells signs not said from signs denied', () => {
    const { days } = history(
      csv('2026-03-02,2,2,calf,4,,', '2026-03-03,2,2,calf,4,none,', '2026-03-04,,,,,night-pain;weight-loss,'),
    )
    expect(days.map((d) => d.checkIn?.denied)).toEqual([null, 'all', null])
    expect(days[2]?.checkIn?.signs).toEqual(['night-pain', 'weight-loss'])
  })

  it('names what cannot be right with its line, and reads the rest', () => {
    const diary = csv(
      '2026-02-30,2,2,calf,4,,',
      '2026-03-02,5,2,calf,4,,',
      '2026-03-03,2,2,shin,4,,',
      '2026-03-04,2,2,calf,4.5,,',
      '2026-03-05,2,2,calf,4,toothache,',
      '2026-03-06,2,2,calf,4,,felt good, but tired',
    )
    expect(what(diary)).toEqual([
      [2, 'date'],
      [3, 'sessions'],
      [4, 'reach'],
      [5, 'pain'],
      [6, 'signs'],
    ])
    expect(history(diary).days.map((d) => d.day)).toEqual(['2026-03-06'])
    const wide = readDiary('note,date,pain\nx,2026-03-02,3,4')
    expect(what(wide)).toEqual([[2, 'cells']])
  })

  it('keeps the signs of a row that cannot be right', () => {
    const diary = csv('2026-03-02,2,2,calf,12,bladder-change,', '2026-03-03,2,2,calf,3,none;fever-unwell,')
    expect(diary.problems).toHaveLength(2)
    expect(assess(history(diary), '2026-03-03').openSigns.map((s) => s.sign)).toEqual([
      'bladder-change',
      'fever-unwell',
    ])
    expect(csv('soon,,,,,leg-weakness,').problems[0]).toMatchObject({ lostSigns: ['leg-weakness'] })
  })

  it('takes rows out of order; a later row corrects what it gives, and never takes back a sign', () => {
    const diary = csv(
      '2026-03-03,2,2,calf,4,chest-breath,',
      '2026-03-02,2,2,calf,4,,',
      '2026-03-03,,2,knee,3,none,',
    )
    const { days } = history(diary)
    expect(days.map((d) => d.day)).toEqual(['2026-03-02', '2026-03-03'])
    expect(days[1]?.checkIn).toMatchObject({ sessions: 2, reach: 'knee', pain: 3, signs: ['chest-breath'] })
  })

  it('refuses what is no diary', () => {
    const why = (text: string) => {
      try {
        readDiary(text)
        return null
      } catch (error) {
        return error instanceof UnreadableDiary ? error.why : error
      }
    }
    expect(why('')).toBe('empty')
    expect(why('2026-03-02,2,2,calf,4')).toBe('no-header')
    expect(why('date;reach;pain\n2026-03-02;calf;4')).toBe('not-commas')
    expect(why('reach\tdate\n')).toBe('not-commas')
    expect(why('date,pain,pain\n')).toBe('twice-in-header')
    expect(why('{"days": [')).toBe('not-json')
    expect(why('[]')).toBe('no-days')
  })
})

describe('a diary from JSON', () => {
  it('says the same as the CSV', () => {
    const json = JSON.stringify({
      side: 'left',
      baseline: { reach: 'calf', pain: 6 },
      known: ['bladder-change'],
      days: [
        {
          date: '2026-03-02',
          sessions: 2,
          planned: 2,
          reach: 'calf',
          pain: 4,
          signs: ['none'],
          rungs: { extension: 1 },
          comfort: true,
        },
        { date: '2026-03-03', pain: 11, signs: 'night-pain' },
      ],
    })
    const diary = readDiary(json)
    expect(diary).toMatchObject({
      side: 'left',
      baseline: { reach: 'calf', pain: 6 },
      known: ['bladder-change'],
    })
    expect(what(diary)).toEqual([[2, 'pain']])
    expect(history(diary).days).toMatchObject([
      { checkIn: { denied: 'all', comfort: true, pain: 4 }, rungs: { extension: 1 } },
      { checkIn: { signs: ['night-pain'], pain: null } },
    ])
  })
})

describe('rows filled in later', () => {
  const head = 'date,sessions,planned,reach,pain,signs,filled\n'

  it('are late from the second date after, and not known before they were written', () => {
    const diary = readDiary(
      `${head}2026-03-02,2,2,calf,4,,2026-03-03\n2026-03-03,2,2,calf,4,bowel-change,2026-03-05\n2026-03-06,2,2,calf,4,,`,
    )
    expect(history(diary).days.map((d) => d.checkIn?.late)).toEqual([false, true, false])
    const known = historyKnownOn(diary)
    expect(assess(known('2026-03-04'), '2026-03-04').proposal).toBe('none')
    expect(assess(known('2026-03-05'), '2026-03-05').proposal).toBe('stop')
  })

  it('count on the last date where they were written after it', () => {
    const diary = readDiary(`${head}2026-03-02,2,2,calf,4,,2026-03-09`)
    expect(assess(history(diary), '2026-03-02').adherence.replies).toBe(1)
  })

  it('change nothing by the order in which they stand, and replay on a day says what assess says on it', () => {
    const first = '2026-03-02'
    const row = fc.record({
      pain: fc.integer({ min: 0, max: 10 }),
      reach: fc.constantFrom('back', 'thigh', 'calf'),
      later: fc.constantFrom(0, 0, 0, 1, 3),
    })
    const rows = fc
      .array(row, { minLength: 1, maxLength: 30 })
      .map((list) =>
        list.map(
          ({ pain, reach, later }, n) =>
            `${addDays(first, n)},1,2,${reach},${pain},,${addDays(first, n + later)}`,
        ),
      )
    fc.assert(
      fc.property(rows, fc.infiniteStream(fc.nat()), (list, keys) => {
        const shuffled = list
          .map((line) => ({ line, key: keys.next().value }))
          .sort((a, b) => a.key - b.key)
          .map(({ line }) => line)
        const [one, two] = [list, shuffled].map((lines) => readDiary(head + lines.join('\n')))
        const { first: from, last } = spanOf(one!)!
        expect(assess(history(two!), last)).toEqual(assess(history(one!), last))
        const known = historyKnownOn(one!)
        const replayed = [...replay(known, from, last)]
        expect(replayed.map((d) => d.day)).toEqual(daysFrom(from, last))
        const open = new Set<string>()
        for (const { day, raised, closed, proposal } of replayed) {
          for (const rule of closed) open.delete(rule)
          for (const flag of raised) open.add(flag.rule)
          const now = assess(known(day), day)
          expect([...open].sort()).toEqual([...new Set(now.flags.map((flag) => flag.rule))].sort())
          expect(proposal).toBe(now.proposal)
        }
      }),
      { numRuns: 60 },
    )
  })
})
