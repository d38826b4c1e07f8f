import type { Button, Message, Pick } from '../engine/message.ts'
import type { RowCounts } from '../engine/ports.ts'
import type { ClientRow, OutboxRow } from '../engine/rows.ts'
import type { Db } from './database.ts'
import { TABLE_ORDER, tableOf } from './tables.ts'

// Below the number of parameters that either database takes in one statement.
const IDS_AT_ONCE = 500
const KEPT: readonly string[] = ['practice', 'client', 'cover', 'inbound']
const OF_A_CLIENT = new Set(TABLE_ORDER.filter((table) => !KEPT.includes(table)))

/**
 * Removes every row of a client and every message about them; a message to the practice that names them among
 * others (a roll-call) keeps its key and loses its content, or the alias alone where it still waits. The platform ids
 * already applied stay, without the client, so that nothing fetched again is applied twice. Gives how many rows went.
 */
export async function eraseClient(db: Db, clientId: string): Promise<RowCounts> {
  const client = await tableOf(db, 'client').findFirst({ where: { id: clientId } })
  if (!client) return {}
  const outbox = tableOf(db, 'outbox')
  const counts = await rowsOf(db, clientId)
  const others = await ofPractice(db, client)
  const about = others.filter((row) => row.body.about === client.ref)
  for (let from = 0; from < about.length; from += IDS_AT_ONCE) {
    const ids = about.slice(from, from + IDS_AT_ONCE).map((row) => row.id)
    await outbox.deleteMany({ where: { id: { in: ids } } })
  }
  for (const row of others) {
    if (row.body.about === client.ref || !names(row.body, client.ref)) continue
    const body = row.state === 'waiting' ? withoutName(row.body, client.ref) : emptied(row.body)
    await outbox.updateMany({ where: { id: row.id }, data: { body } })
  }
  await tableOf(db, 'client').deleteMany({ where: { id: clientId } })
  return counts
}

/** How many rows go with a client, by table: the client's own, and of messages those about them. */
export async function rowsOf(db: Db, clientId: string): Promise<RowCounts> {
  const client = await tableOf(db, 'client').findFirst({ where: { id: clientId } })
  if (!client) return {}
  const counts: Record<string, number> = { client: 1 }
  for (const table of TABLE_ORDER) {
    if (!OF_A_CLIENT.has(table)) continue
    counts[table] = await tableOf(db, table).count({ where: { clientId } })
  }
  const about = (await ofPractice(db, client)).filter((row) => row.body.about === client.ref)
  counts.outbox = about.length + (await tableOf(db, 'outbox').count({ where: { clientId } }))
  return Object.fromEntries(Object.entries(counts).filter(([, n]) => n > 0))
}

/** Messages of the practice that belong to no one client. */
const ofPractice = (db: Db, { practiceId }: ClientRow): Promise<OutboxRow[]> =>
  tableOf(db, 'outbox').findMany({ where: { practiceId, clientId: null } })

/** An alias has letters of any language, so that "mar" is not found in "maría". */
const asWord = (ref: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{M}\\d_-])${ref}(?![\\p{L}\\p{M}\\d_-])`, 'giu')

/** True where the alias stands anywhere in it as a whole word; a line break must not become the "n" of its escape. */
const names = (part: Message | Button | Pick, ref: string): boolean =>
  asWord(ref).test(
    JSON.stringify(part, (_, value) => (typeof value === 'string' ? value.replaceAll(/\s/g, ' ') : value)),
  )

/** The same with a dash for the alias: what is about others still goes out. Choices that name it go. */
const withoutName = (message: Message, ref: string): Message => ({
  ...message,
  text: message.text.replaceAll(asWord(ref), '–'),
  buttons: message.buttons.filter((button) => !names(button, ref)),
  pick: message.pick && names(message.pick, ref) ? null : message.pick,
  picture: null,
  files: [],
})

const emptied = (message: Message): Message => ({
  ...message,
  text: '',
  buttons: [],
  pick: null,
  picture: null,
  files: [],
})
