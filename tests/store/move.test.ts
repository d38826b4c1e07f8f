import { createHash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import SqliteDatabase from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { Prisma } from '../../src/generated/sqlite/client.ts'
import { appendLedger, erasureOf, readLedger } from '../../src/store/ledger.ts'
import { canonical } from '../../src/store/move-check.ts'
import { keyOf, MOVED } from '../../src/store/move-tables.ts'
import { openStore } from '../../src/store/open.ts'
import { onServers, sqliteAddresses } from './databases.ts'
import { contents, filled, mover, pathOf, seal, stopAfter } from './moving.ts'
import { samples } from './samples.ts'

const onFile = sqliteAddresses()
const moved = mover()
// seconds on a quiet machine
const LONG = 240_000

const bytesOf = (url: string): string =>
  createHash('sha256')
    .update(readFileSync(pathOf(url)))
    .digest('hex')

describe('the list of what is moved', () => {
  it('has every model once', () => {
    const models = Object.values(Prisma.ModelName).map((name) => name.charAt(0).toLowerCase() + name.slice(1))
    expect([...MOVED].sort()).toEqual(models.sort())
  })

  it('names a table after those that its rows refer to, and its key', async () => {
    const url = await onFile()
    await (await openStore(url)).close()
    const db = new SqliteDatabase(pathOf(url), { readonly: true })
    for (const [n, table] of MOVED.entries()) {
      const name = table.charAt(0).toUpperCase() + table.slice(1)
      const columns = db.pragma(`table_info("${name}")`) as { name: string; pk: number }[]
      expect(
        columns.filter(({ pk }) => pk > 0).map((column) => column.name),
        table,
      ).toEqual([keyOf(table)])
      for (const { table: parent } of db.pragma(`foreign_key_list("${name}")`) as { table: string }[])
        expect(MOVED.slice(0, n), `${table} before ${parent}`).toContain(
          parent.charAt(0).toLowerCase() + parent.slice(1),
        )
    }
    db.close()
  })
})

it('one value has one text, whatever the order of its fields', () => {
  const at = new Date('2026-03-08T12:00:00.123Z')
  expect(canonical({ b: [{ y: 1, x: null }], a: at })).toBe(
    '{"a":"2026-03-08T12:00:00.123Z","b":[{"x":null,"y":1}]}',
  )
})

onServers('SQLite to PostgreSQL and back', (onServer) => {
  it(
    'every row is there, sums are the same, the source keeps each byte',
    async () => {
      const [from, there, back] = [await onFile(), await onServer(), await onFile()]
      await filled(from)
      const [bytes, rows] = [bytesOf(from), await contents(from)]
      const first = await moved(from, there)
      expect(first.tables.every(({ rows: n }) => n > 0)).toBe(true)
      expect(bytesOf(from)).toBe(bytes)
      expect(existsSync(`${pathOf(from)}-wal`)).toBe(false)
      expect(await contents(there)).toEqual(rows)
      expect((await moved(there, back)).tables).toEqual(first.tables)
      expect(await contents(back)).toEqual(rows)
      const store = await openStore(back, null, undefined, seal)
      const told = await store.store.transaction((tx) => tx.wholeClient('c:heron'))
      expect(told?.checkIns).toEqual([samples.checkIn])
      expect(told?.signs).toEqual([samples.sign])
      await store.close()
    },
    LONG,
  )

  it.each(['SQLite', 'PostgreSQL'])(
    'stopped after any few batches it goes on, from %s',
    async (kind) => {
      const first = await onFile()
      await filled(first, false)
      const fresh = kind === 'SQLite' ? onServer : onFile
      const from = kind === 'SQLite' ? first : await onServer()
      if (kind !== 'SQLite') await moved(first, from)
      const to = await fresh()
      let runs = 1
      while (!(await endsWithin(from, to, 4))) runs += 1
      expect(runs).toBeGreaterThan(6)
      expect(await contents(to)).toEqual(await contents(from))
    },
    LONG,
  )

  /** False where it was stopped after so many batches. */
  async function endsWithin(from: string, to: string, batches: number): Promise<boolean> {
    try {
      await moved(from, to, stopAfter(batches))
      return true
    } catch (error) {
      expect((error as Error).message).toMatch('run the same again to go on')
      // stopped while it compares it begins to compare anew
      if (/Stopped with (\d+) of \1 /.test((error as Error).message)) return Boolean(await moved(from, to))
      return false
    }
  }

  it('whoever was erased stays erased, also where only the list knows of it', async () => {
    const [from, to] = [await onFile(), await onServer()]
    await filled(from, false)
    const erasure = erasureOf('c:heron', samples.consent.at)
    appendLedger(`${pathOf(from)}-erased.jsonl`, [erasure])
    const { ledger } = await moved(from, to)
    expect(readLedger(ledger.path).erasures).toEqual([erasure])
    const { store, erasures, close } = await openStore(to, ledger.path)
    expect(erasures?.again).toBe(1)
    expect(await store.transaction((tx) => tx.wholeClient('c:heron'))).toBeNull()
    await close()
  })
})
