import { setImmediate as turn } from 'node:timers/promises'
import type { Address } from './address.ts'
import type { Db } from './database.ts'
import { ledgerPlace } from './ledger.ts'
import { sumOf, type TableSum } from './move-check.ts'
import { type MovedLedger, moveLedger } from './move-ledger.ts'
import { type MoveNote, writeNote } from './move-note.ts'
import { type MoveSource, nameOf, openSource } from './move-source.ts'
import { countOf, keyOf, MOVED, type MovedRow, type MovedTable, movedTable, pageOf } from './move-tables.ts'
import { finish, type MoveTarget, openTarget } from './move-target.ts'
import { onSide } from './move-trouble.ts'
import { codeOf, StoreProblem } from './problem.ts'
import { toStored } from './tables.ts'

/** What a move is given, and tells. */
export interface MoveParts {
  /** Where the small files of a bot lie that uses a server. */
  readonly folder: string
  /** Throws while something waits that the first database has not taken up: asked before the first step and the last. */
  nothingWaits(): void
  /** After every batch: rows that are over, or that have been compared in both databases, and how many there are. */
  progress(step: 'copied' | 'compared', done: number, of: number): void
  /** True once it shall stop: it ends after the batch under way. */
  stopped(): boolean
}

/** What came over. */
export interface Moved {
  readonly tables: readonly MovedSum[]
  readonly ledger: MovedLedger
}

/** What a table holds in both databases. */
export type MovedSum = TableSum & { readonly table: MovedTable }

interface Both {
  readonly source: MoveSource
  readonly target: MoveTarget
  readonly on: { from: Run; to: Run }
  readonly parts: MoveParts
}
type Run = <T>(work: () => Promise<T>) => Promise<T>

/**
 * Copies every row of one database into another, batch by batch, each in a transaction with a note of how far it is;
 * what an earlier run brought is not copied again. Then both are read as a whole and compared table by table. Sealed
 * words move as they are; the list of erasures comes along. The first database is not written.
 * @throws StoreProblem in one sentence with the mend, also where it was told to stop
 */
export async function move(from: Address, to: Address, parts: MoveParts): Promise<Moved> {
  const on: Both['on'] = {
    from: (work) => onSide('--from', from, work),
    to: (work) => onSide('--to', to, work),
  }
  parts.nothingWaits()
  const source = await on.from(() => openSource(from))
  try {
    const target = await on.to(() => openTarget(to, nameOf(from)))
    try {
      const both = { source, target, on, parts }
      const note = await copyAll(both)
      const tables = await compareAll(both)
      const ledger = moveLedger(ledgerPlace(from, parts.folder)!, ledgerPlace(to, parts.folder)!)
      await on.from(source.mustBeAlone)
      parts.nothingWaits()
      await on.to(() => finish(target, note))
      return { tables, ledger }
    } finally {
      await target.database.close()
    }
  } finally {
    await source.close()
  }
}

async function copyAll(both: Both): Promise<MoveNote> {
  const { source, target, on, parts } = both
  const all = await on.from(() => countAll(source.db))
  let { note } = target
  parts.progress('copied', note.rows, all)
  while (note.table !== null) {
    // two files are copied without ever waiting, and a signal is only heard between two turns
    await turn()
    if (parts.stopped()) throw stoppedAt(note.rows, all)
    note = await copyPage(both, note, note.table)
    parts.progress('copied', note.rows, all)
  }
  return note
}

async function countAll(db: Db): Promise<number> {
  let all = 0
  for (const table of MOVED) all += await countOf(db, table)
  return all
}

async function copyPage(
  { source, target, on }: Both,
  before: MoveNote,
  table: MovedTable,
): Promise<MoveNote> {
  const page = await on.from(() => pageOf(source.db, table, before.after))
  const last = page.at(-1)
  const note: MoveNote = last
    ? { ...before, after: last[keyOf(table)] as string, rows: before.rows + page.length }
    : { ...before, table: MOVED[MOVED.indexOf(table) + 1] ?? null, after: null }
  const write = (db: Db): Promise<void> => writePage(db, table, page, [before, note])
  await on.to(() => target.database.transaction(write))
  return note
}

async function writePage(
  db: Db,
  table: MovedTable,
  page: readonly MovedRow[],
  [before, note]: [MoveNote, MoveNote],
): Promise<void> {
  await writeNote(db, before, note)
  if (page.length === 0) return
  try {
    await movedTable(db, table).createMany({ data: page.map(toStored) })
  } catch (error) {
    throw misfit(error, table)
  }
}

const stoppedAt = (rows: number, all: number): StoreProblem =>
  new StoreProblem(
    `Stopped with ${rows} of ${all} rows copied: run the same again to go on; until then no bot starts on the new database.`,
  )

const ANEW = 'empty the database of --to (dropdb and createdb, or remove the file) and move again'

// What Prisma says where a row is there already, and where the row that it refers to is not.
const TWICE = 'P2002'
const ORPHAN = 'P2003'

/** Rows that do not fit those that an earlier run brought. */
function misfit(error: unknown, table: MovedTable): unknown {
  if (![TWICE, ORPHAN].includes(codeOf(error))) return error
  return new StoreProblem(
    `Rows of ${table} do not fit what was copied before, so the old database was written meanwhile: ${ANEW}.`,
    { cause: error },
  )
}

async function compareAll({ source, target, on, parts }: Both): Promise<MovedSum[]> {
  const all = await on.from(() => countAll(source.db))
  let done = 0
  const tell = async (rows: number): Promise<void> => {
    done += rows
    parts.progress('compared', done, 2 * all)
    await turn()
    if (parts.stopped()) throw stoppedAt(all, all)
  }
  const tables: MovedSum[] = []
  for (const table of MOVED) {
    const there = await on.from(() => sumOf(source.db, table, tell))
    const here = await on.to(() => target.database.use((db) => sumOf(db, table, tell)))
    if (there.rows !== here.rows || there.sum !== here.sum) throw differs(table, there, here)
    tables.push({ table, ...here })
  }
  return tables
}

const differs = (table: MovedTable, there: TableSum, here: TableSum): StoreProblem =>
  new StoreProblem(
    `The table ${table} is not the same in both (${there.rows} rows in the old database, ${here.rows} in the new), so the old one was written since the move began, or the new one was: ${ANEW}.`,
  )
