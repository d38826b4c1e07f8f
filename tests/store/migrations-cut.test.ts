import { readFileSync } from 'node:fs'
import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import { afterEach, expect, it } from 'vitest'
import { migratePostgresql } from '../../src/store/migrate-postgresql.ts'
import { readMigrations } from '../../src/store/migrations.ts'
import { onBothDatabases } from './databases.ts'
import { connected } from './server.ts'

/** A database as the first version left it after five days of two invented clients. */
const VERSION_1 = readFileSync(new URL('fixtures/version-1-sqlite.sql', import.meta.url), 'utf8')
const SERVER = 'the server of the tests'

const { query } = pg.Client.prototype

/**
 * Statements on PostgreSQL from now on are counted, each of a text of several by itself; just before the nth the line
 * is cut, which is all that a server sees of a process that is killed.
 */
function cutAt(nth: number): () => number {
  let n = 0
  pg.Client.prototype.query = async function (this: pg.Client, text: string, values?: unknown[]) {
    const parts = values ? [text] : text.replaceAll(/^--.*$/gm, '').split(/;\s*$/m)
    let result: unknown
    for (const statement of parts.filter((part) => part.trim() !== '')) {
      n += 1
      if (n === nth) {
        this.on('error', () => {})
        const { stream } = (this as unknown as { connection: { stream: { destroy(): void } } }).connection
        stream.destroy()
      }
      if (n >= nth) throw new Error('cut')
      result = await (query as (...given: unknown[]) => unknown).call(this, statement, values)
    }
    return result
  } as typeof query
  return () => n
}

const stopCutting = (): void => {
  pg.Client.prototype.query = query
}
afterEach(stopCutting)

async function fillAsVersion1(url: string): Promise<void> {
  await migratePostgresql(url, SERVER, readMigrations('postgresql').slice(0, 1))
  const old = new SqliteDatabase(':memory:')
  old.exec(VERSION_1)
  const tables = old
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE '\\_%' ESCAPE '\\'")
    .pluck()
    .all() as string[]
  await connected(url, async (client) => {
    // rows come in no order
    await client.query('SET session_replication_role = replica')
    for (const table of tables)
      for (const row of old.prepare(`SELECT * FROM "${table}"`).all() as Record<string, unknown>[]) {
        const columns = Object.keys(row)
        const places = columns.map((_, n) => `$${n + 1}`)
        const values = Object.values(row).map((value) => (value === null ? null : String(value)))
        const into = `"${table}" (${columns.map((name) => `"${name}"`).join(', ')})`
        await client.query(`INSERT INTO ${into} VALUES (${places.join(', ')})`, values)
      }
  })
  old.close()
}

/** Columns, indexes and rows. */
const contents = (url: string): Promise<unknown> =>
  connected(url, async (client) => {
    const whole = await client.query("SELECT schema_to_xml_and_xmlschema('public', true, false, '') AS xml")
    const indexes = await client.query(
      "SELECT indexdef FROM pg_indexes WHERE schemaname = 'public' ORDER BY 1",
    )
    return { whole: whole.rows, indexes: indexes.rows }
  })

onBothDatabases('migrations cut off', (bench) => {
  // SQLite's are killed in processes of their own, in another file
  it.skipIf(bench.kind === 'sqlite')(
    'cut off before any statement, a migration has changed nothing; then it goes through',
    async () => {
      const url = await bench.address()
      await fillAsVersion1(url)
      const before = await contents(url)
      let cuts = 0
      for (let nth = 1; ; nth += 1) {
        const count = cutAt(nth)
        const ended = await migratePostgresql(url, SERVER).then(
          () => 'whole',
          () => 'cut',
        )
        stopCutting()
        if (count() < nth) {
          expect(ended).toBe('whole')
          break
        }
        cuts += 1
        expect(await contents(url), `statement ${nth}`).toEqual(before)
      }
      console.log(`migration on PostgreSQL from version 1: cut off at ${cuts} statements, nothing half done`)
      expect(cuts).toBeGreaterThan(15)
      const opened = await bench.open(url)
      const told = await opened.store.transaction(async (tx) => {
        const [practice] = await tx.practices()
        const roster = await tx.roster(practice!.id)
        return roster.map(({ client, checkIns, signs }) => [client.ref, checkIns.length, signs.length])
      })
      expect(told).toEqual([
        ['curlew', 4, 0],
        ['heron', 3, 1],
      ])
    },
    240_000,
  )
})
