import { createHash } from 'node:crypto'
import { dayAt } from '../../domain/local-time.ts'
import type { Texts } from '../../text/index.ts'
import type { Server } from '../event.ts'
import type { Address } from '../message.ts'
import { notice } from '../notice.ts'
import type { Posting } from '../ports.ts'
import type { PracticeRow } from '../rows.ts'
import { channelsOf, lackingOf, placeOf } from './practice-state.ts'

/**
 * Something on the server has changed (a channel, a role, a right) and the practice cannot work as before: how many
 * things are wrong, and the message that says so once a day in a channel that still serves, else to whoever owns the
 * server. Null where nothing is.
 */
export function troubleOf(
  practice: PracticeRow,
  server: Server,
  texts: Texts,
  now: Date,
): { readonly wrong: number; readonly posting: Posting } | null {
  // what was never set, or is the policy's, is no change of the server's
  const unset = lackingOf(practice, null, texts).missing
  const missing = lackingOf(practice, server, texts).missing.filter((line) => !unset.includes(line))
  if (missing.length === 0) return null
  const text = [texts.setUp.trouble(server.name), ...missing.map((line) => `- ${line}`)].join('\n')
  const hash = createHash('sha256').update(missing.join('\n')).digest('hex').slice(0, 12)
  const key = `${practice.id}/trouble/${hash}/${dayAt(now, practice.zone)}`
  const message = notice(key, whom(practice, server, texts), text)
  const how = { clientId: null, practiceId: practice.id, priority: 2, notBefore: now, expires: null } as const
  return { wrong: missing.length, posting: { message, ...how } }
}

function whom(practice: PracticeRow, server: Server, { setUp }: Texts): Address {
  const well = channelsOf(practice).find(({ option, id }) => placeOf(option, id, server, setUp) === null)
  return well ? { to: 'coach', channel: well.id } : { to: 'client', user: server.owner }
}
