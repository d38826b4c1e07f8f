import Database from 'better-sqlite3'
import pg from 'pg'

export interface StoredRow {
  readonly table: string
  readonly row: Record<string, unknown>
  readonly text: string
}

/** Every row of every table as it lies in the database, read past the store. */
export async function everyRow(address: string): Promise<StoredRow[]> {
  const read = address.startsWith('file:') ? fromSqlite : fromPostgresql
  return (await read(address)).map(({ table, row }) => ({ table, row, text: JSON.stringify(row) }))
}

type Read = { table: string; row: Record<string, unknown> }

async function fromSqlite(address: string): Promise<Read[]> {
  const db = new Database(address.slice('file:'.length), { readonly: true })
  const names = db.prepare("SELECT name FROM sqlite_master WHERE type = 'table'").pluck().all() as string[]
  const rows = names.flatMap((table) =>
    (db.prepare(`SELECT * FROM "${table}"`).all() as Read['row'][]).map((row) => ({ table, row })),
  )
  db.close()
  return rows
}

async function fromPostgresql(address: string): Promise<Read[]> {
  const client = new pg.Client({ connectionString: address })
  await client.connect()
  const found = await client.query("SELECT tablename FROM pg_tables WHERE schemaname = 'public'")
  const rows: Read[] = []
  for (const { tablename: table } of found.rows as { tablename: string }[])
    for (const row of (await client.query(`SELECT * FROM "${table}"`)).rows) rows.push({ table, row })
  await client.end()
  return rows
}
