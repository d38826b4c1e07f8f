import { createHash } from 'node:crypto'
import type { Message } from '../engine/message.ts'
import type { Outcome, Posting } from '../engine/ports.ts'
import type { Change, OutboxRow, Table } from '../engine/rows.ts'
import type { Db } from './database.ts'
import { TABLE_ORDER, tableOf, toStored } from './tables.ts'

// 80 bits: among a million messages the chance of two with one id is below one in a trillion.
const ID_LENGTH = 20

// What was written is not read back: that takes longer than the writing.
const ID_ALONE = { select: { id: true } } as const

/** The outbox id of a key: the same message always has the same id, so that writing it again changes nothing. */
export const outboxId = (key: string): string =>
  createHash('sha256').update(key).digest('hex').slice(0, ID_LENGTH)

/** Writes what an event leads to. Must run inside a transaction. */
export async function applyOutcome(db: Db, outcome: Outcome): Promise<void> {
  for (const change of inOrder(outcome.changes)) await applyChange(db, change)
  await post(db, outcome.postings)
}

/** Rows that others refer to first; changes of one table keep the order in which they were given. */
function inOrder(changes: readonly Change[]): Change[] {
  return [...changes].sort((a, b) => TABLE_ORDER.indexOf(nameOf(a)) - TABLE_ORDER.indexOf(nameOf(b)))
}

const nameOf = (change: Change): Table => ('put' in change ? change.put : change.drop)

async function applyChange(db: Db, change: Change): Promise<void> {
  if ('drop' in change) {
    await tableOf(db, change.drop).deleteMany({ where: { id: change.id } })
    return
  }
  const row = toStored(change.row)
  await tableOf(db, change.put as 'note').upsert({
    where: { id: row.id },
    create: row as never,
    update: row as never,
    ...ID_ALONE,
  })
}

async function post(db: Db, postings: readonly Posting[]): Promise<void> {
  if (postings.length === 0) return
  const wanted = { key: { in: postings.map((posting) => posting.message.key) } }
  const written = await db.outbox.findMany({ where: wanted, select: { key: true } })
  const keys = new Set(written.map((row) => row.key))
  let seq = await lastSeq(db)
  for (const posting of postings) {
    if (keys.has(posting.message.key)) continue
    keys.add(posting.message.key)
    seq += 1
    // one by one: the client takes three times as long to write a list, even of one
    await tableOf(db, 'outbox').create({ data: toStored(outboxRow(posting, seq)), ...ID_ALONE })
  }
}

/** The number of the message written last; asked for as a row, since the client is slower to find a maximum. */
async function lastSeq(db: Db): Promise<number> {
  const last = await db.outbox.findFirst({ orderBy: { seq: 'desc' }, select: { seq: true } })
  return last?.seq ?? 0
}

/** Keeps a message that is shown in place and never delivered. Must run inside a transaction. */
export async function keepShown(
  db: Db,
  message: Message,
  of: { practiceId: string; clientId: string | null; at: Date },
): Promise<string> {
  const { at, ...whose } = of
  const posting: Posting = { message, ...whose, priority: 4, notBefore: at, expires: null }
  const row = toStored<OutboxRow>({
    ...outboxRow(posting, (await lastSeq(db)) + 1),
    state: 'sent',
    sentAt: at,
    reason: 'shown in place',
  })
  await tableOf(db, 'outbox').upsert({ where: { id: row.id }, create: row, update: row, ...ID_ALONE })
  return row.id
}

function outboxRow(posting: Posting, seq: number): OutboxRow {
  const { message, ...travel } = posting
  return {
    ...travel,
    id: outboxId(message.key),
    key: message.key,
    kind: message.kind,
    body: message,
    seq,
    state: 'waiting',
    attempts: 0,
    sentAt: null,
    channel: null,
    platformId: null,
    reason: null,
  }
}
