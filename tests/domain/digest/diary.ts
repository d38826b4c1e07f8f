import type { CheckIn } from '../../../src/domain/checkin.ts'
import { addDays, type Day } from '../../../src/domain/day.ts'
import type { Reach } from '../../../src/domain/reach.ts'
import type { Assessment, History, HistoryDay } from '../../../src/domain/rules/assessment.ts'

const GATE = { checkIns: 5, days: 5, share: 0.8, painAtMost: 5, apart: 2 }

/** A check-in of 2 planned sessions, all else not answered. */
export const checkIn = (day: Day, given: Partial<CheckIn> = {}): CheckIn => ({
  day,
  sessions: null,
  planned: 2,
  reach: null,
  pain: null,
  side: null,
  signs: [],
  denied: 'all',
  filled: day,
  late: false,
  comfort: null,
  settled: null,
  ...given,
})

const SHORT: Readonly<Record<string, Reach>> = {
  n: 'none',
  b: 'back',
  u: 'buttock',
  t: 'thigh',
  k: 'knee',
  c: 'calf',
  f: 'foot',
}

/**
 * A diary from one word a day, as in "2c6": sessions, reach (n b u t k c f), pain, each or `?` where not answered;
 * "-" is no reply, "off" before a word a day off, "~" after it filled in two days later.
 */
export function diary(start: Day, words: string, more: Partial<History> = {}): History {
  const days = words
    .trim()
    .split(/\s+/)
    .map((word, n): HistoryDay => {
      const day = addDays(start, n)
      return { day, checkIn: word === '-' ? null : read(day, word), cleared: [], noted: [] }
    })
  return { side: 'left', baseline: null, start, known: [], days, decisions: [], gate: GATE, ...more }
}

function read(day: Day, word: string): CheckIn {
  const off = word.startsWith('off')
  const [sessions, reach, pain] = word
    .replace('off', '')
    .match(/^([\d?])([nbutkcf?])(10|[\d?])/)!
    .slice(1)
  const number = (text: string | undefined): number | null => (text === '?' ? null : Number(text))
  return checkIn(day, {
    sessions: number(sessions),
    planned: off ? 0 : 2,
    reach: reach === '?' ? null : SHORT[reach!]!,
    pain: number(pain),
    filled: word.endsWith('~') ? addDays(day, 2) : day,
  })
}

/** An assessment in which nothing fires. */
export const assessment = (on: Day, given: Partial<Assessment> = {}): Assessment => ({
  on,
  direction: 'unclear',
  pain: {
    median7: null,
    medianBaseline: null,
    change: null,
    percent: null,
    meaningful: null,
    slopePerWeek: null,
    ci: null,
    p: null,
    n: 0,
  },
  reach: { median7: null, baseline: null, change: null, slopePerWeek: null, p: null, path: [] },
  adherence: { done: 0, planned: 0, percent: null, low: null, high: null, replies: 0, days: 7 },
  flags: [],
  proposal: 'none',
  reasons: [],
  ladder: null,
  askComfort: false,
  comfortOf: null,
  askSettled: false,
  openSigns: [],
  ...given,
})
