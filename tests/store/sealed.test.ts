import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import type { Table } from '../../src/engine/rows.ts'
import { createSeal, type Seal } from '../../src/seal.ts'
import type { Database } from '../../src/store/database.ts'
import { type OpenStore, openSealed, openStore } from '../../src/store/open.ts'
import { closeAll } from '../../src/store/sealed-close.ts'
import { SEALED_COLUMNS, SEALED_TABLES, type SealedTable } from '../../src/store/sealed-columns.ts'
import { parseMark, readMark, writeMark } from '../../src/store/sealed-mark.ts'
import { onBothDatabases } from './databases.ts'
import { everyRow } from './every-row.ts'
import { outcome, posting, put, samples } from './samples.ts'

const key = (n: number) => new Uint8Array(32).fill(n)
const [OLD, NEW, BOTH] = [createSeal([key(1)]), createSeal([key(2)]), createSeal([key(2), key(1)])]
const tables = Object.keys(samples) as Table[]
const everything = outcome(
  tables.map((table) => put(table, samples[table])),
  [posting('k:1', { clientId: 'c:heron' })],
)

const isNew = ({ value }: { value: string }): boolean => value.includes(`§ebb1.${NEW.id}.`)

/** What stands in the sealed columns, as it lies in the database. */
async function lying(url: string): Promise<{ table: string; value: string }[]> {
  const rows = await everyRow(url)
  return rows.flatMap(({ table, row }) =>
    (SEALED_COLUMNS[table as SealedTable] ?? []).flatMap((column) => {
      const value = row[column]
      return value === null
        ? []
        : [{ table, value: typeof value === 'string' ? value : JSON.stringify(value) }]
    }),
  )
}

