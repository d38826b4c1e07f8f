import { dayAt, timeAt } from '../../domain/local-time.ts'
import type { Texts } from '../../text/index.ts'
import { notice } from '../notice.ts'
import type { ClientFile, Tx } from '../ports.ts'
import type { PracticeRow } from '../rows.ts'

const HOUR_MS = 3_600_000

/** So long without the bot, and the coach is told when it is back; a figure of our own. */
export const AWAY_MS = HOUR_MS

/**
 * The bot was away from `from` on and is back: the coach's channel hears so once, with whose prompts fell into that
 * time, and whose urgent sign nobody has taken up.
 */
export async function tellAway(
  tx: Tx,
  practice: PracticeRow,
  { away }: Texts,
  from: Date,
  now: Date,
): Promise<void> {
  const { coachChannel: channel, zone } = practice
  if (!channel) return
  const files = await tx.roster(practice.id)
  const refs = (which: (file: ClientFile) => boolean): string[] =>
    files.filter(which).map(({ client }) => client.ref)
  const prompted = refs(({ dues }) =>
    dues.some((due) => due.kind === 'prompt' && due.at > from && due.at <= now),
  )
  const alerts = refs((file) =>
    file.alerts.some((alert) => alert.closedAt === null && alert.takenBy === null),
  )
  const text = [
    away.back(dayAt(from, zone), timeAt(from, zone), Math.round((now.getTime() - from.getTime()) / HOUR_MS)),
    ...(alerts.length > 0 ? [away.alerts(alerts)] : []),
    ...(prompted.length > 0 ? [away.prompted(prompted)] : []),
  ].join('\n')
  const message = notice(`${practice.id}/away/${from.toISOString()}`, { to: 'coach', channel }, text)
  const how = { clientId: null, practiceId: practice.id, priority: 2, notBefore: now, expires: null } as const
  await tx.apply({ changes: [], postings: [{ message, ...how }] })
}
