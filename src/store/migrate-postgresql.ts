import pg from 'pg'
import {
  type Applied,
  HISTORY_COLUMNS,
  historyValues,
  type Migration,
  pendingMigrations,
  readMigrations,
  strangeTables,
} from './migrations.ts'
import { CONNECT_TIMEOUT_MS, serverProblem } from './postgresql.ts'
import { StoreProblem } from './problem.ts'

// The number under which Prisma's command line locks too, so that the two never change tables at once.
const MIGRATION_LOCK = 72_707_369

// As Prisma's command line makes it, so that it agrees afterwards.
const HISTORY_TABLE = `
  CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
    "id"                    VARCHAR(36) PRIMARY KEY NOT NULL,
    "checksum"              VARCHAR(64) NOT NULL,
    "finished_at"           TIMESTAMPTZ,
    "migration_name"        VARCHAR(255) NOT NULL,
    "logs"                  TEXT,
    "rolled_back_at"        TIMESTAMPTZ,
    "started_at"            TIMESTAMPTZ NOT NULL DEFAULT now(),
    "applied_steps_count"   INTEGER NOT NULL DEFAULT 0
  )`

/**
 * Brings the tables of a PostgreSQL database up to date: all missing steps in one transaction, or none.
 * @throws StoreProblem where the server cannot be used or the history does not fit.
 */
export async function migratePostgresql(
  url: string,
  server: string,
  migrations = readMigrations('postgresql'),
): Promise<void> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: CONNECT_TIMEOUT_MS })
  // unheard, the end of the line would end the process; whatever is asked then tells of it
  client.on('error', () => undefined)
  try {
    await client.connect()
    await inTransaction(client, () => applyMissing(client, server, migrations))
  } catch (error) {
    throw error instanceof StoreProblem ? error : serverProblem(error, server)
  } finally {
    await client.end().catch(() => undefined)
  }
}

async function inTransaction(client: pg.Client, work: () => Promise<void>): Promise<void> {
  await client.query('BEGIN')
  try {
    await client.query('SELECT pg_advisory_xact_lock($1)', [MIGRATION_LOCK])
    await work()
    await client.query('COMMIT')
  } catch (error) {
    await client.query('ROLLBACK').catch(() => undefined)
    throw error
  }
}

async function applyMissing(
  client: pg.Client,
  server: string,
  migrations: readonly Migration[],
): Promise<void> {
  const pending = pendingMigrations(migrations, await readHistory(client, server))
  if (pending.length === 0) return
  await client.query(HISTORY_TABLE)
  for (const migration of pending) {
    await client.query(migration.sql)
    await client.query(
      `INSERT INTO "_prisma_migrations" (${HISTORY_COLUMNS}) VALUES ($1, $2, $3, $4, $5, $6)`,
      historyValues(migration, new Date().toISOString()),
    )
  }
}

export async function readHistory(client: pg.Client, server: string): Promise<Applied[]> {
  const found = await client.query<{ tablename: string }>(
    'SELECT tablename FROM pg_tables WHERE schemaname = current_schema()',
  )
  const tables = found.rows.map((row) => row.tablename)
  if (tables.length === 0) return []
  if (!tables.includes('_prisma_migrations')) throw strangeTables(`The PostgreSQL database at ${server}`)
  return (await client.query<Applied>('SELECT * FROM "_prisma_migrations"')).rows
}
