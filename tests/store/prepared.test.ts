import SqliteDatabase from 'better-sqlite3'
import { afterEach, expect, it, vi } from 'vitest'
import { openStore } from '../../src/store/open.ts'
import { sqliteAddresses } from './databases.ts'
import { at, ground } from './samples.ts'

const onFile = sqliteAddresses()
const NOW = at('2026-03-08T12:00:00Z')
afterEach(() => vi.restoreAllMocks())

it('a statement is prepared once, and finds what was written meanwhile and a column that came later', async () => {
  const prepare = vi.spyOn(SqliteDatabase.prototype, 'prepare')
  const url = await onFile()
  const opened = await openStore(url)
  await opened.store.transaction((tx) => tx.apply(ground('heron')))
  const look = () => opened.store.transaction((tx) => tx.client('c:heron'))
  expect((await look())?.client.zone).toBe('America/New_York')
  const beside = new SqliteDatabase(url.replace('file:', ''))
  beside.prepare(`UPDATE "Client" SET "zone" = 'Asia/Tokyo'`).run()
  beside.exec('ALTER TABLE "Client" ADD COLUMN "extra" TEXT')
  beside.close()
  const texts = prepare.mock.calls.length
  expect((await look())?.client.zone).toBe('Asia/Tokyo')
  expect(await opened.dues.dueBy(NOW, 1)).toEqual([])
  expect(await opened.dues.dueBy(NOW, 1)).toEqual([])
  // what was due had not been asked before
  expect(prepare.mock.calls.length - texts).toBe(1)
  await opened.close()
})
