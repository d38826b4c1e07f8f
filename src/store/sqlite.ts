import { chmodSync, closeSync, existsSync, mkdirSync, openSync, statSync } from 'node:fs'
import { dirname } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3'
import { Prisma, PrismaClient } from '../generated/sqlite/client.ts'
import type { Seal } from '../seal.ts'
import { type Database, type Db, ERRORS, TRANSACTION } from './database.ts'
import { keepPrepared } from './prepared.ts'
import { codeOf, StoreProblem } from './problem.ts'
import { createQueue } from './queue.ts'
import { sealing } from './sealed-columns.ts'

// The driver waits for another process's lock without letting anything else run, and a client with an urgent
// sign must be answered meanwhile: so it waits shortly, and the longer wait is made of pauses between tries.
const BUSY_TIMEOUT_MS = 10
const BUSY_PAUSE_MS = 100
const BUSY_TRIES = 40

/** How far SQLite waits for the disk: until all outlives a power cut, or, in a play, until it outlives the process. */
export type Sync = 'FULL' | 'OFF'

// FULL: what was acknowledged is on the disk even after a power cut. secure_delete: erased words are overwritten.
export const PRAGMAS = `
  PRAGMA busy_timeout = ${BUSY_TIMEOUT_MS};
  PRAGMA journal_mode = WAL;
  PRAGMA synchronous = FULL;
  PRAGMA foreign_keys = ON;
  PRAGMA secure_delete = ON;`

/**
 * Makes the file (mode 0600) and its folder (0700) where they are missing, and closes the file to others.
 * @throws StoreProblem where that is not allowed.
 */
export function prepareFile(path: string): void {
  const folder = dirname(path)
  try {
    if (!existsSync(folder)) mkdirSync(folder, { recursive: true, mode: 0o700 })
    closeSync(openSync(path, 'a', 0o600))
    chmodSync(path, 0o600)
  } catch (error) {
    throw fileProblem(error, path)
  }
}

/** Says what is wrong with a database file, and the mend. */
export function fileProblem(error: unknown, path: string): StoreProblem {
  const mend = 'choose another in DATABASE_URL'
  const code = codeOf(error)
  const say = (what: string): StoreProblem => new StoreProblem(what, { cause: error })
  if (code === 'EISDIR')
    return say(`The database path ${path} is a folder: name a file in it in DATABASE_URL.`)
  if (code === 'ENOTDIR' || code === 'EEXIST') {
    return say(`The database ${path} cannot be made, because a part of its path is a file: ${mend}.`)
  }
  if (['EACCES', 'EPERM', 'EROFS', 'SQLITE_READONLY', 'SQLITE_CANTOPEN'].some((c) => code.startsWith(c))) {
    return say(
      `The database ${path} cannot be written: give this user write access to it and its folder, or ${mend}.`,
    )
  }
  // the last: a full disk has no room for the index of the log of writes
  if (['ENOSPC', 'SQLITE_FULL', 'SQLITE_IOERR_SHMSIZE'].includes(code)) {
    return say(`The disk that holds ${path} is full: free some space and start again.`)
  }
  if (code === 'SQLITE_NOTADB') {
    return say(
      `${path} is not a SQLite database: ${mend}, or move it away and put back a backup with ebb restore FILE.`,
    )
  }
  if (code.startsWith('SQLITE_CORRUPT')) {
    return say(
      `The database ${path} is damaged: put back the latest backup with ebb restore FILE --replace and start again.`,
    )
  }
  if (code.startsWith('SQLITE_BUSY')) {
    return say(`Another program holds the database ${path}: end it and start again.`)
  }
  return say(`The database ${path} cannot be opened (${code || 'unknown reason'}): ${mend}.`)
}

/** Opens the client on a file that is there and migrated. */
export function openSqlite(path: string, seal: Seal | null = null, sync: Sync = 'FULL'): Database {
  const factory = new PrismaBetterSqlite3({ url: path, timeout: BUSY_TIMEOUT_MS })
  const connect = factory.connect.bind(factory)
  let connected: Awaited<ReturnType<typeof connect>> | null = null
  factory.connect = async () => {
    connected = await connect()
    keepPrepared(connected)
    await connected.executeScript(PRAGMAS)
    if (sync !== 'FULL') await connected.executeScript(`PRAGMA synchronous = ${sync}`)
    return connected
  }
  const plain = new PrismaClient({ adapter: factory, errorFormat: ERRORS })
  const client = seal === null ? plain : sealing(plain, seal)
  const queue = createQueue()
  // who waits for another process's lock keeps writers behind it in order, but lets others read
  const writers = createQueue()
  const stays = whileThere(path)

  return {
    kind: 'sqlite',
    seal,
    use: (work) => patiently(() => queue.run(() => stays(() => work(client)))),
    transaction: (work) =>
      writers.run(() => patiently(() => queue.run(() => stays(() => oneTransaction(client, work))))),
    async scrub() {
      await queue.run(() => client.$queryRaw`PRAGMA wal_checkpoint(TRUNCATE)`)
    },
    async close() {
      await writers.close()
      await queue.close()
      await client.$disconnect()
    },
    abandon() {
      void writers.close()
      void queue.close()
      void connected?.dispose()
    },
  }
}

/**
 * Refuses work once the file has been moved away or another stands in its place: the connection would go on writing
 * into a file that nobody can find any more.
 */
function whileThere(path: string): <T>(work: () => Promise<T>) => Promise<T> {
  const opened = statSync(path)
  return async (work) => {
    const now = statSync(path, { throwIfNoEntry: false })
    if (now?.ino === opened.ino && now.dev === opened.dev) return work()
    throw new StoreProblem(
      `The database ${path} is not there any more: put it back, or put back a backup with ebb restore FILE, and start again.`,
    )
  }
}

function oneTransaction<T>(client: PrismaClient, work: (db: Db) => Promise<T>): Promise<T> {
  return client.$transaction(async (db) => {
    // Changes nothing, but takes the write lock before anything is read: a transaction that reads first and
    // then finds that another process wrote meanwhile could not go on.
    await db.$executeRaw`UPDATE "Setting" SET "value" = "value" WHERE "key" = ''`
    return work(db)
  }, TRANSACTION)
}

/** Tries again while another process holds the file; safe because a refused piece of work left nothing behind. */
async function patiently<T>(work: () => Promise<T>): Promise<T> {
  for (let tries = 1; ; tries++) {
    try {
      return await work()
    } catch (error) {
      if (!isBusy(error) || tries === BUSY_TRIES) throw error
      await pause(BUSY_PAUSE_MS)
    }
  }
}

/** The client reports a locked file in several ways; the driver's own word for it is in all of them. */
function isBusy(error: unknown): boolean {
  if (!(error instanceof Prisma.PrismaClientKnownRequestError)) return false
  const driver = error.meta?.driverAdapterError as { cause?: { originalCode?: string } } | undefined
  return driver?.cause?.originalCode?.startsWith('SQLITE_BUSY') ?? error.code === 'P1008'
}
