import type { CheckIn } from '../checkin.ts'
import { addDays, type Day, daysBetween } from '../day.ts'
import { type Reach, rank, reachAt } from '../reach.ts'
import { sessionCount } from '../rules/adherence.ts'
import { median } from '../trend/median.ts'
import type { WeekRow } from './facts.ts'

const WEEK = 7

/** Every week of the plan from its first day to `on`; `answers` are the answered check-ins, in any order. */
export function weekRows(answers: readonly CheckIn[], begun: Day, on: Day): WeekRow[] {
  const weeks = Math.floor(Math.max(0, daysBetween(begun, on)) / WEEK) + 1
  return Array.from({ length: weeks }, (_, n) => weekRow(answers, addDays(begun, n * WEEK), on))
}

function weekRow(answers: readonly CheckIn[], first: Day, on: Day): WeekRow {
  const after = addDays(first, WEEK)
  const week = answers.filter(({ day }) => day >= first && day < after && day <= on)
  const ranks = week.flatMap(({ reach }) => (reach === null ? [] : [rank(reach)]))
  const pains = week.flatMap(({ pain }) => (pain === null ? [] : [pain]))
  const { done, planned } = sessionCount(week)
  return {
    first,
    reach: zone(median(ranks)),
    farthest: ranks.length === 0 ? null : reachAt(Math.max(...ranks)),
    pain: median(pains),
    worst: pains.length === 0 ? null : Math.max(...pains),
    sessions: { done, planned },
    replies: {
      answered: week.length,
      days: Math.min(WEEK, daysBetween(first, on) + 1),
      later: week.filter(({ filled, day }) => filled > day).length,
    },
  }
}

/** A rank, or half of two, as a zone: the farther one where it lies between. */
export const zone = (value: number | null): Reach | null => (value === null ? null : reachAt(value))
