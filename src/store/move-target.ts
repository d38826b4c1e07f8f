import { statSync } from 'node:fs'
import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import type { Address } from './address.ts'
import type { Database } from './database.ts'
import { readHistory as historyOfServer, migratePostgresql } from './migrate-postgresql.ts'
import { readHistory as historyOfFile, migrateSqlite } from './migrate-sqlite.ts'
import { type Applied, pendingMigrations, readMigrations } from './migrations.ts'
import { type MoveNote, readNote, writeNote } from './move-note.ts'
import { countOf, HALF_MOVED, MOVED } from './move-tables.ts'
import { CONNECT_TIMEOUT_MS, openPostgresql } from './postgresql.ts'
import { StoreProblem } from './problem.ts'
import { openSqlite, prepareFile } from './sqlite.ts'

/** A database that is being filled. */
export interface MoveTarget {
  readonly database: Database
  /** How far an earlier run came. */
  readonly note: MoveNote
}

/**
 * Makes the tables where they are missing, and sees that nothing is in them but what an earlier run brought. From the
 * note on no bot starts on it.
 * @throws StoreProblem in one sentence with the mend: rows are there already, or half of another database
 */
export async function openTarget(address: Address, from: string): Promise<MoveTarget> {
  const database = await made(address)
  try {
    const note = await database.transaction(async (db) => {
      const found = await readNote(db)
      if (found !== null && found.from !== from)
        throw new StoreProblem(
          `The database of --to holds half of ${found.from}: go on from there, or name an empty one.`,
        )
      if (found !== null) return found
      for (const table of MOVED)
        if ((await countOf(db, table)) > 0)
          throw new StoreProblem(
            'The database of --to holds rows already, and not half of a move: name an empty one, or start the bot on it where a move has just ended.',
          )
      const first: MoveNote = { from, table: MOVED[0], after: null, rows: 0 }
      await writeNote(db, null, first)
      return first
    })
    return { database, note }
  } catch (error) {
    await database.close()
    throw error
  }
}

async function made(address: Address): Promise<Database> {
  mustBeNew(address.kind, await historyOf(address))
  if (address.kind === 'postgresql') {
    await migratePostgresql(address.url, address.server)
    return openPostgresql(address.url)
  }
  prepareFile(address.path)
  migrateSqlite(address.path)
  return openSqlite(address.path)
}

async function historyOf(address: Address): Promise<Applied[]> {
  if (address.kind === 'postgresql')
    return onServer(address.url, (client) => historyOfServer(client, address.server))
  const { path } = address
  if (!statSync(path, { throwIfNoEntry: false })?.isFile()) return []
  const db = new SqliteDatabase(path)
  try {
    return historyOfFile(db, path)
  } finally {
    db.close()
  }
}

async function onServer<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: CONNECT_TIMEOUT_MS })
  try {
    await client.connect()
    return await work(client)
  } finally {
    await client.end().catch(() => undefined)
  }
}

/** @throws StoreProblem before the tables of a database that is in use elsewhere would be brought up to date */
function mustBeNew(kind: Address['kind'], history: readonly Applied[]): void {
  if (history.length === 0 || pendingMigrations(readMigrations(kind), history).length === 0) return
  throw new StoreProblem('The database of --to is of an older version: name an empty one.')
}

/** The last step: the database is one like any other from here on. */
export async function finish({ database }: MoveTarget, note: MoveNote): Promise<void> {
  if (database.kind === 'postgresql')
    // without figures about so many new rows the first hours would be planned as if the tables were empty
    await database.use((db) => db.$executeRaw`ANALYZE`)
  await database.transaction(async (db) => {
    await writeNote(db, note, note)
    await db.setting.deleteMany({ where: { key: HALF_MOVED } })
  })
  await database.scrub()
}
