import type { Address } from './address.ts'
import { sumOf, type TableSum } from './move-check.ts'
import { HALF_MOVED, type MoveNote, writeNote } from './move-note.ts'
import { type MoveSource, nameOf, openSource } from './move-source.ts'
import { countOf, keyOf, MOVED, type MovedRow, type MovedTable, movedTable, pageOf } from './move-tables.ts'
import { finish, type MoveTarget, openTarget } from './move-target.ts'
import { codeOf, StoreProblem } from './problem.ts'
import { toStored } from './tables.ts'

/** How a move goes on. */
export interface MoveWatch {
  /** After every batch: rows that are over, or that have been compared in both databases, and how many there are. */
  progress(step: 'copied' | 'compared', done: number, of: number): void
  /** True once it shall stop: it ends after the batch under way. */
  stopped(): boolean
}

/** What a table holds in both databases. */
export type Moved = TableSum & { readonly table: MovedTable }

/** It was told to stop. */
export class MoveStopped extends StoreProblem {}

/**
 * Copies every row of one database into another, batch by batch, each in a transaction with a note of how far it is;
 * what an earlier run brought is not copied again. Then both are read as a whole and compared table by table. Sealed
 * words move as they are. The first database is not written.
 * @throws StoreProblem in one sentence with the mend; MoveStopped
 */
export async function move(from: Address, to: Address, watch: MoveWatch): Promise<Moved[]> {
  const name = nameOf(from)
  const source = await openSource(from)
  try {
    const target = await openTarget(to, name)
    try {
      const note = await copyAll(source, target, watch)
      const moved = await compareAll(source, target, watch)
      await source.mustBeAlone()
      await finish(target, note)
      return moved
    } finally {
      await target.database.close()
    }
  } finally {
    await source.close()
  }
}

async function copyAll(source: MoveSource, target: MoveTarget, watch: MoveWatch): Promise<MoveNote> {
  let all = 0
  for (const table of MOVED) all += await countOf(source.db, table, HALF_MOVED)
  let { note } = target
  watch.progress('copied', note.rows, all)
  while (note.table !== null) {
    if (watch.stopped()) throw stoppedAt(note.rows, all)
    note = await copyPage(source, target, note, note.table)
    watch.progress('copied', note.rows, all)
  }
  return note
}

async function copyPage(
  source: MoveSource,
  { database }: MoveTarget,
  before: MoveNote,
  table: MovedTable,
): Promise<MoveNote> {
  const page = await pageOf(source.db, table, before.after, HALF_MOVED)
  const last = page.at(-1)
  const note: MoveNote = last
    ? { ...before, after: last[keyOf(table)] as string, rows: before.rows + page.length }
    : { ...before, table: MOVED[MOVED.indexOf(table) + 1] ?? null, after: null }
  await database
    .transaction(async (db) => {
      await writeNote(db, before, note)
      if (last) await movedTable(db, table).createMany({ data: page.map((row): MovedRow => toStored(row)) })
    })
    .catch((error) => {
      throw misfit(error, table)
    })
  return note
}

const stoppedAt = (rows: number, all: number): MoveStopped =>
  new MoveStopped(
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

async function compareAll(source: MoveSource, target: MoveTarget, watch: MoveWatch): Promise<Moved[]> {
  let [all, done] = [0, 0]
  for (const table of MOVED) all += 2 * (await countOf(source.db, table, HALF_MOVED))
  const tell = (rows: number): void => {
    done += rows
    watch.progress('compared', done, all)
    if (watch.stopped()) throw stoppedAt(all / 2, all / 2)
  }
  const moved: Moved[] = []
  for (const table of MOVED) {
    const there = await sumOf(source.db, table, tell)
    const here = await target.database.use((db) => sumOf(db, table, tell))
    if (there.rows !== here.rows || there.sum !== here.sum) throw differs(table, there, here)
    moved.push({ table, ...here })
  }
  return moved
}

const differs = (table: MovedTable, there: TableSum, here: TableSum): StoreProblem =>
  new StoreProblem(
    `The table ${table} is not the same in both (${there.rows} rows in the old database, ${here.rows} in the new), so the old one was written since the move began, or the new one was: ${ANEW}.`,
  )
