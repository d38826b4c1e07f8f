import { createHash, randomUUID } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { StoreProblem } from './problem.ts'
import { packageRoot } from './root.ts'

/** One step of the tables, as Prisma's command line writes it. */
export interface Migration {
  readonly name: string
  readonly sql: string
  /** SHA-256 of the file, as the command line counts it. */
  readonly checksum: string
}

/** A row of Prisma's own `_prisma_migrations`. */
export interface Applied {
  readonly migration_name: string
  readonly checksum: string
  readonly finished_at: unknown
  readonly rolled_back_at: unknown
}

/** A new row for that table, in the order of its columns below. */
export const HISTORY_COLUMNS =
  '"id", "checksum", "finished_at", "migration_name", "started_at", "applied_steps_count"'
export const historyValues = (
  migration: Migration,
  at: string,
): [string, string, string, string, string, number] => [
  randomUUID(),
  migration.checksum,
  at,
  migration.name,
  at,
  1,
]

/** The migrations of a database in their order, from the folder beside package.json unless another is given. */
export function readMigrations(
  kind: 'sqlite' | 'postgresql',
  folder = join(packageRoot(), 'prisma', kind, 'migrations'),
): Migration[] {
  return readdirSync(folder)
    .filter((name) => existsSync(join(folder, name, 'migration.sql')))
    .sort()
    .map((name) => {
      const file = readFileSync(join(folder, name, 'migration.sql'))
      return { name, sql: file.toString('utf8'), checksum: createHash('sha256').update(file).digest('hex') }
    })
}

/**
 * Those not applied yet.
 * @throws StoreProblem where the history does not fit: a step that failed half-way, that this version does not
 * know, or whose file is another now. Nothing is touched then.
 */
export function pendingMigrations(
  migrations: readonly Migration[],
  history: readonly Applied[],
): Migration[] {
  const known = new Map(migrations.map((migration) => [migration.name, migration]))
  const valid = history.filter((row) => row.rolled_back_at === null)
  for (const row of valid) {
    const name = row.migration_name
    if (row.finished_at === null) {
      throw new StoreProblem(
        `The database was left in the middle of the change ${name}: put back the backup from before it and start again.`,
      )
    }
    const migration = known.get(name)
    if (!migration) {
      throw new StoreProblem(
        `The database holds the change ${name}, which this version does not know: start the newer version that made it, or put back a backup from before.`,
      )
    }
    if (migration.checksum !== row.checksum) {
      throw new StoreProblem(
        `The file of the change ${name} is not the one that made this database: put back the original migration.sql.`,
      )
    }
  }
  const done = new Set(valid.map((row) => row.migration_name))
  return migrations.filter((migration) => !done.has(migration.name))
}

/** Told of a database that has tables but no history: it belongs to something else. */
export const strangeTables = (where: string): StoreProblem =>
  new StoreProblem(`${where} holds tables of another program: name an empty database in DATABASE_URL.`)
