import { createHash } from 'node:crypto'
import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import { describe, expect, it } from 'vitest'
import { migratePostgresql } from '../../src/store/migrate-postgresql.ts'
import { migrateSqlite } from '../../src/store/migrate-sqlite.ts'
import { type Migration, readMigrations } from '../../src/store/migrations.ts'
import { type Bench, onBothDatabases, temporaryFolder } from './databases.ts'
import { client, ground } from './samples.ts'

const step = (name: string, sql: string): Migration => ({
  name,
  sql,
  checksum: createHash('sha256').update(sql).digest('hex'),
})
const addPerch = step('29990101000000_add_perch', 'ALTER TABLE "Client" ADD COLUMN "perch" TEXT;')

/** The same few words to either database. */
function tools(bench: Bench) {
  const path = (url: string): string => url.slice('file:'.length)
  return {
    async migrate(url: string, migrations: readonly Migration[]): Promise<void> {
      if (bench.kind === 'postgresql') return migratePostgresql(url, 'the test server', [...migrations])
      migrateSqlite(path(url), [...migrations])
    },
    async ask(url: string, sql: string): Promise<Record<string, unknown>[]> {
      if (bench.kind === 'postgresql') {
        const connection = new pg.Client({ connectionString: url })
        await connection.connect()
        const answer = await connection.query(sql).finally(() => connection.end())
        return answer.rows
      }
      const db = new SqliteDatabase(path(url))
      const statement = db.prepare(sql)
      const rows = statement.reader ? statement.all() : [statement.run()]
      db.close()
      return rows as Record<string, unknown>[]
    },
  }
}

onBothDatabases('migrations', (bench) => {
  const { migrate, ask } = tools(bench)
  const ours = readMigrations(bench.kind)
  const history = (url: string) => ask(url, 'SELECT * FROM "_prisma_migrations" ORDER BY "migration_name"')

  it('make a new database, recorded as the Prisma command line records them', async () => {
    const url = await bench.address()
    await migrate(url, ours)
    const rows = await history(url)
    expect(rows.map((row) => [row.migration_name, row.checksum, row.applied_steps_count])).toEqual(
      ours.map((migration) => [migration.name, migration.checksum, 1]),
    )
    for (const row of rows) {
      expect(row.id).toMatch(/^[0-9a-f-]{36}$/)
      expect(row.finished_at).not.toBeNull()
      expect(row.rolled_back_at).toBeNull()
      expect(row.logs).toBeNull()
    }
  })

  it('do nothing at the second start', async () => {
    const url = await bench.address()
    await migrate(url, ours)
    const before = await history(url)
    await migrate(url, ours)
    expect(await history(url)).toEqual(before)
  })

  it('bring a database that holds rows up to date, and keep the rows', async () => {
    const url = await bench.address()
    const opened = await bench.open(url)
    await opened.store.transaction((tx) => tx.apply(ground('heron')))
    await opened.close()
    await migrate(url, [...ours, addPerch])
    expect(await ask(url, 'SELECT "ref", "perch" FROM "Client"')).toEqual([{ ref: 'heron', perch: null }])
    expect(await history(url)).toHaveLength(ours.length + 1)
  })

  it('change nothing at all where one of several fails', async () => {
    const url = await bench.address()
    await migrate(url, ours)
    const wrong = step('29990101000001_wrong', 'ALTER TABLE "Nest" ADD COLUMN "egg" TEXT;')
    await expect(migrate(url, [...ours, addPerch, wrong])).rejects.toThrow()
    expect(await history(url)).toHaveLength(ours.length)
    await expect(ask(url, 'SELECT "perch" FROM "Client"')).rejects.toThrow()
    await migrate(url, [...ours, addPerch])
  })

  it('refuse a change whose file is another now', async () => {
    const url = await bench.address()
    await migrate(url, [...ours, addPerch])
    const changed = step(addPerch.name, `${addPerch.sql} -- tidied`)
    await expect(migrate(url, [...ours, changed])).rejects.toThrow(
      /add_perch is not the one .*put back the original/,
    )
  })

  it('refuse a change that was left unfinished, but not one marked as rolled back', async () => {
    const url = await bench.address()
    await migrate(url, [...ours, addPerch])
    await ask(
      url,
      `UPDATE "_prisma_migrations" SET "finished_at" = NULL WHERE "migration_name" = '${addPerch.name}'`,
    )
    await expect(migrate(url, [...ours, addPerch])).rejects.toThrow(/in the middle of .*add_perch.*backup/)
    await ask(url, 'ALTER TABLE "Client" DROP COLUMN "perch"')
    await ask(
      url,
      `UPDATE "_prisma_migrations" SET "rolled_back_at" = CURRENT_TIMESTAMP WHERE "finished_at" IS NULL`,
    )
    await migrate(url, [...ours, addPerch])
    expect(await ask(url, 'SELECT "perch" FROM "Client"')).toEqual([])
  })

  it('refuse a database that a newer version has changed', async () => {
    const url = await bench.address()
    await migrate(url, [...ours, addPerch])
    await expect(bench.open(url)).rejects.toThrow(
      /add_perch, which this version does not know.*newer version/,
    )
    expect(await history(url)).toHaveLength(ours.length + 1)
  })

  it('refuse a database of another program', async () => {
    const url = await bench.address()
    await ask(url, 'CREATE TABLE "Orders" ("id" TEXT)')
    await expect(bench.open(url)).rejects.toThrow(/another program.*DATABASE_URL/)
  })

  it('run once where several start at the same moment', async () => {
    const url = await bench.address()
    await Promise.all([1, 2, 3].map(() => bench.open(url)))
    expect(await history(url)).toHaveLength(ours.length)
  })
})

