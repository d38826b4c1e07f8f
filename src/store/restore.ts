import { copyFileSync, existsSync, realpathSync, renameSync, statSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import type { RowCounts } from '../engine/ports.ts'
import type { Seal } from '../seal.ts'
import { type Address, readAddress } from './address.ts'
import { removeFile } from './backup.ts'
import { type Settled, settleErasures } from './erasures.ts'
import { ledgerPlace } from './ledger.ts'
import { migrateSqlite, readHistory } from './migrate-sqlite.ts'
import { pendingMigrations, readMigrations } from './migrations.ts'
import { codeOf, StoreProblem } from './problem.ts'
import { moveAside, type Replaced, takeAlone } from './replaced.ts'
import { mustOpen } from './sealed-mark.ts'
import { countRows, isSound, mustBeOurs } from './sound.ts'
import { fileProblem, openSqlite, prepareFile } from './sqlite.ts'
import { syncPath } from './sync.ts'

export interface Restored {
  readonly counts: RowCounts
  /** Changes of the tables that were made to the older backup. */
  readonly migrated: number
  readonly erasures: Settled
  /** Where the list of erasures was looked for and not found; null where it was there. */
  readonly noLedger: string | null
  /** Where the database that stood there before lies now; null where none did. */
  readonly kept: string | null
}

/** A database is there already, and it was not said that it may be replaced. */
export class WouldReplace extends StoreProblem {}

/**
 * Puts a backup in the place of the database: copied, checked, brought up to date, and without those who were erased
 * since. Until the last step, a rename, the old database stays as it was; afterwards it lies beside under a dated name.
 * @throws StoreProblem in one sentence with the mend: a server's database, one that a program has open, a backup that
 * is not sound, not of Ebbline, of a newer version, or sealed with a key that is not given
 */
export async function restore(
  url: string,
  file: string,
  options: { readonly replace: boolean; readonly now: Date; readonly seal?: Seal | null },
): Promise<Restored> {
  const address = mustBeFile(readAddress(url))
  const backup = mustBeBackup(resolve(file), address.path)
  if (existsSync(address.path) && !options.replace)
    throw new WouldReplace(
      `${address.path} is there already: add --replace, and it is kept beside under a dated name.`,
    )
  const old = takeAlone(address.path, options.now)
  try {
    return await putInPlace(address, { backup, seal: options.seal ?? null }, old)
  } finally {
    old.release()
  }
}

type File = Extract<Address, { kind: 'sqlite' }>

function mustBeFile(address: Address): File {
  if (address.kind === 'sqlite') return address
  throw new StoreProblem(
    'This puts back a SQLite file; into PostgreSQL a copy goes by its own tools: stop the bot, then pg_restore --clean --if-exists with the address in DATABASE_URL.',
  )
}

function mustBeBackup(backup: string, path: string): string {
  if (!existsSync(backup)) throw new StoreProblem(`There is no file ${backup}: name a backup.`)
  if (!statSync(backup).isFile()) throw new StoreProblem(`${backup} is not a file: name a backup.`)
  if (existsSync(path) && realpathSync(backup) === realpathSync(path))
    throw new StoreProblem(`${backup} is the database itself: name a backup.`)
  // what was written last lies in that other file, and would be missing without a word
  if (existsSync(`${backup}-wal`) && statSync(`${backup}-wal`).size > 0)
    throw new StoreProblem(
      `Beside ${backup} lies ${backup}-wal, so it is a database in use or copied by hand: make a backup of it with ebb backup first.`,
    )
  return backup
}

async function putInPlace(
  address: File,
  { backup, seal }: { readonly backup: string; readonly seal: Seal | null },
  old: Replaced,
): Promise<Restored> {
  const ledger = ledgerPlace(address, null)!
  const passing = `${address.path}.restoring`
  removeFile(passing)
  try {
    copyTo(backup, passing)
    const migrated = bringUpToDate(passing, backup)
    const erasures = await eraseAgain(passing, seal, { ledger, old })
    const counts = closeUp(passing)
    const kept = moveAside(old)
    renameSync(passing, address.path)
    syncPath(dirname(address.path))
    const noLedger = erasures.wasThere || old.erasures.length > 0 ? null : ledger
    return { counts, migrated, erasures, noLedger, kept }
  } finally {
    removeFile(passing)
  }
}

function copyTo(backup: string, passing: string): void {
  prepareFile(passing)
  try {
    copyFileSync(backup, passing)
  } catch (error) {
    if (codeOf(error) === 'EACCES')
      throw new StoreProblem(`${backup} cannot be read: give this user access to it.`, { cause: error })
    throw fileProblem(error, passing)
  }
}

/** Checks the copy before anything is changed in it; gives how many changes of the tables it needed. */
function bringUpToDate(passing: string, backup: string): number {
  const pending = onFile(passing, backup, (db) => {
    mustBeOurs(db, backup)
    if (!isSound(db)) throw damaged(backup)
    return pendingMigrations(readMigrations('sqlite'), readHistory(db, backup)).length
  })
  migrateSqlite(passing)
  return pending
}

const damaged = (backup: string): StoreProblem =>
  new StoreProblem(`The backup ${backup} is damaged, so nothing was changed: name an older one.`)

function onFile<T>(path: string, named: string, work: (db: SqliteDatabase.Database) => T): T {
  let db: SqliteDatabase.Database | null = null
  try {
    db = new SqliteDatabase(path, { fileMustExist: true })
    return work(db)
  } catch (error) {
    if (error instanceof StoreProblem) throw error
    const code = codeOf(error)
    if (code === 'SQLITE_NOTADB')
      throw new StoreProblem(`${named} is not a SQLite database: name a backup.`, { cause: error })
    throw code.startsWith('SQLITE_CORRUPT') ? damaged(named) : fileProblem(error, path)
  } finally {
    db?.close()
  }
}

/**
 * The database that is replaced may know of erasures that the ledger lacks. Whom a message is about stands in its
 * body, so the key is needed.
 */
async function eraseAgain(
  passing: string,
  seal: Seal | null,
  { ledger, old }: { readonly ledger: string; readonly old: Replaced },
): Promise<Settled> {
  const database = openSqlite(passing, seal)
  try {
    await mustOpen(database, seal)
    return await settleErasures(database, ledger, old.erasures)
  } finally {
    await database.close()
  }
}

/** One plain file, on the disk. */
function closeUp(passing: string): RowCounts {
  const counts = onFile(passing, passing, (db) => {
    db.pragma('journal_mode = DELETE')
    if (!isSound(db)) throw damaged(passing)
    return countRows(db)
  })
  syncPath(passing)
  return counts
}
