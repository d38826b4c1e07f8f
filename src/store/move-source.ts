import { existsSync, realpathSync } from 'node:fs'
import { setTimeout as pause } from 'node:timers/promises'
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3'
import { PrismaPg } from '@prisma/adapter-pg'
import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import { PrismaClient as PostgresClient } from '../generated/postgresql/client.ts'
import { PrismaClient } from '../generated/sqlite/client.ts'
import type { Address } from './address.ts'
import { type Db, ERRORS } from './database.ts'
import { readHistory as historyOfServer } from './migrate-postgresql.ts'
import { readHistory as historyOfFile } from './migrate-sqlite.ts'
import { type Applied, pendingMigrations, readMigrations } from './migrations.ts'
import { halfMoved, parseNote } from './move-note.ts'
import { HALF_MOVED } from './move-tables.ts'
import { CONNECT_TIMEOUT_MS, WRITER_LOCK } from './postgresql.ts'
import { StoreProblem } from './problem.ts'
import { notAlone } from './replaced.ts'
import { isSound, mustBeOurs } from './sound.ts'

// So long another connection may be one that is just being closed.
const PATIENCE_MS = 2_000

/** A database that is read, and cannot be written, by the connection that reads it. */
export interface MoveSource {
  readonly db: Db
  /** @throws StoreProblem where another program has come to use it meanwhile */
  mustBeAlone(): Promise<void>
  close(): Promise<void>
}

/** The same name for the same database, without user and password. */
export function nameOf(address: Address): string {
  if (address.kind === 'sqlite')
    return `file:${existsSync(address.path) ? realpathSync(address.path) : address.path}`
  const { host, pathname } = new URL(address.url)
  return `postgresql://${host}${pathname}`
}

/**
 * Opens the database that is moved. While a bot uses it the move is refused: what that wrote afterwards would stay
 * behind, and two bots would answer the same people. Until the end nobody else can read a SQLite file, nor write to a
 * server in a transaction.
 * @throws StoreProblem in one sentence with the mend
 */
export const openSource = (address: Address): Promise<MoveSource> =>
  address.kind === 'sqlite' ? openFile(address.path) : openServer(address.url, address.server)

// A lock that nobody else has the file open for, and no statement that writes; the log of writes that a killed bot
// left is folded in at the end, as at every opening.
const ALONE = 'PRAGMA query_only = ON; PRAGMA locking_mode = EXCLUSIVE;'
const BUSY_TIMEOUT_MS = 500

async function openFile(path: string): Promise<MoveSource> {
  if (!existsSync(path))
    throw new StoreProblem(`There is no database at ${path}: name the bot's own with --from file:PATH.`)
  lookAt(path)
  const factory = new PrismaBetterSqlite3({ url: path, timeout: BUSY_TIMEOUT_MS, fileMustExist: true })
  const connect = factory.connect.bind(factory)
  factory.connect = async () => {
    const connected = await connect()
    await connected.executeScript(ALONE)
    return connected
  }
  const db = new PrismaClient({ adapter: factory, errorFormat: ERRORS })
  try {
    // the lock is taken with the first look, and stays
    await db.setting.count()
  } catch (error) {
    await db.$disconnect()
    throw error
  }
  return { db, mustBeAlone: () => Promise.resolve(), close: () => db.$disconnect() }
}

function lookAt(path: string): void {
  let db: SqliteDatabase.Database | null = null
  try {
    db = new SqliteDatabase(path, { fileMustExist: true, timeout: BUSY_TIMEOUT_MS })
    db.exec(ALONE)
    mustBeOurs(db, path)
    mustBeUpToDate(path, pendingMigrations(readMigrations('sqlite'), historyOfFile(db, path)))
    if (!isSound(db))
      throw new StoreProblem(
        `The database ${path} is damaged: put back the latest backup with ebb restore FILE --replace, then move it.`,
      )
    mustBeWhole(db.prepare('SELECT "value" FROM "Setting" WHERE "key" = ?').pluck().get(HALF_MOVED))
  } catch (error) {
    throw error instanceof StoreProblem ? error : notAlone(error, path)
  } finally {
    db?.close()
  }
}

async function openServer(url: string, server: string): Promise<MoveSource> {
  const connection = { connectionString: url, connectionTimeoutMillis: CONNECT_TIMEOUT_MS }
  const guard = new pg.Client(connection)
  // unheard, it would end the process; what is asked next fails
  guard.on('error', () => undefined)
  const pool = new pg.Pool({ ...connection, options: '-c default_transaction_read_only=on', max: 1 })
  pool.on('error', () => undefined)
  const db = new PostgresClient({ adapter: new PrismaPg(pool), errorFormat: ERRORS })
  const close = async (): Promise<void> => {
    await db.$disconnect()
    await pool.end()
    await guard.end().catch(() => undefined)
  }
  try {
    await guard.connect()
    await mustBeTheOnlyOne(guard, server, 1)
    await guard.query('SELECT pg_advisory_lock($1)', [WRITER_LOCK])
    const history = await historyOfServer(guard, server)
    mustBeOursOn(server, history)
    mustBeUpToDate(`at ${server}`, pendingMigrations(readMigrations('postgresql'), history))
    mustBeWhole((await db.setting.findUnique({ where: { key: HALF_MOVED } }))?.value)
  } catch (error) {
    await close()
    throw error
  }
  return { db: db as unknown as Db, mustBeAlone: () => mustBeTheOnlyOne(guard, server, 2), close }
}

/** @param own connections of this program */
async function mustBeTheOnlyOne(client: pg.Client, server: string, own: number): Promise<void> {
  // the server may count one that has just been closed a little longer
  for (const late = performance.now() + PATIENCE_MS; (await connections(client)) > own; await pause(50))
    if (performance.now() > late)
      throw new StoreProblem(
        `Another program is connected to the database at ${server}: stop the bot, close what else is connected to it, then run this again.`,
      )
}

async function connections(client: pg.Client): Promise<number> {
  const { rows } = await client.query<{ n: number }>(
    `SELECT count(*)::int AS "n" FROM pg_stat_activity
     WHERE datname = current_database() AND backend_type = 'client backend'`,
  )
  return rows[0]!.n
}

function mustBeOursOn(server: string, history: readonly Applied[]): void {
  const [first] = readMigrations('postgresql')
  if (history.some((row) => row.migration_name === first?.name)) return
  throw new StoreProblem(`The database at ${server} is not one of Ebbline: name another with --from.`)
}

function mustBeUpToDate(where: string, pending: readonly unknown[]): void {
  if (pending.length === 0) return
  throw new StoreProblem(
    `The database ${where} is of an older version: start the bot of this version on it once, stop it, then move it.`,
  )
}

function mustBeWhole(value: unknown): void {
  const problem = halfMoved(parseNote(value as string | undefined))
  if (problem !== null) throw new StoreProblem(problem)
}
