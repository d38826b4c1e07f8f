import { copyFileSync, existsSync, linkSync, renameSync } from 'node:fs'
import { dirname } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import { fromSetting } from './erasures.ts'
import type { Erasure } from './ledger.ts'
import { codeOf, StoreProblem } from './problem.ts'
import { fileProblem } from './sqlite.ts'
import { syncPath } from './sync.ts'

/** A database that is about to be replaced, held so that nobody else can open it meanwhile. */
export interface Replaced {
  readonly path: string
  /** Where it is kept. */
  readonly aside: string
  readonly isThere: boolean
  /** The erasures that it knows of. */
  readonly erasures: readonly Erasure[]
  release(): void
}

// The bot gives the lock of a write back sooner; a bot that runs keeps the file open all the time.
const BUSY_TIMEOUT_MS = 500
const LOG_PARTS = ['-wal', '-shm', '-journal']

/**
 * Takes a SQLite database for oneself alone, its log of writes folded in. SQLite leaves the mode of that log only where
 * nobody else has the file open, which tells whether the bot runs.
 * @throws StoreProblem where another program has it open, or it is too damaged to be asked
 */
export function takeAlone(path: string, now: Date): Replaced {
  const aside = `${path}.replaced-${now.toISOString().slice(0, 19).replaceAll(':', '')}Z`
  if (existsSync(aside)) throw new StoreProblem(`${aside} is there already: try again in a second.`)
  if (!existsSync(path)) return { path, aside, isThere: false, erasures: [], release: () => undefined }
  let db: SqliteDatabase.Database | null = null
  try {
    db = new SqliteDatabase(path, { fileMustExist: true, timeout: BUSY_TIMEOUT_MS })
    db.pragma('journal_mode = DELETE')
    db.exec('BEGIN EXCLUSIVE')
    const held = db
    return { path, aside, isThere: true, erasures: erasuresIn(held), release: () => void held.close() }
  } catch (error) {
    db?.close()
    throw notAlone(error, path)
  }
}

/** Says that another program has the file open, or what else keeps it from being had alone, and the mend. */
export function notAlone(error: unknown, path: string): StoreProblem {
  const code = codeOf(error)
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED'))
    return new StoreProblem(
      `Another program has ${path} open, so nothing was changed: stop the bot, then run this again.`,
      { cause: error },
    )
  if (code === 'SQLITE_NOTADB' || code.startsWith('SQLITE_CORRUPT'))
    return new StoreProblem(
      `${path} is too damaged to tell whether the bot runs: stop the bot, move ${path} away, then run this again.`,
      { cause: error },
    )
  return fileProblem(error, path)
}

/** Those that it can still tell of; an empty database, or a damaged one, tells of none. */
function erasuresIn(db: SqliteDatabase.Database): Erasure[] {
  try {
    const rows = db.prepare(`SELECT "key", "value" FROM "Setting" WHERE "key" LIKE 'erased:%'`).all()
    return (rows as { key: string; value: string }[]).map(fromSetting)
  } catch {
    return []
  }
}

/**
 * Keeps the old database under its dated name; at its own it stays until another is renamed over it. A log of writes
 * whose database is gone is moved too: SQLite would write it into the new one.
 * @returns where the old database lies; null where there was none
 */
export function moveAside({ path, aside, isThere }: Replaced): string | null {
  for (const part of LOG_PARTS) if (existsSync(path + part)) renameSync(path + part, aside + part)
  if (!isThere) return null
  try {
    linkSync(path, aside)
  } catch {
    // a disk without second names
    copyFileSync(path, aside)
    syncPath(aside)
  }
  syncPath(dirname(path))
  return aside
}
