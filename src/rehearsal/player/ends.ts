import { addDays } from '../../domain/day.ts'
import { instantOf } from '../../domain/local-time.ts'
import type { Script } from '../scenario/index.ts'

// Room for what the last thing that somebody does leads to.
const HOUR = 3_600_000

/** When the run is over for a client: midnight after their last local day, or an hour after what they do later. */
export function endOf({ start, days, steps }: Script, ref: string, zone: string): Date {
  const midnight = instantOf(addDays(start, days), '00:00', zone)
  const last = steps.findLast(({ act }) => act.who === 'client' && act.ref === ref)?.at
  return last && last >= midnight ? new Date(last.getTime() + HOUR) : midnight
}

/** When the run is over: for the practice, for every client, and after the last step. */
export function endOfRun(script: Script, zoneOf: (ref: string) => string): Date {
  const { start, days, practice, clients, steps } = script
  const ends = clients.map(({ ref }) => endOf(script, ref, zoneOf(ref)).getTime())
  const midnight = instantOf(addDays(start, days), '00:00', practice.zone).getTime()
  return new Date(Math.max(midnight, (steps.at(-1)?.at.getTime() ?? 0) + 1, ...ends))
}
