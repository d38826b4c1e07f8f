import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createSeal } from '../../src/seal.ts'
import { readAddress } from '../../src/store/address.ts'
import { type Moved, type MoveParts, move } from '../../src/store/move.ts'
import { openStore } from '../../src/store/open.ts'
import { TABLE_ORDER } from '../../src/store/tables.ts'
import { temporaryFolder } from './databases.ts'
import { everyRow } from './every-row.ts'
import { checkIn, ground, outcome, posting, put, samples } from './samples.ts'

// More than one batch.
const MANY = 600
export const seal = createSeal([Buffer.alloc(32, 1)])

export const pathOf = (url: string): string => url.slice('file:'.length)

/** Moves as the command does, with small files in a folder that is removed when the tests of this file are done. */
export function mover(): (from: string, to: string, parts?: Partial<MoveParts>) => Promise<Moved> {
  const folder = join(temporaryFolder(), 'data')
  return (from, to, parts = {}) =>
    move(readAddress(from), readAddress(to), {
      folder,
      nothingWaits: () => undefined,
      progress: () => undefined,
      stopped: () => false,
      ...parts,
    })
}

/** Told to stop once so many batches are over. */
export function stopAfter(batches: number): Pick<MoveParts, 'progress' | 'stopped'> {
  let over = -1
  return {
    progress: (step) => {
      if (step === 'copied') over += 1
    },
    stopped: () => over >= batches,
  }
}

const made = new Map<boolean, Buffer>()

/** A row of every table with something in every field, many check-ins, a setting, a claim; the words sealed. */
export async function filled(url: string, sealed = true): Promise<void> {
  const before = made.get(sealed)
  if (before) return writeFileSync(pathOf(url), before)
  await fill(url, sealed)
  made.set(sealed, readFileSync(pathOf(url)))
}

async function fill(url: string, sealed: boolean): Promise<void> {
  const key = sealed ? seal : null
  const { store, outbox, settings, close } = await openStore(url, null, 'boathouse/1', key)
  await store.transaction((tx) => tx.apply(ground('heron', 'dipper')))
  const rows = TABLE_ORDER.slice(2).map((table) => put(table, samples[table]))
  await store.transaction((tx) => tx.apply(outcome(rows, [posting('prompt/1'), posting('prompt/2')])))
  const more = Array.from({ length: MANY }, (_, n) =>
    checkIn('c:dipper', `d${String(n).padStart(5, '0')}`, { denied: null }),
  )
  await store.transaction((tx) => tx.apply(outcome(more.map((row) => put('checkIn', row)))))
  // the second stays claimed
  const [first] = await outbox.claim(samples.consent.at, 2, 9)
  await outbox.sent(first!.id, samples.consent.at, 'a channel', '100000000000000042')
  await settings.set('a fact', 'of the program')
  await close()
}

/** A database in the way in which both say the same, by table and row. */
export async function contents(url: string): Promise<string[]> {
  const rows = await everyRow(url)
  return rows
    .filter(({ table }) => table !== '_prisma_migrations' && !table.startsWith('sqlite_'))
    .map(({ table, row }) => `${table} ${Object.keys(row).length} ${String(row.id ?? row.key ?? row.name)}`)
    .sort()
}
