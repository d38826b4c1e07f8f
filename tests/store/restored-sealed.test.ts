import { existsSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import { expect, it } from 'vitest'
import { createSeal } from '../../src/seal.ts'
import { backUp } from '../../src/store/backup.ts'
import { openStore } from '../../src/store/open.ts'
import { restore } from '../../src/store/restore.ts'
import { temporaryFolder } from './databases.ts'
import { at, ground, message, practice } from './samples.ts'

const NOW = at('2026-03-20T12:00:00Z')
const seal = createSeal([new Uint8Array(32).fill(1)])
const folder = join(temporaryFolder(), 'sealed')
mkdirSync(folder)
const url = `file:${join(folder, 'ebbline.db')}`
const file = join(folder, 'backup.db')
const SAID = 'heron says: tingling down the left side'

const bodies = (path: string): string[] =>
  new SqliteDatabase(path, { readonly: true })
    .prepare('SELECT "body" FROM "Outbox"')
    .pluck()
    .all() as string[]

it('a sealed backup stays sealed, needs its key, and gives back nobody who was erased', async () => {
  const opened = await openStore(url, undefined, undefined, seal)
  await opened.store.transaction(async (tx) => {
    await tx.apply(ground('heron', 'dipper'))
    // to the practice, about one client: whom it is about stands in its body alone
    const about = { ...message('notice/heron'), about: 'heron', text: SAID }
    await tx.keepShown(about, { practiceId: practice.id, clientId: null, at: NOW })
  })
  await backUp(url, file, NOW)
  await opened.store.transaction((tx) => tx.erase('c:heron', NOW))
  await opened.close()

  expect(bodies(file)).toHaveLength(1)
  expect(bodies(file)[0]).toContain('§ebb1.')
  expect(bodies(file)[0]).not.toContain('tingling')

  const how = { replace: true, now: NOW }
  await expect(restore(url, file, how)).rejects.toThrow(`sealed with key ${seal.id}: name the file`)
  const other = createSeal([new Uint8Array(32).fill(2)])
  await expect(restore(url, file, { ...how, seal: other })).rejects.toThrow('not among those given')
  expect(existsSync(`${url.slice(5)}.restoring`)).toBe(false)

  const { erasures } = await restore(url, file, { ...how, seal })
  expect(erasures.again).toBe(1)
  expect(bodies(url.slice(5))).toEqual([])
})
