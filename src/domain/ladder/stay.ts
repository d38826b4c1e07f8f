import { answered, type CheckIn } from '../checkin.ts'
import type { Day } from '../day.ts'
import type { HistoryDay } from '../rules/assessment.ts'
import type { LadderId } from './plan.ts'

/** An unbroken stay of a ladder on its present rung. */
export interface Stay {
  /** First known day of it. */
  readonly began: Day
  /** Answers of it given in time while the ladder was worked on, in order. */
  readonly answers: readonly CheckIn[]
}

/** Given in time, and the ladder was not at rest that day. */
const counts = ({ checkIn, resting }: HistoryDay, ladder: LadderId): boolean =>
  checkIn !== null && answered(checkIn) && !checkIn.late && !resting?.includes(ladder)

/** The answers of the days from one on that were given in time while the ladder was worked on, in order. */
export const timelyAnswers = (days: readonly HistoryDay[], ladder: LadderId, from: Day): CheckIn[] =>
  days.filter((day) => day.day >= from && counts(day, ladder)).map(({ checkIn }) => checkIn!)

/**
 * The stay on a rung up to the last of the days; null where the last known rung is another. A clearance begins a new
 * one, on the first rung too, which cannot go lower: what was done before the sign says nothing of the time after it.
 */
export function stayOn(days: readonly HistoryDay[], ladder: LadderId, rung: number): Stay | null {
  let began: Day | null = null
  const answers: CheckIn[] = []
  /** Answers up to the first day so far on which the rung is known; those before it may belong to another rung. */
  let sure = 0
  for (let n = days.length - 1; n >= 0; n -= 1) {
    const day = days[n]!
    if (day.rungs !== undefined && day.rungs[ladder] !== rung) break
    const cleared = day.cleared.length > 0
    if (counts(day, ladder) && !cleared) answers.push(day.checkIn!)
    if (day.rungs !== undefined) {
      began = day.day
      sure = answers.length
    }
    if (cleared) break
  }
  return began === null ? null : { began, answers: answers.slice(0, sure).reverse() }
}
