import type { CheckIn } from '../../../src/domain/checkin.ts'
import { addDays, type Day } from '../../../src/domain/day.ts'
import { weeksOf } from '../../../src/domain/digest/weeks.ts'
import { DEFAULT_GATE } from '../../../src/domain/ladder/plan.ts'
import { REACHES } from '../../../src/domain/reach.ts'
import type { SignRow } from '../../../src/domain/report/facts.ts'
import { type Course, reportFacts } from '../../../src/domain/report/report.ts'
import { assess } from '../../../src/domain/rules/assess.ts'
import type { History, HistoryDay } from '../../../src/domain/rules/assessment.ts'

export const START = '2026-03-02'
export const day = (n: number): Day => addDays(START, n - 1)

const checkIn = (n: number, given: Partial<CheckIn> = {}): CheckIn => ({
  day: day(n),
  sessions: 2,
  planned: 2,
  reach: REACHES[Math.max(1, 5 - Math.floor(n / 20))]!,
  pain: Math.max(1, 6 - Math.floor(n / 16) + (n % 3 === 0 ? 1 : 0)),
  side: null,
  signs: [],
  denied: n % 2 === 0 ? 'all' : null,
  filled: n % 9 === 0 ? day(n + 1) : day(n),
  late: false,
  comfort: null,
  settled: null,
  ...given,
})

/** A history of so many days, every eighth without a reply. */
export function history(days: number, change: (n: number) => Partial<CheckIn> = () => ({})): History {
  const rows = Array.from({ length: days }, (_, at): HistoryDay => {
    const n = at + 1
    return { day: day(n), checkIn: n % 8 === 0 ? null : checkIn(n, change(n)), cleared: [], noted: [] }
  })
  return {
    side: 'left',
    baseline: { reach: 'calf', pain: 6 },
    start: START,
    known: [],
    days: rows,
    decisions: [],
    gate: DEFAULT_GATE,
  }
}

export const sign = (given: Partial<SignRow> = {}): SignRow => ({
  sign: 'bladder-change',
  care: 'emergency',
  day: day(30),
  words: 'it is hard to start to pee since this morning',
  state: 'cleared',
  ended: day(32),
  by: 'emergency physician, 2026-04-01',
  ...given,
})

/** A course of so many days, with what is given in place of the ordinary. */
export function course(days: number, given: Partial<Course> = {}): Course {
  const past = given.history ?? history(days)
  const on = day(days)
  const log = { ref: given.ref ?? 'heron', direction: 'centralising', flags: [], rungChanges: [] } as const
  return {
    ref: 'heron',
    standing: 'active',
    side: 'left',
    made: on,
    history: past,
    assessment: assess(past, on),
    told: {
      age: 41,
      onset: '2026-02-10',
      earlier: 'episode',
      seen: 'yes',
      eases: 'extension',
      risks: ['anticoagulants'],
      known: [],
      lift: 'deadlift',
    },
    signs: [sign()],
    activitiesFirst: { rowing: 7, sitting: 5 },
    activities: [{ day: day(15), scores: { rowing: 4, sitting: 5 } }],
    decisions: [
      { kind: 'decision', day: day(10), decision: 'advance', ladder: 'extension', reason: 'gate met' },
      { kind: 'decision', day: day(40), decision: 'hold', ladder: null, reason: '' },
    ],
    rungChanges: [
      { day: START, ladder: 'extension', from: 0, to: 1, why: 'plan' },
      { day: day(11), ladder: 'extension', from: 1, to: 2, why: 'advance' },
      { day: day(32), ladder: 'extension', from: 2, to: 1, why: 'clearance' },
      { day: day(32), ladder: 'glide', from: 2, to: 1, why: 'clearance' },
    ],
    stops: [{ kind: 'stop', day: day(30), why: 'lock', until: day(32), by: null }],
    rungs: [
      { ladder: 'extension', rung: 2, last: 3, resting: false },
      { ladder: 'glide', rung: 1, last: 2, resting: true },
    ],
    picture: weeksOf(past, { ...log, baseline: past.baseline! }, on, 14),
    ...given,
  }
}

const WORDS = 'hostile <b>&amp;</b> \u202eright to left\u202c 日本語 😀 and on '.repeat(10).slice(0, 400)

/** As much as may ever stand in a report, none of it well-behaved. */
export const hostile = reportFacts(
  course(98, {
    ref: `<script>alert("x")</script>${'ŵ'.repeat(200)}`,
    told: {
      age: 101,
      onset: WORDS,
      earlier: WORDS,
      seen: WORDS,
      eases: WORDS,
      risks: [
        'cancer',
        'osteoporosis',
        'long-steroids',
        'immune',
        'pregnancy',
        'recent-fall',
        'x'.repeat(400),
      ],
      known: ['bladder-change', 'bowel-change', 'both-legs', 'leg-weakness', 'new-numbness', 'night-pain'],
      lift: 'x'.repeat(400),
    },
    signs: Array.from({ length: 12 }, (_, n) =>
      sign({
        day: day(n * 7 + 1),
        words: n % 2 === 0 ? WORDS : 'y'.repeat(400),
        by: `<@${'1'.repeat(18)}> ${WORDS}`,
      }),
    ),
    activitiesFirst: { [WORDS]: 10, ['z'.repeat(400)]: 9, rowing: 8 },
    decisions: Array.from({ length: 60 }, (_, n) => ({
      kind: 'decision' as const,
      day: day(n + 1),
      decision: 'ease-back' as const,
      ladder: n % 3 === 0 ? 'q'.repeat(300) : 'extend-hip',
      reason: WORDS,
    })),
    rungs: Array.from({ length: 12 }, (_, n) => ({
      ladder: `own-${n}-${'w'.repeat(50)}`,
      rung: n,
      last: null,
      resting: true,
    })),
  }),
)
