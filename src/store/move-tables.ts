import type { Db } from './database.ts'
import { TABLE_ORDER } from './tables.ts'

/**
 * Every table, in an order in which a row refers only to tables before its own. A model that is not in here would be
 * left behind by a move: a test compares the two.
 */
export const MOVED = [...TABLE_ORDER, 'outbox', 'lease', 'setting'] as const
export type MovedTable = (typeof MOVED)[number]

/** The setting of a database into which a move is not done yet; it goes with the last step, and is itself not moved. */
export const HALF_MOVED = 'half-moved'

/** The column that names a row. */
export const keyOf = (table: MovedTable): 'id' | 'name' | 'key' =>
  table === 'setting' ? 'key' : table === 'lease' ? 'name' : 'id'

export type MovedRow = Readonly<Record<string, unknown>>

/** The part of a generated table client that a move uses. */
interface Delegate {
  findMany(query: object): Promise<MovedRow[]>
  findFirst(query: object): Promise<MovedRow | null>
  createMany(write: { data: readonly MovedRow[] }): Promise<unknown>
  count(query?: object): Promise<number>
}

export const movedTable = (db: Db, table: MovedTable): Delegate => db[table] as unknown as Delegate

// Rows of a few hundred bytes to some kilobytes: a batch is a fraction of a second, and little is done twice.
const ROWS_AT_ONCE = 500

/** Rows after a key, in the database's own order of keys. */
export function pageOf(db: Db, table: MovedTable, after: string | null): Promise<MovedRow[]> {
  const key = keyOf(table)
  return movedTable(db, table).findMany({
    where: { AND: [after === null ? {} : { [key]: { gt: after } }, moved(table)] },
    orderBy: { [key]: 'asc' },
    take: ROWS_AT_ONCE,
  })
}

export const countOf = (db: Db, table: MovedTable): Promise<number> =>
  movedTable(db, table).count({ where: moved(table) })

const moved = (table: MovedTable): object => (table === 'setting' ? { key: { not: HALF_MOVED } } : {})
