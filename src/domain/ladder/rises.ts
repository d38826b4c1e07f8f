import type { Day } from '../day.ts'
import type { HistoryDay, HistoryDecision } from '../rules/assessment.ts'
import type { LadderId, Rungs } from './plan.ts'

/** A day on which the record shows a ladder a rung higher than on the known day before. */
export interface Rise {
  readonly ladder: LadderId
  readonly day: Day
}

const risen = (before: Rungs, now: Rungs): LadderId | undefined =>
  Object.keys(now).find((id) => id in before && now[id]! > before[id]!)

/** The rises that the days show, in order; one a day. */
export function risesOf(days: readonly HistoryDay[]): Rise[] {
  let before: Rungs | null = null
  const rises: Rise[] = []
  for (const { day, rungs } of days) {
    if (rungs === undefined) continue
    const ladder = before === null ? undefined : risen(before, rungs)
    if (ladder !== undefined) rises.push({ ladder, day })
    before = rungs
  }
  return rises
}

/** The coach's decision to advance; it always names its ladder. */
function advanceOf({ decision, ladder, day }: HistoryDecision): Rise | null {
  return decision === 'advance' && ladder !== null ? { ladder, day } : null
}

/** The latest advance up to a day, by the rises of the record or by the coach's decision; null where none was. */
export function lastAdvance(
  rises: readonly Rise[],
  decisions: readonly HistoryDecision[],
  on: Day,
): Rise | null {
  const rise = rises.findLast(({ day }) => day <= on) ?? null
  for (let n = decisions.length - 1; n >= 0; n -= 1) {
    const decided = advanceOf(decisions[n]!)
    if (decided === null || decided.day > on) continue
    return rise !== null && rise.day > decided.day ? rise : decided
  }
  return rise
}
