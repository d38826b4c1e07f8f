import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import { openStore } from '../../src/store/open.ts'
import { TABLE_ORDER } from '../../src/store/tables.ts'
import { pathOf } from './moving.ts'
import { ground, outcome, posting, put, samples } from './samples.ts'

/** Clients of a grown database where nothing else is wanted, and how many share a practice. */
export const CLIENTS = 3_000
const A_PRACTICE = 5
// Rows of these tables come with each day of each client.
const DAYS = 3
const DAILY = ['CheckIn', 'Version', 'Inbound', 'Outbox']
// Of so many messages one still waits, and of so many clients one has something open.
const WAITS = 100

const NAMES = [...TABLE_ORDER, 'outbox'].map((name) => name.charAt(0).toUpperCase() + name.slice(1))

/**
 * A file with a row of every table for each of three thousand clients, three in the tables that grow by the day: most
 * messages are sent, most signs and alerts closed, most of what is due lies ahead.
 */
export async function grown(url: string, clients = CLIENTS): Promise<void> {
  const { store, close } = await openStore(url, null)
  await store.transaction((tx) => tx.apply(ground('heron')))
  const rows = TABLE_ORDER.slice(2).map((table) => put(table, samples[table]))
  await store.transaction((tx) => tx.apply(outcome(rows, [posting('prompt/1')])))
  await close()
  const db = new SqliteDatabase(pathOf(url))
  db.pragma('foreign_keys = OFF')
  db.exec('BEGIN')
  for (const name of NAMES) copy(db, name, clients)
  open(db)
  db.exec('COMMIT; ANALYZE')
  db.close()
}

/** The same row again for each client, under names of its own; in the tables that grow for each day too. */
function copy(db: SqliteDatabase.Database, table: string, clients: number): void {
  const columns = (db.pragma(`table_info("${table}")`) as { name: string }[]).map(({ name }) => name)
  const values = columns.map((name) => valueIn(table, name))
  const most = table === 'Practice' || table === 'Cover' ? clients / A_PRACTICE : clients
  db.exec(`
    WITH RECURSIVE "n"("i") AS (SELECT 1 UNION ALL SELECT "i" + 1 FROM "n" WHERE "i" < ${most}),
      "days"("d") AS (SELECT 1 UNION ALL SELECT "d" + 1 FROM "days" WHERE "d" < ${DAILY.includes(table) ? DAYS : 1})
    INSERT INTO "${table}" (${columns.map((name) => `"${name}"`).join(', ')})
    SELECT ${values.join(', ')} FROM "n", "days", (SELECT * FROM "${table}" LIMIT 1)`)
}

function valueIn(table: string, column: string): string {
  const practice = `(("i" - 1) / ${A_PRACTICE} + 1)`
  const own =
    table === 'Practice' || table === 'Cover' ? '"i"' : DAILY.includes(table) ? `"i" || '/' || "d"` : '"i"'
  if (column === 'id' && table === 'Inbound') return `printf('1%017d', "i" * 100 + "d")`
  if (['id', 'key', 'platformId'].includes(column)) return `"${column}" || '/' || ${own}`
  if (column === 'guild') return `"guild" || '/' || "i"`
  if (column === 'practiceId') return `"practiceId" || '/' || ${table === 'Cover' ? '"i"' : practice}`
  if (['clientId', 'ref', 'user', 'alertId'].includes(column)) return `"${column}" || '/' || "i"`
  if (column === 'day' && table === 'CheckIn') return `date("day", '+' || "d" || ' days')`
  if (column === 'seq') return '"i" * 100 + "d"'
  if (column === 'at' && table === 'Due')
    return `strftime('%Y-%m-%dT%H:%M:%S.000+00:00', "at", '+' || "i" || ' minutes')`
  return `"${column}"`
}

function open(db: SqliteDatabase.Database): void {
  db.exec(`
    UPDATE "Outbox" SET "state" = 'sent', "channel" = 'c', "platformId" = "id" WHERE "seq" % ${WAITS} <> 1;
    UPDATE "Sign" SET "state" = 'open', "endedAt" = NULL WHERE rowid % ${WAITS} = 1;
    UPDATE "Alert" SET "closedAt" = NULL WHERE rowid % ${WAITS} = 1;`)
}

/** The same rows on a server, in an empty database. */
export async function grownOn(server: string, file: string): Promise<void> {
  await (await openStore(server, null)).close()
  const db = new SqliteDatabase(pathOf(file), { readonly: true })
  const client = new pg.Client({ connectionString: server })
  await client.connect()
  for (const name of NAMES) {
    const rows = db.prepare(`SELECT * FROM "${name}"`).all() as Record<string, unknown>[]
    const columns = db.pragma(`table_info("${name}")`) as { name: string; type: string }[]
    const fields = columns.filter(({ type }) => type === 'JSONB').map((column) => column.name)
    for (const row of rows)
      for (const field of fields) if (row[field] !== null) row[field] = JSON.parse(String(row[field]))
    const all = `json_populate_recordset(NULL::"${name}", $1)`
    await client.query(`INSERT INTO "${name}" SELECT * FROM ${all}`, [JSON.stringify(rows)])
  }
  await client.query('ANALYZE')
  await client.end()
  db.close()
}
