import { commands } from '../../commands/index.ts'
import { createEngine } from '../../src/engine/engine.ts'
import type { ChatEvent } from '../../src/engine/event.ts'
import type { Answer, Message } from '../../src/engine/message.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import type { Db } from '../../src/store/database.ts'
import { openSqlite } from '../../src/store/sqlite.ts'
import { createTx } from '../../src/store/tx.ts'
import { textsFor } from '../../src/text/index.ts'
import { GUILD } from '../engine/practice.ts'
import { NOW } from './houses.ts'

/** What an event came to, though nothing of it was kept. */
export interface Tried {
  readonly answer: Answer | null
  /** Rows written; one of them notes that the event's id was applied. */
  readonly changes: number
  /** Messages that were added, by where they go (a person or a channel); none that was there before. */
  readonly messages: readonly { readonly to: string; readonly text: string }[]
  /** Ids of the clients of whom a row was added, changed or taken away; empty where nobody looked. */
  readonly touched: readonly string[]
}

/** Rows of an event that leaves no trace but the note that it was applied. */
export const NOTE = 1

export interface Trial {
  readonly rows: readonly OutboxRow[]
  /** Ids of the first practice's clients, by alias. */
  readonly clients: ReadonlyMap<string, string>
  /** Handles events one after the other, looks at what each did, and takes all of it back. */
  attempt(events: readonly ChatEvent[], look?: 'touched'): Promise<Tried[]>
  /** Every row of every table. */
  dump(): Promise<string>
  close(): Promise<void>
}

type Row = Record<string, unknown>
type Dump = Readonly<Record<string, readonly Row[]>>

class TakenBack extends Error {}

/** Events tried on a database as it stands: each finds it as the one before has found it. */
export async function openTrial(path: string): Promise<Trial> {
  const database = openSqlite(path)
  const before = await database.use(dump)

  const attempt: Trial['attempt'] = async (events, look) => {
    const tried: Tried[] = []
    const taken = database.transaction(async (db) => {
      const tx = createTx(database, db, () => {})
      const engine = createEngine({ commands, textsFor, store: { transaction: (work) => work(tx) } })
      const known = new Set((await waiting(db)).map(({ id }) => id))
      for (const event of events) {
        const written = await count(db)
        const { answer } = await engine.handle(event, NOW)
        const changes = (await count(db)) - written
        const added = changes > NOTE ? (await waiting(db)).filter(({ id }) => !known.has(id)) : []
        for (const { id } of added) known.add(id)
        tried.push({ answer, changes, messages: added.map(told), touched: [] })
      }
      if (look && tried.some(({ changes }) => changes > NOTE))
        tried.push({ ...tried.pop()!, touched: touched(before, await dump(db)) })
      throw new TakenBack()
    })
    await taken.catch((error: unknown) => {
      if (!(error instanceof TakenBack)) throw error
    })
    return tried
  }

  return {
    rows: (before.Outbox ?? []) as unknown as OutboxRow[],
    clients: new Map(
      (before.Client ?? [])
        .filter((row) => row.practiceId === GUILD)
        .map((row) => [String(row.ref), String(row.id)]),
    ),
    attempt,
    dump: async () => JSON.stringify(await database.use(dump), plainly),
    close: () => database.close(),
  }
}

/** How many rows this connection has ever written, as SQLite counts them: a row written as it was counts too. */
async function count(db: Db): Promise<number> {
  const [row] = await db.$queryRawUnsafe<{ n: bigint }[]>('SELECT total_changes() AS n')
  return Number(row!.n)
}

async function dump(db: Db): Promise<Dump> {
  const tables = await db.$queryRawUnsafe<{ name: string }[]>(
    `SELECT "name" FROM "sqlite_master" WHERE "type" = 'table' AND "name" NOT LIKE 'sqlite_%' AND "name" NOT LIKE '\\_%' ESCAPE '\\'`,
  )
  const rows: Record<string, Row[]> = {}
  for (const { name } of tables) rows[name] = await db.$queryRawUnsafe<Row[]>(`SELECT * FROM "${name}"`)
  return rows
}

const plainly = (_: string, value: unknown): unknown => (typeof value === 'bigint' ? String(value) : value)

/** Messages that wait to be sent. */
const waiting = (db: Db): Promise<{ id: string; body: Message }[]> =>
  db.$queryRawUnsafe(`SELECT "id", "body" FROM "Outbox" WHERE "state" = 'waiting'`)

const told = ({ body: { address, text } }: { body: Message }) => ({
  to: address.to === 'client' ? address.user : address.channel,
  text,
})

/** Clients whose rows are not the same in both. */
function touched(before: Dump, after: Dump): string[] {
  const [was, is] = [byClient(before), byClient(after)]
  return [...new Set([...was.keys(), ...is.keys()])].filter((id) => was.get(id) !== is.get(id))
}

function byClient({ Inbound: _, ...all }: Dump): Map<string, string> {
  const rows = new Map<string, string>()
  for (const [table, list] of Object.entries(all))
    for (const row of list) {
      const id = String(table === 'Client' ? row.id : row.clientId)
      rows.set(id, `${rows.get(id) ?? ''}\n${table} ${JSON.stringify(row, plainly)}`)
    }
  return rows
}
