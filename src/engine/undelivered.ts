import { addDays } from '../domain/day.ts'
import { dayAt } from '../domain/local-time.ts'
import { userIn } from '../domain/mention.ts'
import type { Texts } from '../text/index.ts'
import { onCall } from './course/cover.ts'
import type { Undelivered } from './event.ts'
import { type Address, type Message, NOBODY } from './message.ts'
import { notice } from './notice.ts'
import { commit, draftOf, type EngineParts } from './parts.ts'
import type { Posting, Tx } from './ports.ts'
import type { OutboxRow, PracticeRow } from './rows.ts'

/**
 * A message that will not arrive. A client's: the coach hears so, once a client and reason. A channel's: an alert
 * goes to the other channel, else to the coach and deputy in private; of anything else the other channel hears once
 * a day. A stale one is only noted; of a second prompt in a row the coach hears.
 */
export async function undelivered(parts: EngineParts, tx: Tx, event: Undelivered, now: Date): Promise<void> {
  const row = await tx.outbox(event.outbox)
  if (!row) return
  if (event.reason === 'stale') return row.kind === 'prompt' ? withoutPrompts(parts, tx, row, now) : undefined
  if (row.body.address.to === 'client') return toPerson(parts, tx, row, event, now)
  const practice = row.practiceId === null ? null : await tx.practice(row.practiceId)
  if (!practice) return
  const postings = await otherWays(parts, tx, { row, practice, reason: event.reason, now })
  await tx.apply({ changes: [], postings })
}

/** The second prompt in a row that came too late to be sent: the coach hears that the client is without. */
async function withoutPrompts(parts: EngineParts, tx: Tx, row: OutboxRow, now: Date): Promise<void> {
  const file = row.clientId === null ? null : await tx.client(row.clientId)
  const day = /\d{4}-\d\d-\d\d$/.exec(row.key)?.[0]
  if (!file || !day) return
  const before = await tx.outboxByKey(row.key.replace(day, addDays(day, -1)))
  if (before?.state !== 'dropped' && before?.state !== 'failed') return
  const draft = draftOf(parts, file, now, row.id)
  const text = draft.forCoach.away.noPrompts(draft.client.ref)
  draft.toCoach({ kind: 'notice', text, key: draft.id('no-prompts', day) })
  await commit(tx, draft)
}

async function toPerson(
  parts: EngineParts,
  tx: Tx,
  row: OutboxRow,
  { outbox, reason }: Undelivered,
  now: Date,
): Promise<void> {
  const file = row.clientId === null ? null : await tx.client(row.clientId)
  const { address } = row.body
  // an alert that went to a coach in private has no other way left
  if (!file || address.to !== 'client' || address.user !== file.client.user) return
  const draft = draftOf(parts, file, now, outbox)
  const urgent = row.kind === 'urgent'
  const tell = urgent ? draft.toAlerts.bind(draft) : draft.toCoach.bind(draft)
  tell({
    kind: 'notice',
    care: urgent ? row.body.care : 'none',
    key: draft.id('unreachable', urgent ? outbox : reason, draft.today),
    text: draft.forCoach.coach.unreachable(draft.client.ref, reason, urgent),
  })
  await commit(tx, draft)
}

interface Failed {
  readonly row: OutboxRow
  readonly practice: PracticeRow
  readonly reason: Undelivered['reason']
  readonly now: Date
}

/** What is tried in place of a channel ends after one other channel and the people in private. */
const ELSEWHERE = '/elsewhere'

async function otherWays(parts: EngineParts, tx: Tx, failed: Failed): Promise<Posting[]> {
  const { row, practice, reason, now } = failed
  const texts = parts.textsFor(practice.language)
  const { body } = row
  const channel = body.address.to === 'client' ? null : body.address.channel
  const other = otherChannel(practice, channel)
  const why = texts.setUp.cannotPost(channel === practice.alertChannel ? 'alert' : 'coach', reason)
  if (!isAlert(body)) {
    const key = `${practice.id}/cannot-post/${channel}/${dayAt(now, practice.zone)}`
    return other ? [posting(failed, notice(key, other, `${why} ${texts.setUp.lostThere}`), null)] : []
  }
  if (other && !body.key.endsWith(ELSEWHERE)) {
    const moved = { ...body, key: `${body.key}${ELSEWHERE}`, address: other, text: `${why}\n\n${body.text}` }
    return [posting(failed, moved, row.clientId)]
  }
  return inPrivate(tx, failed, texts)
}

const isAlert = ({ kind, care }: Message): boolean =>
  kind === 'alert' || kind === 'alert-repeat' || (kind === 'notice' && care !== 'none')

function otherChannel({ coachChannel, alertChannel }: PracticeRow, failed: string | null): Address | null {
  if (alertChannel && alertChannel !== failed) return { to: 'alerts', channel: alertChannel }
  return coachChannel && coachChannel !== failed ? { to: 'coach', channel: coachChannel } : null
}

/** The words of the alert to whoever is on call and to the deputy; by command they can take it up. */
async function inPrivate(tx: Tx, failed: Failed, { setUp }: Texts): Promise<Posting[]> {
  const { row, practice, now } = failed
  const file = row.clientId === null ? null : await tx.client(row.clientId)
  const onDuty = file && userIn(onCall(file, dayAt(now, practice.zone)))
  const people = [...new Set([onDuty, practice.deputy].filter((one): one is string => Boolean(one)))]
  return people.map((user) =>
    posting(
      failed,
      {
        ...row.body,
        key: `${row.body.key}/${user}`,
        address: { to: 'client', user },
        text: `${setUp.alertInPrivate(row.body.about ?? '')}\n\n${row.body.text}`,
        buttons: [],
        pick: null,
        mentions: NOBODY,
      },
      row.clientId,
    ),
  )
}

const posting = ({ row, now }: Failed, message: Message, clientId: string | null): Posting => ({
  message,
  clientId,
  practiceId: row.practiceId,
  priority: isAlert(message) ? 1 : 2,
  notBefore: now,
  expires: null,
})
