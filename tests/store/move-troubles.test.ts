import { copyFileSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import { expect, it } from 'vitest'
import { MOVED } from '../../src/store/move-tables.ts'
import { openStore } from '../../src/store/open.ts'
import { smallDisk } from '../faults/disk-full.ts'
import { onServers, sqliteAddresses } from './databases.ts'
import { everyRow } from './every-row.ts'
import { contents, filled, mover, pathOf, seal, stopAfter } from './moving.ts'
import { outcome, put, samples } from './samples.ts'

const onFile = sqliteAddresses()
const moved = mover()

/** As one from before the last change of the tables, or from after a later one. */
function ofAnotherVersion(url: string, which: 'older' | 'newer'): void {
  const rest = `"_prisma_migrations" WHERE "migration_name" NOT LIKE '%first_tables'`
  const db = new SqliteDatabase(pathOf(url))
  db.exec(
    which === 'older'
      ? `DELETE FROM ${rest}`
      : `UPDATE ${rest.replace(' WHERE', ` SET "migration_name" = '2099_later' WHERE`)}`,
  )
  db.close()
}

it('a source that is not there, not ours, older, or in use', async () => {
  const [there, to] = [await onFile(), await onFile()]
  await expect(moved(await onFile(), to)).rejects.toThrow('There is no database at')
  new SqliteDatabase(pathOf(there)).exec('CREATE TABLE "Other" ("n" INTEGER)').close()
  await expect(moved(there, to)).rejects.toThrow('name another file')
  const old = await onFile()
  await (await openStore(old)).close()
  ofAnotherVersion(old, 'older')
  await expect(moved(old, to)).rejects.toThrow('older version: start the bot of this version on it once')
  const used = await onFile()
  const { close } = await openStore(used)
  await expect(moved(used, to)).rejects.toThrow('stop the bot, then run this again')
  await close()
  expect((await moved(used, to)).tables).toHaveLength(MOVED.length)
})

it('a target of another program, an older or a newer version, or in a place where none can be', async () => {
  const from = await onFile()
  await (await openStore(from)).close()
  const strange = await onFile()
  new SqliteDatabase(pathOf(strange)).exec('CREATE TABLE "Other" ("n" INTEGER)').close()
  await expect(moved(from, strange)).rejects.toThrow('name an empty database in --to')
  const [older, newer] = [await onFile(), await onFile()]
  for (const [url, which] of [
    [older, 'older'],
    [newer, 'newer'],
  ] as const) {
    await (await openStore(url)).close()
    ofAnotherVersion(url, which)
  }
  const before = await everyRow(older)
  await expect(moved(from, older)).rejects.toThrow('of an older version: name an empty one')
  expect(await everyRow(older)).toEqual(before)
  await expect(moved(from, newer)).rejects.toThrow('which this version does not know')
  const folder = `${pathOf(await onFile())}-folder`
  mkdirSync(folder)
  await expect(moved(from, `file:${folder}`)).rejects.toThrow('name a file in it in --to')
})

it('no bot starts on a database while it is moved, nor on half of one', async () => {
  const [from, to] = [await onFile(), await onFile()]
  await filled(from)
  let refused: unknown = null
  const stop = stopAfter(3)
  const progress: typeof stop.progress = (...told) => {
    stop.progress(...told)
    refused ??= tryToOpen(from)
  }
  await expect(moved(from, to, { ...stop, progress })).rejects.toThrow('run the same again to go on')
  expect(refused).toMatchObject({ code: 'SQLITE_BUSY' })
  await expect(openStore(to)).rejects.toThrow(`This database holds half of ${from}`)
  await expect(moved(to, await onFile())).rejects.toThrow('finish it with ebb move')
  await (await openStore(from, null, undefined, seal)).close()
})

function tryToOpen(url: string): unknown {
  const db = new SqliteDatabase(pathOf(url), { timeout: 0 })
  try {
    return db.prepare('SELECT count(*) FROM "Client"').get()
  } catch (error) {
    return error
  } finally {
    db.close()
  }
}

it('what waits beside the old database is asked for first and last', async () => {
  const [from, to] = [await onFile(), await onFile()]
  await filled(from)
  let asked = 0
  const nothingWaits = (): void => {
    asked += 1
    if (asked === 2) throw new Error('words wait')
  }
  await expect(moved(from, to, { nothingWaits })).rejects.toThrow('words wait')
  await expect(openStore(to)).rejects.toThrow('This database holds half of')
  await moved(from, to)
  expect(await contents(to)).toEqual(await contents(from))
})

const disk = smallDisk(4)
it.skipIf(disk === null)(
  'a disk that is full at the target is said, and once it is free it goes on',
  async () => {
    const { folder, fill, free, unmount } = disk!
    try {
      const [from, to] = [await onFile(), `file:${join(folder, 'new.db')}`]
      await filled(from)
      const stop = stopAfter(3)
      await expect(moved(from, to, stop)).rejects.toThrow('run the same again')
      fill()
      await expect(moved(from, to)).rejects.toThrow(/The disk that holds .*new\.db is full/)
      free()
      await moved(from, to)
      expect(await contents(to)).toEqual(await contents(from))
    } finally {
      unmount()
    }
  },
)
if (disk === null) console.warn('a full disk at the target: skipped, this user may not mount a small disk')

onServers('SQLite to PostgreSQL and back, with troubles', (onServer) => {
  it('a target that is not empty, or holds half of another, is left as it is', async () => {
    const [from, other, to] = [await onFile(), await onFile(), await onServer()]
    await filled(from)
    copyFileSync(pathOf(from), pathOf(other))
    await expect(moved(from, to, stopAfter(2))).rejects.toThrow('Stopped with')
    await expect(moved(other, to)).rejects.toThrow(`holds half of ${from}`)
    await moved(from, to)
    await expect(moved(from, to)).rejects.toThrow('holds rows already')
    await expect(moved(to, other)).rejects.toThrow('holds rows already')
  })

  it('a source that was written between two runs is found out', async () => {
    const [from, to] = [await onFile(), await onServer()]
    await filled(from, false)
    await expect(moved(from, to, stopAfter(5))).rejects.toThrow('Stopped with')
    const { store, close } = await openStore(from)
    const more = { ...samples.client, prompt: '09:00' }
    await store.transaction((tx) => tx.apply(outcome([put('client', more)])))
    await close()
    await expect(moved(from, to)).rejects.toThrow('The table client is not the same in both')
    await expect(openStore(to)).rejects.toThrow('This database holds half of')
  })

  it('a source on which a bot runs, now or since the move began, and one that is not ours', async () => {
    const [from, to] = [await onServer(), await onFile()]
    const bot = await openStore(from)
    await expect(moved(from, to)).rejects.toThrow('Another program is connected')
    await bot.close()
    await expect(moved(await onServer(), to)).rejects.toThrow('is not one of Ebbline')
    const late = new pg.Client({ connectionString: from })
    const connected = late.connect()
    await expect(
      moved(from, to, { nothingWaits: () => undefined, progress: () => void connected }),
    ).rejects.toThrow('Another program is connected')
    await late.end()
    expect((await moved(from, to)).tables).toHaveLength(MOVED.length)
  })

  it('a server that is not there, refuses the password, or has no such database', async () => {
    const [from, server] = [await onFile(), await onServer()]
    await filled(from)
    const address = (change: (url: URL) => unknown): string => {
      const url = new URL(server)
      change(url)
      return url.href
    }
    const nowhere = address((url) => (url.port = '1'))
    const wrong = address((url) => (url.password = 'wrong'))
    const unknown = address((url) => (url.pathname = '/nothing_of_that_name'))
    await expect(moved(from, nowhere)).rejects.toThrow(/cannot be reached .* correct --to/)
    await expect(moved(from, wrong)).rejects.toThrow('refused the user or password: correct them in --to')
    await expect(moved(from, unknown)).rejects.toThrow('or correct --to')
    await expect(moved(wrong, from)).rejects.toThrow('refused the user or password: correct them in --from')
  })

  it('a server that goes away in the middle is said, and it goes on later', async () => {
    const [from, there, back] = [await onFile(), await onServer(), await onFile()]
    await filled(from)
    await expect(cut(from, there, there)).rejects.toThrow(/cannot be reached .* correct --to/)
    await moved(from, there)
    expect(await contents(there)).toEqual(await contents(from))
    await expect(cut(there, back, there)).rejects.toThrow(/cannot be reached .* correct --from/)
    await moved(there, back)
    expect(await contents(back)).toEqual(await contents(from))
  })

  /** Moves while the server ends every session of that database, one after another as they come. */
  async function cut(from: string, to: string, server: string): Promise<unknown> {
    const url = new URL(server)
    const name = url.pathname.slice(1)
    url.pathname = '/postgres'
    const admin = new pg.Client({ connectionString: url.href })
    await admin.connect()
    const ends = 'SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = $1'
    let over = 0
    let cutting: Promise<unknown> | null = null
    const progress = (): void => {
      if (over++ !== 3) return
      cutting = admin.query(ends, [name])
      // nothing is moved while the server ends the sessions: on a busy machine the move would be over first
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 300)
    }
    try {
      return await moved(from, to, { progress })
    } finally {
      await cutting
      await admin.end()
    }
  }

  it('two moves at once into one database: one of them ends it, the other says so', async () => {
    const [from, to] = [await onFile(), await onServer()]
    await filled(from)
    const twin = await onFile()
    copyFileSync(pathOf(from), pathOf(twin))
    const ends = await Promise.allSettled([moved(from, to), moved(twin, to), moved(from, to)])
    const told = ends.map((end) => (end.status === 'rejected' ? String(end.reason.message) : 'moved'))
    expect(told.filter((one) => one === 'moved').length).toBeLessThanOrEqual(1)
    for (const one of told) expect(one).toMatch(/^moved$|holds half of|Another |holds rows already/)
    if (!told.includes('moved')) await moved(told[0]!.includes(twin) ? twin : from, to)
    expect(await contents(to)).toEqual(await contents(from))
  })
})
