import type { CheckIn } from '../checkin.ts'
import type { Day } from '../day.ts'
import { rank } from '../reach.ts'
import { LADDERS, type Ladder, ladderOf, lastRung } from './ladders.ts'
import type { LadderId, RungChange, Rungs } from './plan.ts'

/** Rung 1 is the floor. */
const FLOOR = 1
/** The calm ladder: it eases back only where it was itself advanced last, and goes on when all others rest. */
const CALM: LadderId = 'settle'
/** Answered days after which an easing back is judged, and quiet ones after which a resting ladder comes back. */
export const EASE_BACK_ANSWERS = 3

/** One ladder going down a rung, or resting where it is at its first. */
export interface EaseBack {
  readonly ladder: LadderId
  readonly from: number
  readonly to: number
  readonly rests: boolean
}

/** The ladder that the latest advance moved up; null where nothing was advanced yet. */
export const lastAdvanced = (changes: readonly RungChange[]): LadderId | null =>
  changes.findLast((change) => change.why === 'advance')?.ladder ?? null

/**
 * Which ladder eases back: the one last advanced, else the one of the highest number in the plan, `settle` aside.
 * @param ladders a ladder that is not among them (a practice has taken it away) rests and cannot ease back
 * @param resting ladders at rest already: another is looked for among the rest
 * @returns null where the plan holds no ladder that could
 */
export function easeBack(
  rungs: Rungs,
  advanced: LadderId | null,
  ladders: readonly Ladder[] = LADDERS,
  resting: readonly LadderId[] = [],
): EaseBack | null {
  const inPlan = (id: LadderId): boolean =>
    (rungs[id] ?? 0) >= FLOOR && ladderOf(id, ladders) !== null && !resting.includes(id)
  const highest = Object.keys(rungs)
    .filter((id) => id !== CALM && inPlan(id))
    .sort((a, b) => (ladderOf(b, ladders)?.number ?? 0) - (ladderOf(a, ladders)?.number ?? 0))[0]
  const ladder = advanced !== null && inPlan(advanced) ? advanced : highest
  if (ladder === undefined) return null
  // a rung beyond the last (a practice shortened its ladder) counts as its last: it must ease like any other
  const from = Math.min(rungs[ladder]!, lastRung(ladderOf(ladder, ladders)!))
  return { ladder, from, to: Math.max(FLOOR, from - 1), rests: from <= FLOOR }
}

/**
 * True where easing back has not helped: on the third answered day after the alarm the reach is no nearer than
 * on the day of the alarm. False before that, or where the reach is not known (then nothing more is taken away).
 */
export function noNearer(checkIns: readonly CheckIn[], alarm: Day): boolean {
  const known = checkIns.filter((c) => c.reach !== null)
  const then = known.findLast((c) => c.day <= alarm)
  const third = known.filter((c) => c.day > alarm)[EASE_BACK_ANSWERS - 1]
  if (then === undefined || third === undefined) return false
  return rank(third.reach!) >= rank(then.reach!)
}

/** All ladders of the plan but `settle`: what rests when easing back one of them has not helped. */
export const restAll = (rungs: Rungs): LadderId[] => Object.keys(rungs).filter((id) => id !== CALM)

/** Every ladder a rung lower, for a return after 7 days or more and after a clearance. */
export const allLower = (rungs: Rungs): Rungs =>
  Object.fromEntries(Object.entries(rungs).map(([id, rung]) => [id, rung <= FLOOR ? rung : rung - 1]))
