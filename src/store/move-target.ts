import type { Address } from './address.ts'
import type { Database } from './database.ts'
import { migratePostgresql } from './migrate-postgresql.ts'
import { migrateSqlite } from './migrate-sqlite.ts'
import { HALF_MOVED, type MoveNote, readNote, writeNote } from './move-note.ts'
import { countOf, MOVED } from './move-tables.ts'
import { openPostgresql } from './postgresql.ts'
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
        if ((await countOf(db, table, HALF_MOVED)) > 0)
          throw new StoreProblem('The database of --to holds rows already: name an empty one.')
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
  if (address.kind === 'postgresql') {
    await migratePostgresql(address.url, address.server)
    return openPostgresql(address.url)
  }
  prepareFile(address.path)
  migrateSqlite(address.path)
  return openSqlite(address.path)
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
