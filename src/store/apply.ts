import { createHash } from 'node:crypto'
import type { Message } from '../engine/message.ts'
import type { Outcome, Posting } from '../engine/ports.ts'
import type { Change, OutboxRow, Table } from '../engine/rows.ts'
import type { Model } from './columns.ts'
import type { DatabaseTraits, Db } from './database.ts'
import { dropRow, postRow, putRow } from './put.ts'
import { TABLE_ORDER } from './tables.ts'

// 80 bits: among a million messages the chance of two with one id is below one in a trillion.
const ID_LENGTH = 20

/** The outbox id of a key: the same message always has the same id, so that writing it again changes nothing. */
export const outboxId = (key: string): string =>
  createHash('sha256').update(key).digest('hex').slice(0, ID_LENGTH)

/** Writes what an event leads to. Must run inside a transaction. */
export async function applyOutcome(target: DatabaseTraits, db: Db, outcome: Outcome): Promise<void> {
  for (const change of inOrder(outcome.changes)) {
    if ('put' in change) await putRow(target, db, modelOf(change.put), change.row)
    else await dropRow(db, modelOf(change.drop), change.id)
  }
  for (const posting of outcome.postings) await postRow(target, db, outboxRow(posting))
}

/** Rows that others refer to first; changes of one table keep the order in which they were given. */
function inOrder(changes: readonly Change[]): Change[] {
  return [...changes].sort((a, b) => TABLE_ORDER.indexOf(nameOf(a)) - TABLE_ORDER.indexOf(nameOf(b)))
}

const nameOf = (change: Change): Table => ('put' in change ? change.put : change.drop)

const modelOf = (table: Table): Model => `${table[0]!.toUpperCase()}${table.slice(1)}` as Model

/** Keeps a message that is shown in place and never delivered. Must run inside a transaction. */
export async function keepShown(
  target: DatabaseTraits,
  db: Db,
  message: Message,
  of: { practiceId: string; clientId: string | null; at: Date },
): Promise<string> {
  const { at, ...whose } = of
  const row = outboxRow({ message, ...whose, priority: 4, notBefore: at, expires: null })
  // shown again, it is what is shown now
  await dropRow(db, 'Outbox', row.id)
  await postRow(target, db, { ...row, state: 'sent', sentAt: at, reason: 'shown in place' })
  return row.id
}

/** A message that has yet to leave; its number in the ledger is given by the ledger. */
function outboxRow(posting: Posting): Omit<OutboxRow, 'seq'> {
  const { message, ...travel } = posting
  return {
    ...travel,
    id: outboxId(message.key),
    key: message.key,
    kind: message.kind,
    body: message,
    state: 'waiting',
    attempts: 0,
    sentAt: null,
    channel: null,
    platformId: null,
    reason: null,
  }
}