describe('migrations on SQLite', () => {
  const folder = temporaryFolder()
  const ours = readMigrations('sqlite')
  // As Prisma rebuilds a table: drop it, put the new one in its place.
  const rebuild = (keep: string) => `
    PRAGMA foreign_keys=OFF;
    CREATE TABLE "new_Note" AS SELECT * FROM "Note" WHERE ${keep};
    CREATE TABLE "new_Client" AS SELECT * FROM "Client" WHERE ${keep};
    DROP TABLE "Client"; ALTER TABLE "new_Client" RENAME TO "Client";
    CREATE UNIQUE INDEX "Client_id" ON "Client"("id");`

  function insert(db: SqliteDatabase.Database, table: string, row: Record<string, unknown>): void {
    const names = Object.keys(row)
    const columns = names.map((name) => `"${name}"`).join(', ')
    const values = names.map((name) => `@${name}`).join(', ')
    db.prepare(`INSERT INTO "${table}" (${columns}) VALUES (${values})`).run(row)
  }

  async function withNote(path: string): Promise<SqliteDatabase.Database> {
    migrateSqlite(path, ours)
    const db = new SqliteDatabase(path)
    db.pragma('foreign_keys = OFF')
    const instant = '2026-01-01T00:00:00.000+00:00'
    const { createdAt, wordsOnly, off, ...words } = client('heron')
    insert(db, 'Client', { ...words, createdAt: instant, wordsOnly: 0, off: '[]', practiceId: 'p' })
    insert(db, 'Note', { id: 'n', clientId: words.id, at: instant, by: 'coach', text: 'text' })
    const practice = { id: 'p', guild: '1', name: 'n', zone: 'UTC', language: 'en', digest: 'Sun 18:00' }
    insert(db, 'Practice', { ...practice, window: 0, quote: 1, retentionDays: 1, createdAt: instant })
    return db
  }

  it('rebuild a table that others refer to without losing their rows', async () => {
    const path = `${folder}/rebuild.db`
    const db = await withNote(path)
    migrateSqlite(path, [...ours, step('29990101000000_rebuild', rebuild('true'))])
    expect(db.prepare('SELECT count(*) FROM "Note"').pluck().get()).toBe(1)
    db.close()
  })

  it('are undone where rows would refer to nothing afterwards', async () => {
    const path = `${folder}/broken.db`
    const db = await withNote(path)
    const wrong = step('29990101000000_wrong', rebuild('false'))
    expect(() => migrateSqlite(path, [...ours, wrong])).toThrow(/refer to nothing, so nothing was changed/)
    expect(db.prepare('SELECT count(*) FROM "Client"').pluck().get()).toBe(1)
    expect(db.prepare('SELECT count(*) FROM "_prisma_migrations"').pluck().get()).toBe(ours.length)
    db.close()
  })
})
