import { LADDERS } from '../domain/ladder/ladders.ts'
import { plain } from './answer.ts'
import { recordPage } from './coach/record-page.ts'
import { rosterPage } from './coach/roster.ts'
import { keepChoices } from './coach/shown.ts'
import type { Actor, Choice } from './event.ts'
import { isCoach } from './is-coach.ts'
import type { Answer } from './message.ts'
import { draftOf, type EngineParts } from './parts.ts'
import type { Handled, Tx } from './ports.ts'
import type { OutboxRow, PracticeRow } from './rows.ts'

/**
 * A press on what was shown to one coach about the practice: another page of the roster, or the record of a client
 * chosen there. Null: it is no such message, or it was shown to somebody else.
 */
export async function onDesk(parts: EngineParts, tx: Tx, event: Choice, now: Date): Promise<Handled | null> {
  const row = await tx.outbox(event.outbox)
  const practice = row && (await practiceBehind(tx, row, event.actor))
  if (!practice) return null
  if (event.act.do === 'open-record') return chosenRecord(parts, tx, practice, event, now)
  if (event.act.do !== 'roster') return null
  const { textsFor, ladders = LADDERS } = parts
  const files = await tx.roster(practice.id)
  const page = rosterPage({ practice, files, now, textsFor, ladders }, Number(event.act.page))
  return shown(tx, page, practice, null, event, now)
}

async function practiceBehind(tx: Tx, row: OutboxRow, actor: Actor): Promise<PracticeRow | null> {
  const { address } = row.body
  if (row.clientId !== null || row.practiceId === null || address.to === 'client') return null
  if (address.only !== actor.user) return null
  const practice = await tx.practice(row.practiceId)
  return practice && isCoach(practice, actor) ? practice : null
}

async function chosenRecord(
  parts: EngineParts,
  tx: Tx,
  practice: PracticeRow,
  event: Choice,
  now: Date,
): Promise<Handled> {
  const file = await tx.clientByRef(practice.id, event.values[0] ?? '')
  if (!file) return { answer: plain(parts.textsFor(practice.language).roster.gone, null, true) }
  const page = await recordPage(tx, draftOf(parts, file, now, event.id), { week: null, part: 0 }, true)
  return shown(tx, page, practice, file.client.id, event, now)
}

const shown = async (
  tx: Tx,
  answer: Answer,
  practice: PracticeRow,
  clientId: string | null,
  { actor, id }: Choice,
  now: Date,
): Promise<Handled> => ({
  answer: await keepChoices(tx, answer, { practice, clientId, only: actor.user, cause: id, now }),
})
