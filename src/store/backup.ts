import { closeSync, existsSync, openSync, renameSync, rmSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import type { RowCounts } from '../engine/ports.ts'
import { type Address, readAddress } from './address.ts'
import { codeOf, StoreProblem } from './problem.ts'
import { countRows, isSound, mustBeOurs } from './sound.ts'
import { fileProblem } from './sqlite.ts'
import { syncPath } from './sync.ts'

/** The setting that holds when the latest backup was made, as an ISO instant. */
export const LAST_BACKUP = 'last-backup'

// Longer than the bot holds the file for one piece of work.
const BUSY_TIMEOUT_MS = 5_000
const PARTS = ['', '-journal', '-wal', '-shm']

/** A backup that was made and looked through. */
export interface Backup {
  readonly counts: RowCounts
  /** False where the database itself could not take the note of it. */
  readonly noted: boolean
}

/**
 * Copies a SQLite database into a new file (mode 0600) while the bot may run, and checks the copy. It is written under
 * a passing name and gets its own once it is whole and on the disk.
 * @throws StoreProblem in one sentence with the mend: a server's database, a file that is there already, a folder
 * that cannot be written, a copy that is not sound
 */
export async function backUp(url: string, file: string, now: Date): Promise<Backup> {
  const { path } = mustBeFile(readAddress(url))
  const target = resolve(file)
  if (!existsSync(path))
    throw new StoreProblem(`There is no database at ${path}: name the bot's own with --database file:PATH.`)
  if (existsSync(target))
    throw new StoreProblem(`${target} is there already and is left as it is: name a new file.`)
  const passing = `${target}.${process.pid}.part`
  try {
    makeEmpty(passing)
    await copyInto(path, passing)
    const counts = finish(passing, now)
    syncPath(passing)
    renameSync(passing, target)
    syncPath(dirname(target))
    return { counts, noted: note(path, now) }
  } catch (error) {
    throw error instanceof StoreProblem ? error : targetProblem(error, target)
  } finally {
    removeFile(passing)
  }
}

function mustBeFile(address: Address): { path: string } {
  if (address.kind === 'sqlite') return address
  throw new StoreProblem(
    'This copies a SQLite file; a PostgreSQL database is copied by its own tools: pg_dump --format=custom --file=FILE with the address in DATABASE_URL.',
  )
}

/** Removes a SQLite file and what may lie beside it. */
export function removeFile(path: string): void {
  for (const part of PARTS) rmSync(path + part, { force: true })
}

/** SQLite would make the file readable by others. */
const makeEmpty = (path: string): void => closeSync(openSync(path, 'wx', 0o600))

async function copyInto(path: string, passing: string): Promise<void> {
  let db: SqliteDatabase.Database | null = null
  try {
    db = new SqliteDatabase(path, { fileMustExist: true, timeout: BUSY_TIMEOUT_MS })
    mustBeOurs(db, path)
    // one view of the rows throughout: otherwise every write of the bot would make the copy begin anew
    db.exec('BEGIN')
    db.prepare('SELECT count(*) FROM "sqlite_master"').get()
    await db.backup(passing)
  } catch (error) {
    if (error instanceof StoreProblem) throw error
    // what the driver says of the new file names no database
    throw codeOf(error).startsWith('SQLITE_FULL') ? error : fileProblem(error, path)
  } finally {
    db?.close()
  }
}

/** Makes one plain file of the copy, notes when it was made, and checks it. */
function finish(passing: string, now: Date): RowCounts {
  const db = new SqliteDatabase(passing, { fileMustExist: true })
  try {
    db.pragma('journal_mode = DELETE')
    setLast(db, now)
    if (!isSound(db))
      throw new StoreProblem(
        'The copy is not sound, so none was kept: run ebb doctor, and keep the backups that you have.',
      )
    return countRows(db)
  } finally {
    db.close()
  }
}

const setLast = (db: SqliteDatabase.Database, now: Date): unknown =>
  db
    .prepare('INSERT OR REPLACE INTO "Setting" ("key", "value") VALUES (?, ?)')
    .run(LAST_BACKUP, now.toISOString())

/** The database remembers its latest backup for `ebb doctor`; one that cannot be written has been copied all the same. */
function note(path: string, now: Date): boolean {
  let db: SqliteDatabase.Database | null = null
  try {
    db = new SqliteDatabase(path, { fileMustExist: true, timeout: BUSY_TIMEOUT_MS })
    setLast(db, now)
    return true
  } catch {
    return false
  } finally {
    db?.close()
  }
}

function targetProblem(error: unknown, target: string): StoreProblem {
  const code = codeOf(error)
  const say = (what: string): StoreProblem => new StoreProblem(what, { cause: error })
  if (code === 'ENOENT' || code === 'ENOTDIR')
    return say(`There is no folder ${dirname(target)}: make it first, closed to others.`)
  if (code === 'ENOSPC' || code === 'SQLITE_FULL')
    return say(`The disk that holds ${dirname(target)} is full: free some space, or name another folder.`)
  return say(
    `${target} cannot be written (${code || 'unknown reason'}): give this user write access to its folder, or name another.`,
  )
}
