import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'

/** Holds a database against all who write, as another program would; gives the way to let go of it, once or more. */
export async function lock(url: string): Promise<() => Promise<void>> {
  return url.startsWith('file:') ? lockFile(url.slice('file:'.length)) : lockTables(url)
}

function lockFile(path: string): () => Promise<void> {
  const other = new SqliteDatabase(path, { timeout: 5_000 })
  other.exec('BEGIN IMMEDIATE')
  return async () => {
    if (!other.open) return
    other.exec('ROLLBACK')
    other.close()
  }
}

async function lockTables(url: string): Promise<() => Promise<void>> {
  const other = new pg.Client({ connectionString: url })
  await other.connect()
  const { rows } = await other.query<{ name: string }>(
    `SELECT quote_ident(tablename) AS name FROM pg_tables WHERE schemaname = 'public'`,
  )
  await other.query(`BEGIN; LOCK TABLE ${rows.map(({ name }) => name).join(', ')} IN ACCESS EXCLUSIVE MODE`)
  let ended: Promise<void> | null = null
  return () => {
    ended ??= other.end()
    return ended
  }
}
