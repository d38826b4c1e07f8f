import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays } from '../../../src/domain/day.ts'
import { dayWork } from '../../../src/domain/ladder/day-work.ts'
import { REACHES, reachAt } from '../../../src/domain/reach.ts'
import { assess } from '../../../src/domain/rules/assess.ts'
import { type History, LEVELS, RULE_IDS } from '../../../src/domain/rules/assessment.ts'
import { ALARM_RULES } from '../../../src/domain/rules/table.ts'
import { SIGN_IDS } from '../../../src/domain/signs/catalogue.ts'
import { day, type Entry, history } from './build.ts'

const RUNS = { numRuns: 150 }
const nullable = <T>(values: fc.Arbitrary<T>) => fc.option(values, { freq: 6 })
const sign = fc.constantFrom(...SIGN_IDS)
const few = <T>(values: fc.Arbitrary<T>) =>
  fc.oneof(
    { weight: 12, arbitrary: fc.constant([] as T[]) },
    { weight: 1, arbitrary: fc.array(values, { maxLength: 2 }) },
  )

const entry: fc.Arbitrary<Entry> = fc.record({
  sessions: nullable(fc.integer({ min: 0, max: 4 })),
  planned: fc.constantFrom(0, 2, 2, 2),
  reach: nullable(fc.constantFrom(...REACHES)),
  pain: nullable(fc.integer({ min: 0, max: 10 })),
  signs: few(sign),
  cleared: few(sign),
  noted: few(sign),
  comfort: fc.constantFrom(null, true, false),
  settled: fc.constantFrom(null, true, false),
  late: fc.constantFrom(false, false, false, true),
  rungs: fc.constantFrom({ extension: 1, glide: 1 }, { extension: 2, glide: 1 }),
})
const entries = fc.array(nullable(entry), { minLength: 1, maxLength: 75 })
/** Calm diaries, in which alarms and gates mostly come from the last days. */
const calmEntry = entry.map(
  (e): Entry => ({ ...e, signs: [], pain: (e.pain ?? 0) % 4, reach: reachAt(2 + ((e.pain ?? 0) % 2)) }),
)

/** The same history so many days later. */
const shifted = (h: History, by: number): History => ({
  ...h,
  days: h.days.map((d) => ({
    ...d,
    day: addDays(d.day, by),
    checkIn: d.checkIn && {
      ...d.checkIn,
      day: addDays(d.checkIn.day, by),
      filled: addDays(d.checkIn.filled, by),
    },
  })),
})
const shiftedText = (value: unknown, by: number): unknown =>
  JSON.parse(JSON.stringify(value), (_, v) => (/^\d{4}-\d\d-\d\d$/.test(v) ? addDays(v, by) : v))

const alarmLevel = (h: History, n: number): number =>
  Math.max(
    -1,
    ...assess(h, day(n))
      .flags.filter((flag) => ALARM_RULES.some((rule) => rule.id === flag.rule))
      .map((flag) => LEVELS.indexOf(flag.level)),
  )

