import { createHash } from 'node:crypto'
import type { Db } from './database.ts'
import { keyOf, type MovedRow, type MovedTable, pageOf } from './move-tables.ts'

/** What a table holds, the same on both databases. */
export interface TableSum {
  readonly rows: number
  /** 64 hex digits: the sum of the SHA-256 of all rows, modulo 2^256. */
  readonly sum: string
}

const MODULUS = 1n << 256n

/**
 * Reads a whole table. The sum does not depend on the order of rows, since the two databases sort text differently;
 * nor does that of a row on the order of fields within JSON, which PostgreSQL changes.
 */
export async function sumOf(
  db: Db,
  table: MovedTable,
  tell: (rows: number) => Promise<void>,
): Promise<TableSum> {
  const key = keyOf(table)
  let [rows, sum] = [0, 0n]
  let page = await pageOf(db, table, null)
  while (page.length > 0) {
    for (const row of page) sum = (sum + hashOf(row)) % MODULUS
    rows += page.length
    await tell(page.length)
    page = await pageOf(db, table, page.at(-1)![key] as string)
  }
  return { rows, sum: sum.toString(16).padStart(64, '0') }
}

const hashOf = (row: MovedRow): bigint =>
  BigInt(`0x${createHash('sha256').update(canonical(row)).digest('hex')}`)

/** One text for one value: instants to the millisecond, names of fields in order. */
export const canonical = (value: unknown): string =>
  JSON.stringify(value, (_, field) =>
    field !== null && typeof field === 'object' && !Array.isArray(field)
      ? Object.fromEntries(Object.entries(field).sort(([a], [b]) => (a < b ? -1 : 1)))
      : field,
  )
