import { PrismaPg } from '@prisma/adapter-pg'
import pg from 'pg'
import { PrismaClient as PostgresClient } from '../generated/postgresql/client.ts'
import type { Seal } from '../seal.ts'
import { type Database, type Db, ERRORS, type PrismaClient, TRANSACTION } from './database.ts'
import { codeOf, StoreProblem } from './problem.ts'
import { createQueue } from './queue.ts'
import { sealing } from './sealed-columns.ts'

// Long enough for a server in another place, short enough that a start against a dead one does not seem to hang.
export const CONNECT_TIMEOUT_MS = 5_000

// The server ends a session whose transaction stands still for so long: its process sleeps or its machine is gone, and
// all other writers wait for it.
const STANDS_STILL_MS = 10_000

// A number of our own for the lock that every writing transaction holds.
export const WRITER_LOCK = 37_021_946

/** Says what is wrong with a PostgreSQL server, and the mend. */
export function serverProblem(error: unknown, server: string): StoreProblem {
  const code = codeOf(error)
  const say = (what: string): StoreProblem => new StoreProblem(what, { cause: error })
  if (code === '28P01' || code === '28000') {
    return say(`PostgreSQL at ${server} refused the user or password: correct them in DATABASE_URL.`)
  }
  if (code === '3D000') {
    return say(
      `PostgreSQL at ${server} has no database of that name: make it with createdb, or correct DATABASE_URL.`,
    )
  }
  if (code === '42501') {
    return say(`PostgreSQL at ${server} does not let this user make tables: grant CREATE on the schema.`)
  }
  if (code === '53100') {
    return say(`The disk of PostgreSQL at ${server} is full: free some space and start again.`)
  }
  if (code === '53300') {
    return say(
      `PostgreSQL at ${server} has no connection left: raise max_connections or end another program.`,
    )
  }
  return say(
    `PostgreSQL at ${server} cannot be reached (${code || 'no answer'}): start it, or correct DATABASE_URL.`,
  )
}

/** Opens the client on a server that is there and migrated. */
export function openPostgresql(url: string, seal: Seal | null = null): Database {
  const pool = new pg.Pool({
    ...{ connectionString: url, connectionTimeoutMillis: CONNECT_TIMEOUT_MS },
    idle_in_transaction_session_timeout: STANDS_STILL_MS,
  })
  // An idle connection that the server ends is replaced by the next use; unheard, it would end the process.
  pool.on('error', () => undefined)
  const connections = new Set<pg.PoolClient>()
  pool.on('connect', (connection) => {
    connections.add(connection)
    askInTurn(connection)
  })
  pool.on('remove', (connection) => void connections.delete(connection))
  // Same models, same methods: the tests of the store run on both.
  const plain = new PostgresClient({
    adapter: new PrismaPg(pool),
    errorFormat: ERRORS,
  }) as unknown as PrismaClient
  const client = seal === null ? plain : sealing(plain, seal)

  const queue = createQueue()
  const running = new Set<Promise<unknown>>()
  let closed = false
  function track<T>(start: () => Promise<T>): Promise<T> {
    if (closed) return Promise.reject(new Error('the store is closed'))
    const work = start()
    running.add(work)
    const done = (): void => void running.delete(work)
    work.then(done, done)
    return work
  }

  return {
    kind: 'postgresql',
    seal,
    use: (work) => track(() => work(client)),
    // Writers take turns here already, so that those who wait do not hold all the connections.
    transaction: (work) => queue.run(() => oneTransaction(client, work)),
    scrub: () => Promise.resolve(),
    async close() {
      closed = true
      await Promise.allSettled([...running, queue.close()])
      await client.$disconnect()
      await pool.end()
    },
    abandon() {
      closed = true
      void queue.close()
      for (const connection of connections) destroy(connection)
    },
  }
}

function oneTransaction<T>(client: PrismaClient, work: (db: Db) => Promise<T>): Promise<T> {
  return client.$transaction(async (db) => {
    // One writer at a time among all processes, as on SQLite: a message applied once, and outbox rows numbered in the order in which
    // they become visible. Later statements see all that the writer before has committed.
    await db.$executeRaw`SELECT pg_advisory_xact_lock(${WRITER_LOCK})`
    return work(db)
  }, TRANSACTION)
}

/** A client with the rows that belong to it is asked for at once; the driver wants one query after another. */
function askInTurn(connection: pg.PoolClient): void {
  const ask = connection.query.bind(connection) as (...query: unknown[]) => Promise<unknown>
  let last: Promise<unknown> = Promise.resolve()
  const inTurn = (...query: unknown[]): Promise<unknown> => {
    // the pool's own way, by callback, has the connection to itself
    if (typeof query.at(-1) === 'function') return ask(...query)
    const turn = last.then(() => ask(...query))
    last = turn.catch(() => undefined)
    return turn
  }
  connection.query = inTurn as typeof connection.query
}

/** The socket of a connection is no part of the published type. */
export function destroy(connection: pg.ClientBase): void {
  const { stream } = (connection as unknown as { connection: { stream: { destroy(): void } } }).connection
  stream.destroy()
}
