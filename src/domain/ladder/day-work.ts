import { drillAt, LADDERS, type Ladder } from './ladders.ts'
import type { Plan } from './plan.ts'

/**
 * The drills of the day by ladder number, as in ["extension:1", "glide:1"]. Ladders at rest, not begun (rung 0)
 * or unknown are left out.
 * @param locked an emergency or same-day sign is open: then there is no drill at all
 */
export function dayWork(
  plan: Pick<Plan, 'rungs' | 'resting'>,
  locked: boolean,
  ladders: readonly Ladder[] = LADDERS,
): string[] {
  if (locked) return []
  return [...ladders]
    .sort((a, b) => a.number - b.number)
    .flatMap((ladder) => {
      const rung = plan.rungs[ladder.id]
      if (rung === undefined || plan.resting.includes(ladder.id)) return []
      // a rung beyond the last (a practice shortened its ladder) is its last
      return drillAt(ladder, Math.min(rung, ladder.rungs.length))?.id ?? []
    })
}
