import type SqliteDatabase from 'better-sqlite3'
import type { RowCounts } from '../engine/ports.ts'
import { readHistory } from './migrate-sqlite.ts'
import { readMigrations } from './migrations.ts'
import { StoreProblem } from './problem.ts'

type Connection = SqliteDatabase.Database

/** True where rows and pages hang together: SQLite's own check, and every row that another names is there. */
export function isSound(db: Connection): boolean {
  const found = db.pragma('integrity_check', { simple: true })
  return found === 'ok' && (db.pragma('foreign_key_check') as unknown[]).length === 0
}

/** @throws StoreProblem where the file holds the tables of another program, or none */
export function mustBeOurs(db: Connection, path: string): void {
  const [first] = readMigrations('sqlite')
  const history = tablesIn(db).includes('_prisma_migrations') ? readHistory(db, path) : []
  if (history.some((row) => row.migration_name === first?.name)) return
  throw new StoreProblem(`${path} is not a database of Ebbline: name another file.`)
}

/** Rows by the name of their table; those of the program itself are left out. */
export function countRows(db: Connection): RowCounts {
  const tables = tablesIn(db).filter((name) => !['_prisma_migrations', 'Setting', 'Lease'].includes(name))
  const counts = tables.map((name): [string, number] => {
    const rows = db.prepare(`SELECT count(*) FROM "${name}"`).pluck().get() as number
    return [name.charAt(0).toLowerCase() + name.slice(1), rows]
  })
  return Object.fromEntries(counts.filter(([, rows]) => rows > 0))
}

export const tablesIn = (db: Connection): string[] =>
  db
    .prepare(
      `SELECT "name" FROM "sqlite_master" WHERE "type" = 'table' AND "name" NOT LIKE 'sqlite_%' ORDER BY "name"`,
    )
    .pluck()
    .all() as string[]
