import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import SqliteDatabase from 'better-sqlite3'
import { expect, it } from 'vitest'
import { readMigrations } from '../../src/store/migrations.ts'
import { openStore } from '../../src/store/open.ts'
import { temporaryFolder } from './databases.ts'

const folder = temporaryFolder()
const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url))
/** A database as the first version left it after five days of two invented clients. */
const VERSION_1 = readFileSync(here('fixtures/version-1-sqlite.sql'), 'utf8')
const MIGRATE = `import { migrateSqlite } from ${JSON.stringify(pathToFileURL(here('../../src/store/migrate-sqlite.ts')).href)}
migrateSqlite(process.env.DATABASE_FILE)`

function version1(name: string): string {
  const path = join(folder, `${name}.db`)
  const db = new SqliteDatabase(path)
  db.exec(VERSION_1)
  db.close()
  return path
}

interface Ended {
  readonly signal: string | null
  readonly out: string
}

/** Migrates in a process of its own, which is killed just before its nth statement; 0: not at all. */
function migrateKilled(path: string, nth: number): Promise<Ended> {
  const preload = pathToFileURL(here('kill-at-statement.mjs')).href
  const args = ['--import', 'tsx', '--import', preload, '--input-type=module', '--eval', MIGRATE]
  const env = { PATH: process.env.PATH, KILL_AT: String(nth), DATABASE_FILE: path }
  const child = spawn(process.execPath, args, { cwd: here('../..'), env, stdio: ['ignore', 'pipe', 'pipe'] })
  let out = ''
  child.stdout.on('data', (text) => (out += text))
  return new Promise((resolve) => child.on('close', (_, signal) => resolve({ signal, out })))
}

/** Schema and rows; when a change was made, and under which id, differs from run to run. */
function contents(path: string): unknown {
  const db = new SqliteDatabase(path)
  const schema = db.prepare('SELECT "type", "name", "sql" FROM "sqlite_master" ORDER BY "name"').all()
  const tables = (schema as { type: string; name: string }[]).filter(({ type }) => type === 'table')
  const rows = tables.map(({ name }) => [name, db.prepare(`SELECT * FROM "${name}" ORDER BY 1`).all()])
  const history = db
    .prepare('SELECT "migration_name", "checksum" FROM "_prisma_migrations" ORDER BY "migration_name"')
    .all()
  db.close()
  return { schema, rows: rows.filter(([name]) => name !== '_prisma_migrations'), history }
}

it('a database of the first version is opened with every row it had', async () => {
  const path = version1('opened')
  const opened = await openStore(`file:${path}`)
  const told = await opened.store.transaction(async (tx) => {
    const [practice] = await tx.practices()
    const roster = await tx.roster(practice!.id)
    return roster.map(({ client, checkIns, signs }) => [client.ref, checkIns.length, signs.length])
  })
  await opened.close()
  expect(told).toEqual([
    ['curlew', 4, 0],
    ['heron', 3, 1],
  ])
})

it('killed before any statement of it and started again, a migration ends as one that was not', async () => {
  const calm = version1('calm')
  const { signal, out } = await migrateKilled(calm, 0)
  expect(signal).toBeNull()
  const steps = Number(out)
  expect(steps).toBeGreaterThan(readMigrations('sqlite').length + 15)
  const wanted = contents(calm)
  const killed = async (nth: number): Promise<void> => {
    const path = version1(`killed-${nth}`)
    expect((await migrateKilled(path, nth)).signal, `step ${nth}`).toBe('SIGKILL')
    await (await openStore(`file:${path}`, null)).close()
    expect(contents(path), `step ${nth}`).toEqual(wanted)
  }
  for (let nth = 1; nth <= steps; nth += 2)
    await Promise.all([nth, nth + 1].filter((one) => one <= steps).map(killed))
  console.log(`migration from version 1: killed at ${steps} of ${steps} statements, the same each time`)
}, 240_000)
