import SqliteDatabase from 'better-sqlite3'
import {
  type Applied,
  HISTORY_COLUMNS,
  historyValues,
  type Migration,
  pendingMigrations,
  readMigrations,
  strangeTables,
} from './migrations.ts'
import { StoreProblem } from './problem.ts'
import { fileProblem } from './sqlite.ts'

// At start nothing else runs yet, so a simple wait for another process's lock does no harm.
const START_TIMEOUT_MS = 10_000

// As Prisma's command line makes it, so that it agrees afterwards.
const HISTORY_TABLE = `
  CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
    "id"                    TEXT PRIMARY KEY NOT NULL,
    "checksum"              TEXT NOT NULL,
    "finished_at"           DATETIME,
    "migration_name"        TEXT NOT NULL,
    "logs"                  TEXT,
    "rolled_back_at"        DATETIME,
    "started_at"            DATETIME NOT NULL DEFAULT current_timestamp,
    "applied_steps_count"   INTEGER UNSIGNED NOT NULL DEFAULT 0
  )`

type Connection = SqliteDatabase.Database

/**
 * Brings the tables of a SQLite file up to date: all missing steps in one transaction, or none.
 * @throws StoreProblem where the file cannot be used or its history does not fit.
 */
export function migrateSqlite(path: string, migrations = readMigrations('sqlite')): void {
  let db: Connection | null = null
  try {
    db = new SqliteDatabase(path, { timeout: START_TIMEOUT_MS })
    // WAL first: it needs a moment without other users, and shows a file that is no database.
    db.pragma('journal_mode = WAL')
    if (pendingMigrations(migrations, readHistory(db, path)).length > 0) applyMissing(db, path, migrations)
  } catch (error) {
    throw error instanceof StoreProblem ? error : fileProblem(error, path)
  } finally {
    db?.close()
  }
}

function applyMissing(db: Connection, path: string, migrations: readonly Migration[]): void {
  // A step may rebuild a table that others refer to; inside a transaction this switch would do nothing.
  db.pragma('foreign_keys = OFF')
  db.exec('BEGIN IMMEDIATE')
  try {
    // read again under the lock: another process may have done it meanwhile
    const pending = pendingMigrations(migrations, readHistory(db, path))
    db.exec(HISTORY_TABLE)
    for (const migration of pending) applyOne(db, migration)
    const broken = db.pragma('foreign_key_check') as unknown[]
    if (broken.length > 0) throw new StoreProblem(wouldBreak(path, pending))
    db.exec('COMMIT')
  } catch (error) {
    if (db.inTransaction) db.exec('ROLLBACK')
    throw error
  }
}

const wouldBreak = (path: string, pending: readonly Migration[]): string =>
  `The change ${pending.at(-1)?.name} would leave rows in ${path} that refer to nothing, so nothing was changed: put back the latest backup.`

function applyOne(db: Connection, migration: Migration): void {
  db.exec(migration.sql)
  const at = new Date().toISOString().replace('Z', '+00:00')
  db.prepare(`INSERT INTO "_prisma_migrations" (${HISTORY_COLUMNS}) VALUES (?, ?, ?, ?, ?, ?)`).run(
    ...historyValues(migration, at),
  )
}

export function readHistory(db: Connection, path: string): Applied[] {
  const tables = db
    .prepare(`SELECT "name" FROM "sqlite_master" WHERE "type" = 'table' AND "name" NOT LIKE 'sqlite_%'`)
    .pluck()
    .all()
  if (tables.length === 0) return []
  if (!tables.includes('_prisma_migrations')) throw strangeTables(path)
  return db.prepare('SELECT * FROM "_prisma_migrations"').all() as Applied[]
}
