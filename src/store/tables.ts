import type { OutboxRow, Rows, Table } from '../engine/rows.ts'
import { Prisma } from '../generated/sqlite/client.ts'
import { cleanText } from './clean.ts'
import type { Db } from './database.ts'

/** Every stored row, the outbox included. */
export interface StoredRows extends Rows {
  outbox: OutboxRow
}
export type StoredTable = keyof StoredRows

/** The part of a generated table client that the store uses, with our rows for its own. */
export interface Delegate<Row> {
  findMany(query: Query): Promise<Row[]>
  findFirst(query: Query): Promise<Row | null>
  updateMany(write: { where: object; data: object }): Promise<{ count: number }>
  deleteMany(query: { where: object }): Promise<{ count: number }>
  count(query: { where: object }): Promise<number>
}
interface Query {
  where?: object
  orderBy?: object
  take?: number
}

/** A table of the client; the generated types know JSON columns only as "some JSON", our rows say what is in them. */
export const tableOf = <T extends StoredTable>(db: Db, table: T): Delegate<StoredRows[T]> =>
  db[table] as unknown as Delegate<StoredRows[T]>

/**
 * In this order a row can only refer to a table before its own. Deleting goes by itself (foreign keys cascade).
 */
export const TABLE_ORDER: readonly Table[] = [
  'practice',
  'client',
  'alert',
  'alertStep',
  'consent',
  'screening',
  'plan',
  'rung',
  'checkIn',
  'version',
  'sign',
  'hold',
  'flag',
  'decision',
  'asked',
  'due',
  'inbound',
  'note',
  'activity',
  'question',
  'cover',
]

/** A row as the client takes it: text that both databases can hold, and "nothing" in a JSON column as SQL NULL. */
export function toStored<Row extends object>(row: Row): Row {
  const stored = cleanText(row)
  if ('denied' in stored && stored.denied === null) return { ...stored, denied: Prisma.DbNull }
  return stored
}
