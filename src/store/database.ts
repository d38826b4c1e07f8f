import type { Prisma, PrismaClient } from '../generated/sqlite/client.ts'
import type { Seal } from '../seal.ts'

/**
 * What a query needs. Both generated clients have the same models; SQLite's type is the narrower of the two, so
 * what it allows works on both.
 */
export type Db = Prisma.TransactionClient

/** A database in use: every query of the store goes through one of the two ways. */
export interface Database {
  readonly kind: 'sqlite' | 'postgresql'
  /** What closes and opens the words of people; null: they are kept as they are. */
  readonly seal: Seal | null
  /** Runs statements that need no transaction. */
  use<T>(work: (db: Db) => Promise<T>): Promise<T>
  /** Runs the work in one transaction, alone among all writers; whatever it throws undoes all of it. */
  transaction<T>(work: (db: Db) => Promise<T>): Promise<T>
  /** Removes from disk what erased rows left behind there. */
  scrub(): Promise<void>
  /** Ends in order: what runs is finished first. */
  close(): Promise<void>
  /** Drops the connection at once, as a killed process would; an open transaction is rolled back. */
  abandon(): void
}

/** Which database it is, and what seals its words. */
export type DatabaseTraits = Pick<Database, 'kind' | 'seal'>

export type { PrismaClient }

/** How long a transaction may take, and wait for its turn, before it is given up (milliseconds). */
export const TRANSACTION = { maxWait: 10_000, timeout: 30_000 } as const

/** The client's longer errors repeat what was to be written, which may be a person's own words. */
export const ERRORS = 'minimal'