onBothDatabases('words sealed in the database', (bench) => {
  const opened: OpenStore[] = []
  const open = async (url: string, seal: Seal | null | 'unread'): Promise<OpenStore> => {
    const store = await openStore(url, null, undefined, seal)
    opened.push(store)
    return store
  }
  const use = async <T>(
    url: string,
    seal: Seal | null | 'unread',
    work: (store: OpenStore) => Promise<T>,
  ): Promise<T> => {
    const store = await open(url, seal)
    try {
      return await work(store)
    } finally {
      await store.close()
    }
  }
  const fill = (url: string, seal: Seal | null) =>
    use(url, seal, ({ store }) => store.transaction((tx) => tx.apply(everything)))
  const read = (url: string, seal: Seal | null) =>
    use(url, seal, ({ store, outbox }) =>
      store
        .transaction(async (tx) => ({
          file: await tx.client('c:heron'),
          kept: await tx.kept('c:heron'),
          notes: await tx.notes('c:heron'),
          told: await tx.told('c:heron'),
          message: await tx.outboxByKey('k:1'),
        }))
        .then(async (all) => ({
          ...all,
          waiting: (await outbox.waiting(new Date('2100-01-01'), 10)).length,
        })),
    )

  it('read back as they were written, and lie there closed', async () => {
    const [plain, sealed] = [await bench.address(), await bench.address()]
    await fill(plain, null)
    await fill(sealed, OLD)
    expect(await read(sealed, OLD)).toStrictEqual(await read(plain, null))
    const found = await lying(sealed)
    expect([...new Set(found.map(({ table }) => table))].sort()).toEqual([...SEALED_TABLES].sort())
    for (const { value } of found) expect(value).toMatch(/^"?§ebb1\.[0-9a-f]{8}\./)
  })

  it('need their key, by its id, before anything is read', async () => {
    const url = await bench.address()
    await fill(url, OLD)
    await expect(openStore(url, null)).rejects.toThrow(
      `sealed with key ${OLD.id}: name the file that holds it in EBBLINE_KEY_FILE`,
    )
    await expect(openStore(url, null, undefined, NEW)).rejects.toThrow(
      `sealed with key ${OLD.id}, which is not among those given (${NEW.id})`,
    )
    // whoever reads no words may look
    const look = await openStore(url, null, undefined, 'unread')
    expect((await look.store.transaction((tx) => tx.practices())).length).toBe(1)
    await look.close()
  })

  it('from before the first key are read as they are, and closed by closeAll, again with a new key', async () => {
    const url = await bench.address()
    await fill(url, null)
    const before = await read(url, null)
    expect(await read(url, OLD)).toStrictEqual(before)
    const unsealed = (seal: Seal) => use(url, 'unread', (store) => store.notSealedWith(seal.id))
    const all = await unsealed(OLD)
    expect(all).toBe(SEALED_TABLES.length)
    for (const seal of [OLD, BOTH]) {
      const database = await openSealed(url, seal)
      expect(await readMark(database)).toMatchObject({ plain: seal === OLD })
      await closeAll(database, seal.id, () => {})
      await writeMark(database, { keys: [seal.id], plain: false })
      await database.close()
      for (const { value } of await lying(url)) expect(value).toContain(`§ebb1.${seal.id}.`)
      expect(await unsealed(seal)).toBe(0)
    }
    expect(await unsealed(OLD)).toBe(all)
    expect(await read(url, NEW)).toStrictEqual(before)
    await expect(openStore(url, null, undefined, OLD)).rejects.toThrow(NEW.id)
  })

  it('are closed from where it was stopped', async () => {
    const url = await bench.address()
    await fill(url, OLD)
    const notes = Array.from({ length: 150 }, (_, n) => put('note', { ...samples.note, id: `more:${n}` }))
    await use(url, OLD, ({ store }) => store.transaction((tx) => tx.apply(outcome(notes, []))))
    const database = await openSealed(url, BOTH)
    const stopped = new Error('stopped')
    let pages = 0
    const short: Database = {
      ...database,
      transaction(work) {
        pages += 1
        // a table a page, but for the notes: the second of them is not written
        if (pages > SEALED_TABLES.indexOf('Note') + 1) throw stopped
        return database.transaction(work)
      },
    }
    await expect(closeAll(short, NEW.id, () => {})).rejects.toBe(stopped)
    const before = new Set((await lying(url)).filter(isNew).map(({ value }) => value))
    expect(before.size).toBeGreaterThan(100)
    const told = new Map<string, number>()
    await closeAll(database, NEW.id, (table, rows) => void told.set(table, rows))
    await database.close()
    expect([told.get('Version'), told.get('Note')]).toEqual([0, 51])
    const after = await lying(url)
    expect(after.filter(({ value }) => before.has(value)).length).toBe(before.size)
    expect(after.every(isNew)).toBe(true)
  })

  // the same on both: one is enough
  if (bench.kind !== 'sqlite') return

  it('are erased, and counted, like any other', async () => {
    const url = await bench.address()
    await fill(url, OLD)
    const counts = await use(url, OLD, ({ store }) =>
      store.transaction((tx) => tx.erase('c:heron', new Date('2026-03-20T12:00:00Z'))),
    )
    expect(counts.version).toBe(1)
    expect(await lying(url)).toEqual([])
  })

  it('altered from outside are refused with the mend, and no word is repeated', async () => {
    const url = await bench.address()
    await fill(url, OLD)
    const database = await openSealed(url, null).catch(() => null)
    expect(database).toBeNull()
    const unread = await openStore(url, null, undefined, 'unread')
    await unread.store.transaction((tx) =>
      tx.apply(outcome([put('note', { ...samples.note, text: OLD.close('another', 'Note.text.n:2') })])),
    )
    await unread.close()
    await expect(read(url, OLD)).rejects.toThrow(
      `The text of row ${samples.note.id} in table Note was altered outside the bot: put back the latest backup`,
    )
  })

  it('leave nothing of the plain words in the file once they are closed', async () => {
    const url = await bench.address()
    await fill(url, null)
    const path = url.slice('file:'.length)
    const word = Buffer.from(samples.version.words)
    expect(readFileSync(path).includes(word)).toBe(true)
    const database = await openSealed(url, OLD)
    await closeAll(database, OLD.id, () => {})
    await database.scrub()
    await database.close()
    expect(readFileSync(path).includes(word)).toBe(false)
  })

  it('knows a mark from its text', () => expect(parseMark(null)).toBeNull())
})
