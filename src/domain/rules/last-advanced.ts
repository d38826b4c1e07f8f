import type { Day } from '../day.ts'
import type { LadderId } from '../ladder/plan.ts'
import { daysOf, type View } from './view.ts'

/** The latest rise of a rung that the days show; null where none does. */
function latestRise(view: View): { ladder: LadderId; day: Day } | null {
  const known = daysOf(view).filter((day) => day.rungs !== undefined)
  for (let n = known.length - 1; n > 0; n -= 1) {
    const now = known[n]!.rungs!
    const before = known[n - 1]!.rungs!
    const risen = Object.keys(now).find((id) => id in before && now[id]! > before[id]!)
    if (risen !== undefined) return { ladder: risen, day: known[n]!.day }
  }
  return null
}

/** The ladder last advanced, by the coach's decisions or by the rungs of the days; null where nothing was. */
export function lastAdvancedLadder(view: View): LadderId | null {
  const rise = latestRise(view)
  const decided = view.history.decisions.findLast(
    (d) => d.decision === 'advance' && d.ladder !== null && d.day <= view.on,
  )
  if (decided === undefined) return rise?.ladder ?? null
  return rise !== null && rise.day > decided.day ? rise.ladder : decided.ladder
}
