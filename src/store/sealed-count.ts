import { textSealedWith } from '../seal.ts'
import type { Database } from './database.ts'
import { SEALED_COLUMNS, SEALED_TABLES, type SealedTable } from './sealed-columns.ts'

/** How many rows hold words that are not sealed with this key: plain ones, and those of an older key. */
export async function notSealedWith(database: Database, key: string): Promise<number> {
  let rows = 0
  for (const table of SEALED_TABLES)
    rows += await database.use(async (db) => {
      const count = `SELECT COUNT(*) AS "n" FROM "${table}" WHERE ${isNotSealedWith(table, key)}`
      const [found] = await db.$queryRawUnsafe<{ n: bigint | number }[]>(count)
      return Number(found?.n ?? 0)
    })
  return rows
}

/**
 * True of a row of which some word is not sealed with this key. Names and key come from the program, never from people;
 * in a column of JSON what is sealed stands in quotes.
 */
export function isNotSealedWith(table: SealedTable, key: string): string {
  const start = textSealedWith(key)
  const isOther = SEALED_COLUMNS[table].map(
    (column) =>
      `("${column}" IS NOT NULL AND CAST("${column}" AS TEXT) NOT LIKE '${start}%' AND CAST("${column}" AS TEXT) NOT LIKE '"${start}%')`,
  )
  return isOther.join(' OR ')
}
