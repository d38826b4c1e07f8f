import { DateTime } from 'luxon'
import { addDays } from '../../domain/day.ts'
import { dayAt, instantOf } from '../../domain/local-time.ts'
import { textsFor } from '../../text/index.ts'
import { NotDone } from './acting.ts'
import { passToFreeMinute, type Seen } from './passing.ts'
import { lasting, type Session } from './session.ts'
import type { Action } from './wire.ts'

type Break = Extract<Action, { do: 'break' }>
const { page } = textsFor('en').rehearsal
const HOUR = 3_600_000
// Until it is ended by hand.
const LONG = 1000 * 24 * HOUR
const CLOCK_CHANGE = '03:00'

/** Breaks something, or mends it, by the very means of a scenario. */
export async function breakIt(session: Session, action: Break, seen: Seen): Promise<void> {
  if (action.what === 'clock') return clockTonight(session, action.hours)
  const { stage } = session
  if (action.what === 'kill') {
    await passToFreeMinute(session.programme, seen)
    await stage.fault({ kind: 'restart', what: 'kill' })
    session.excuse()
    session.record('world', { restart: 'kill' })
    return
  }
  const begun = session.struck.get(action.what)
  if (action.on === (begun !== undefined)) throw new NotDone(page.isOn)
  if (begun) {
    // as in a scenario: mended first, then what waited goes out
    await passToFreeMinute(session.programme, seen, () => stage.release(action.what))
    begun.item = { [action.what]: begun.item[action.what], for: lasting(begun.at, session.now) }
    session.struck.delete(action.what)
    session.excuse()
    return
  }
  await passToFreeMinute(session.programme, seen)
  const what = action.what === 'chat' ? 'down' : 'locked'
  const fault =
    action.what === 'chat'
      ? ({ kind: 'chat', what: 'down' } as const)
      : ({ kind: 'database', what: 'locked' } as const)
  await stage.fault({ ...fault, forMs: LONG })
  session.struck.set(action.what, session.record('world', { [action.what]: what }))
}

/** The host's clock jumps in the coming night, as a scenario's fault at 03:00 does. */
function clockTonight(session: Session, hours: number): void {
  if (!Number.isInteger(hours) || hours === 0 || Math.abs(hours) > 12) throw new NotDone(page.hours)
  if (session.clockChangeAt) throw new NotDone(page.isOn)
  const { programme, practiceZone: zone, now } = session
  const today = dayAt(now, zone)
  const at = [today, addDays(today, 1)]
    .map((day) => instantOf(day, CLOCK_CHANGE, zone))
    .find((one) => one > now)!
  session.clockChangeAt = at
  session.acts.push({ at, who: 'world', item: { clock: `${hours > 0 ? '+' : '-'}${Math.abs(hours)}h` } })
  programme.agenda.add(at, -1, async () => {
    await session.stage.fault({ kind: 'clock', ms: hours * HOUR })
    session.aheadMs += hours * HOUR
    session.clockChangeAt = null
  })
}

/** Noon before the next night in which the clocks of a zone change; null where they do not within a year. */
export function beforeClockChange(now: Date, zone: string): Date | null {
  const noon = (day: string): DateTime => DateTime.fromISO(`${day}T12:00`, { zone })
  const today = dayAt(now, zone)
  for (let n = 0; n <= 366; n += 1) {
    const [before, after] = [noon(addDays(today, n)), noon(addDays(today, n + 1))]
    if (before.offset !== after.offset && before.toJSDate() > now) return before.toJSDate()
  }
  return null
}
