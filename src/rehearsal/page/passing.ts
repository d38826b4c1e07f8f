import { nextOf, stepTo } from '../player/play.ts'
import type { Programme } from '../player/programme.ts'

const MINUTE = 60_000
// So often may the bot find something to do at one instant before time goes on regardless.
const STEPS_AN_INSTANT = 50

/** Hears of every step of a play. */
export type Seen = () => Promise<void> | void

/** Lets time pass up to an instant, through all that happens on the way; `seen` is called after every step. */
export async function passTo(programme: Programme, target: Date, seen: Seen): Promise<void> {
  const { clock } = programme
  let still = 0
  for (let next = await nextOf(programme); next && next <= target; next = await nextOf(programme)) {
    still = next > clock.world() ? 0 : still + 1
    if (still > STEPS_AN_INSTANT) next = new Date(clock.world().getTime() + MINUTE)
    if (next > target) break
    await stepTo(programme, next)
    await seen()
  }
  clock.set(target)
}

/**
 * Goes on to the next whole minute at which nobody else acts, and stands there: at one instant a scenario plays faults,
 * clients and coach in an order of its own, which an act of the reader must not depend on. `first` is done there
 * before anything that is due.
 */
export async function passToFreeMinute(
  programme: Programme,
  seen: Seen,
  first: () => Promise<void> = async () => {},
): Promise<Date> {
  const { clock, agenda } = programme
  let at = new Date((Math.floor(clock.world().getTime() / MINUTE) + 1) * MINUTE)
  for (;;) {
    await passTo(programme, new Date(at.getTime() - 1), seen)
    if (agenda.next?.getTime() !== at.getTime()) break
    await passTo(programme, at, seen)
    at = new Date(at.getTime() + MINUTE)
  }
  clock.set(at)
  await first()
  await stepTo(programme, at)
  return at
}
