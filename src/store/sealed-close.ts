import { Prisma } from '../generated/sqlite/client.ts'
import type { Database, Db } from './database.ts'
import { SEALED_COLUMNS, SEALED_TABLES, type SealedTable } from './sealed-columns.ts'
import { isNotSealedWith } from './sealed-count.ts'

// So many rows in one transaction.
const PAGE = 100

/**
 * Closes with the key in use every row that is not closed with it, some at a time: stopped and started again, it goes
 * on where it was.
 * @param key id of the key with which `database` closes
 * @param tell hears of each table how many rows were closed
 */
export async function closeAll(
  database: Database,
  key: string,
  tell: (table: string, rows: number) => void,
): Promise<void> {
  for (const table of SEALED_TABLES) {
    let rows = 0
    for (let after = ''; ; ) {
      const ids = await database.transaction((db) => closeSome(db, table, key, after))
      rows += ids.length
      after = ids.at(-1) ?? after
      if (ids.length < PAGE) break
    }
    tell(table, rows)
  }
}

/** The first rows behind this id that are not closed with the key; gives their ids. */
async function closeSome(db: Db, table: SealedTable, key: string, after: string): Promise<string[]> {
  const found = await db.$queryRaw<{ id: string }[]>`
    SELECT "id" FROM ${Prisma.raw(`"${table}"`)}
    WHERE "id" > ${after} AND (${Prisma.raw(isNotSealedWith(table, key))}) ORDER BY "id" LIMIT ${PAGE}`
  const ids = found.map(({ id }) => id)
  const of = db[lower(table)] as unknown as Delegate
  // read open and written closed: the client does both
  for (const row of await of.findMany({ where: { id: { in: ids } } }))
    await of.updateMany({ where: { id: row.id }, data: wordsOf(table, row) })
  return ids
}

type Row = Record<string, unknown>
interface Delegate {
  findMany(query: object): Promise<(Row & { id: string })[]>
  updateMany(write: { where: { id: string }; data: Row }): Promise<unknown>
}
const lower = (table: SealedTable) => Prisma.ModelName[table].replace(/^./, (c) => c.toLowerCase()) as 'note'
const wordsOf = (table: SealedTable, row: Row): Row =>
  Object.fromEntries(SEALED_COLUMNS[table].flatMap((name) => (row[name] === null ? [] : [[name, row[name]]])))
