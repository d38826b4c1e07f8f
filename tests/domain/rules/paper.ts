import { addDays, daysBetween } from '../../../src/domain/day.ts'
import { historyKnownOn, readDiary } from '../../../src/domain/history-csv/history.ts'
import { assess } from '../../../src/domain/rules/assess.ts'
import type { Assessment } from '../../../src/domain/rules/assessment.ts'
import { replay } from '../../../src/domain/rules/replay.ts'

const FIRST = '2026-03-02'

/** A diary written as a coach would on paper: the columns after the date, then each day's cells; "-" is no reply. */
export interface Paper {
  readonly facts?: readonly string[]
  readonly columns?: string
  /** `[20, '2,thigh,3']` is the same twenty times. */
  readonly days: readonly (string | readonly [number, string])[]
}

/** Day 1 is 2026-03-02. */
export const dayN = (n: number): string => addDays(FIRST, n - 1)

function csvOf({ facts = [], columns = 'sessions,reach,pain', days }: Paper): string {
  const cells = days.flatMap((day) => (typeof day === 'string' ? [day] : Array(day[0]).fill(day[1])))
  // {n} in a cell is the date of day n
  const dated = (text: string): string => text.replace(/\{(\d+)\}/g, (_, n) => dayN(Number(n)))
  const rows = cells.flatMap((day, n) => (day === '-' ? [] : [`${dayN(n + 1)},${dated(day)}`]))
  return [...facts.map((fact) => `# ${fact}`), `date,${columns}`, ...rows].join('\n')
}

const known = (paper: Paper) => historyKnownOn(readDiary(csvOf(paper)))

/** Notes that come by the way in many of these diaries; a case that is about one names it. */
const BY_THE_WAY = ['trend-pain', 'trend-reach', 'meaningful']

/** What the replay up to day `last` raised and closed, as "rule 21" and "rule closed 28", and the proposals' changes. */
export function played(paper: Paper, last: number, about: readonly string[] = []) {
  const told = (rule: string): boolean => !BY_THE_WAY.includes(rule) || about.includes(rule)
  const events: string[] = []
  const proposals: string[] = []
  for (const { day, raised, closed, proposal } of replay(known(paper), FIRST, dayN(last))) {
    const n = daysBetween(FIRST, day) + 1
    for (const { rule, level } of raised) if (told(rule)) events.push(`${n} ${rule} ${level}`)
    for (const rule of closed) if (told(rule)) events.push(`${n} ${rule} over`)
    if (proposal !== (proposals.at(-1)?.split(' ')[1] ?? 'none')) proposals.push(`${n} ${proposal}`)
  }
  return { events, proposals }
}

export const assessed = (paper: Paper, n: number): Assessment => assess(known(paper)(dayN(n)), dayN(n))