describe('laws of the rules', () => {
  it('shifting all dates shifts all results', () => {
    fc.assert(
      fc.property(entries, fc.integer({ min: -800, max: 800 }), (list, by) => {
        const n = list.length
        expect(assess(shifted(history(list), by), day(n + by))).toEqual(
          shiftedText(assess(history(list), day(n)), by),
        )
      }),
      RUNS,
    )
  })

  it('days after the day asked about do not change what is said of it', () => {
    fc.assert(
      fc.property(entries, entries, (list, after) => {
        const n = list.length
        expect(assess(history([...list, ...after]), day(n))).toEqual(assess(history(list), day(n)))
      }),
      RUNS,
    )
  })

  it('days more than 60 days back change nothing but open signs and baseline', () => {
    fc.assert(
      fc.property(entries, fc.array(nullable(entry), { minLength: 60, maxLength: 60 }), (old, list) => {
        const calm = old.map((e) => e && { ...e, signs: [] })
        const on = day(old.length + 60)
        const given = { baseline: { reach: 'calf', pain: 6 } as const, start: day(1 + old.length) }
        const long = history([...calm, ...list], given)
        const short = { ...long, days: long.days.slice(old.length) }
        // a state may have begun before what is looked at, so its first day may differ, its being open may not
        const seen = (h: History) => {
          const { flags, ...rest } = assess(h, on)
          return { ...rest, rules: flags.map((flag) => [flag.rule, flag.level]) }
        }
        expect(seen(long)).toEqual(seen(short))
      }),
      RUNS,
    )
  })

  it('a day replaced by one better in every field never raises the level of the alarms on that day', () => {
    fc.assert(
      fc.property(
        fc.array(nullable(calmEntry), { minLength: 12, maxLength: 45 }),
        entry,
        entry,
        (list, a, b) => {
          const pain = [a.pain ?? 0, b.pain ?? 0].sort((x, y) => x - y)
          const reach = [REACHES.indexOf(a.reach ?? 'none'), REACHES.indexOf(b.reach ?? 'none')].sort(
            (x, y) => x - y,
          )
          const sessions = [a.sessions ?? 0, b.sessions ?? 0].sort((x, y) => x - y)
          const at = (n: 0 | 1): Entry => ({
            ...a,
            signs: [],
            pain: pain[n]!,
            reach: reachAt(reach[n]!),
            sessions: sessions[1 - n]!,
          })
          const n = list.length + 1
          const [better, worse] = [history([...list, at(0)]), history([...list, at(1)])]
          expect(alarmLevel(better, n)).toBeLessThanOrEqual(alarmLevel(worse, n))
        },
      ),
      { numRuns: 400 },
    )
  })

  it('missing days never count as good: they close no alarm and add no sessions', () => {
    fc.assert(
      fc.property(entries, fc.integer({ min: 1, max: 6 }), (list, gap) => {
        const n = list.length
        const before = assess(history(list), day(n))
        const after = assess(history([...list, ...Array(gap).fill(null)]), day(n + gap))
        const alarms = before.flags.filter(({ rule }) => ALARM_RULES.some(({ id }) => id === rule))
        const kept = after.flags.map((flag) => flag.rule)
        // an alarm whose days leave the 60 looked at is the one exception
        for (const { rule, day: first } of alarms)
          if (first > addDays(day(n), -40)) expect(kept).toContain(rule)
        expect(after.adherence.done).toBeLessThanOrEqual(before.adherence.done)
        expect(after.adherence.planned).toBeLessThanOrEqual(before.adherence.planned)
      }),
      RUNS,
    )
  })

  it('left and right are mirror images', () => {
    const other = { left: 'right', right: 'left', both: 'both' } as const
    const sided = fc.array(fc.tuple(entry, fc.constantFrom(null, 'left', 'right', 'both')), {
      minLength: 1,
      maxLength: 30,
    })
    fc.assert(
      fc.property(sided, fc.constantFrom(null, 'left', 'right', 'both'), (list, side) => {
        const one = history(
          list.map(([e, s]) => ({ ...e, side: s })),
          { side },
        )
        const mirrored = list.map(([e, s]) => ({ ...e, side: s && other[s] }))
        const two = history(mirrored, { side: side && other[side] })
        expect(assess(two, day(list.length))).toEqual(assess(one, day(list.length)))
      }),
      RUNS,
    )
  })

  it('an open urgent sign always gives stop and no exercise', () => {
    fc.assert(
      fc.property(entries, sign, entries, (list, id, after) => {
        const rest = after.map((e) => e && { ...e, cleared: [] })
        const h = history([...list, { signs: [id] }, ...rest])
        const now = assess(h, day(h.days.length))
        const locked = now.openSigns.some((s) => s.care === 'same-day' || s.care === 'emergency')
        expect(now.proposal === 'stop').toBe(locked)
        if (!locked) return
        expect(now).toMatchObject({ askComfort: false, askSettled: false, ladder: null })
        expect(dayWork({ rungs: { extension: 1 }, resting: [] }, locked)).toEqual([])
      }),
      RUNS,
    )
  })

  it('never throws, names only known rules, and gives every alarm a first day within the diary', () => {
    fc.assert(
      fc.property(entries, fc.integer({ min: -5, max: 140 }), (list, n) => {
        const now = assess(history(list), day(n))
        for (const flag of now.flags) {
          expect(RULE_IDS).toContain(flag.rule)
          expect(flag.day <= day(n)).toBe(true)
        }
        expect(now.reasons.length === 0).toBe(now.proposal === 'none')
      }),
      RUNS,
    )
  })
})
