import { existsSync, statfsSync } from 'node:fs'
import { dirname } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import { readAddress } from './address.ts'
import { LAST_BACKUP } from './backup.ts'
import { readHistory as historyOfServer } from './migrate-postgresql.ts'
import { readHistory as historyOfFile } from './migrate-sqlite.ts'
import { pendingMigrations, readMigrations } from './migrations.ts'
import { CONNECT_TIMEOUT_MS, serverProblem } from './postgresql.ts'
import { StoreProblem } from './problem.ts'
import { isSound, tablesIn } from './sound.ts'
import { fileProblem } from './sqlite.ts'

// Longer than the bot holds the file for one piece of work.
const BUSY_TIMEOUT_MS = 5_000

/** A database as it was found; nothing in it is changed by looking. */
export interface Inspection {
  /** Rows and pages hang together. */
  readonly sound: boolean
  /** Changes of the tables that the next start of the bot will make. */
  readonly pending: number
  /** A write was begun, and taken back. */
  readonly writable: boolean
  /** Bytes left on the disk of the file; null for a server, whose disk is its own. */
  readonly freeBytes: number | null
  /** When `ebb backup` last copied it, as an ISO instant; null where that never was, or is not known. */
  readonly lastBackup: string | null
}

/** @throws StoreProblem where there is no database, or it cannot be used, with the mend */
export async function inspectDatabase(url: string): Promise<Inspection> {
  const address = readAddress(url)
  if (address.kind === 'postgresql') return inspectServer(address.url, address.server)
  if (!existsSync(address.path))
    throw new StoreProblem(
      `There is no database at ${address.path} yet: start the bot once, or name its own with --database file:PATH.`,
    )
  return inspectFile(address.path)
}

function inspectFile(path: string): Inspection {
  let db: SqliteDatabase.Database | null = null
  try {
    db = new SqliteDatabase(path, { fileMustExist: true, timeout: BUSY_TIMEOUT_MS })
    return {
      sound: isSound(db),
      pending: pendingMigrations(readMigrations('sqlite'), historyOfFile(db, path)).length,
      writable: canWrite(db),
      freeBytes: freeOn(dirname(path)),
      lastBackup: lastBackupOf(db),
    }
  } catch (error) {
    throw error instanceof StoreProblem ? error : fileProblem(error, path)
  } finally {
    db?.close()
  }
}

function lastBackupOf(db: SqliteDatabase.Database): string | null {
  if (!tablesIn(db).includes('Setting')) return null
  const value = db.prepare('SELECT "value" FROM "Setting" WHERE "key" = ?').pluck().get(LAST_BACKUP)
  return typeof value === 'string' ? value : null
}

function freeOn(folder: string): number {
  const { bavail, bsize } = statfsSync(folder)
  return bavail * bsize
}

function canWrite(db: SqliteDatabase.Database): boolean {
  try {
    db.exec('BEGIN IMMEDIATE')
    // a lock alone does not show it: something is written, and taken back
    db.exec('CREATE TABLE "_written_by_a_check" ("n" INTEGER)')
    return true
  } catch {
    return false
  } finally {
    if (db.inTransaction) db.exec('ROLLBACK')
  }
}

async function inspectServer(url: string, server: string): Promise<Inspection> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: CONNECT_TIMEOUT_MS })
  // unheard, the end of the line would end the process; whatever is asked then tells of it
  client.on('error', () => undefined)
  try {
    await client.connect()
    const history = await historyOfServer(client, server)
    const pending = pendingMigrations(readMigrations('postgresql'), history).length
    const { rows } = await client.query<{ recovering: boolean }>('SELECT pg_is_in_recovery() AS recovering')
    return {
      sound: true,
      pending,
      writable: rows[0]?.recovering === false,
      freeBytes: null,
      lastBackup: null,
    }
  } catch (error) {
    throw error instanceof StoreProblem ? error : serverProblem(error, server)
  } finally {
    await client.end().catch(() => undefined)
  }
}
