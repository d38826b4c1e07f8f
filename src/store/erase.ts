import type { Message } from '../engine/message.ts'
import type { Db } from './database.ts'
import { TABLE_ORDER, tableOf } from './tables.ts'

// Below the number of parameters that either database takes in one statement.
const IDS_AT_ONCE = 500
const KEPT: readonly string[] = ['practice', 'client', 'cover', 'inbound']
const OF_A_CLIENT = new Set(TABLE_ORDER.filter((table) => !KEPT.includes(table)))

/**
 * Removes every row of a client and every message about them; a message to the practice that names them among
 * others (a roll-call) keeps its key and loses its content once it is no longer waiting. The platform ids already
 * applied stay, without the client, so that nothing fetched again is applied twice. Gives how many rows went.
 */
export async function eraseClient(db: Db, clientId: string): Promise<number> {
  const client = await tableOf(db, 'client').findFirst({ where: { id: clientId } })
  if (!client) return 0
  const outbox = tableOf(db, 'outbox')
  const others = await outbox.findMany({ where: { practiceId: client.practiceId, clientId: null } })
  const about = others.filter((row) => row.body.about === client.ref)
  for (let from = 0; from < about.length; from += IDS_AT_ONCE) {
    const ids = about.slice(from, from + IDS_AT_ONCE).map((row) => row.id)
    await outbox.deleteMany({ where: { id: { in: ids } } })
  }
  for (const row of others) {
    if (row.state === 'waiting' || row.body.about === client.ref || !names(row.body, client.ref)) continue
    await outbox.updateMany({ where: { id: row.id }, data: { body: emptied(row.body) } })
  }
  const rows = await countRows(db, clientId)
  await tableOf(db, 'client').deleteMany({ where: { id: clientId } })
  return rows + about.length
}

/** Every row that goes with the client, the client's own included. */
async function countRows(db: Db, clientId: string): Promise<number> {
  let rows = 1 + (await tableOf(db, 'outbox').count({ where: { clientId } }))
  for (const table of TABLE_ORDER) {
    if (!OF_A_CLIENT.has(table)) continue
    rows += await tableOf(db, table).count({ where: { clientId } })
  }
  return rows
}

/** True where the alias stands anywhere in the message as a whole word. */
function names(message: Message, ref: string): boolean {
  return new RegExp(`(?<![\\w-])${ref}(?![\\w-])`, 'i').test(JSON.stringify(message))
}

const emptied = (message: Message): Message => ({
  ...message,
  text: '',
  buttons: [],
  pick: null,
  picture: null,
  files: [],
})
