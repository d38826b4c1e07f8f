import type { Db } from './database.ts'
import { HALF_MOVED, type MovedTable } from './move-tables.ts'
import { StoreProblem } from './problem.ts'

/** How far a move is. */
export interface MoveNote {
  /** The database that is moved, without user and password. */
  readonly from: string
  /** The table that comes next, or is under way; null once all rows are over and have yet to be compared. */
  readonly table: MovedTable | null
  /** Key of the last row that is over of this table; null: none yet. */
  readonly after: string | null
  /** Rows that are over, of all tables. */
  readonly rows: number
}

export const parseNote = (value: string | null | undefined): MoveNote | null =>
  value ? (JSON.parse(value) as MoveNote) : null

export async function readNote(db: Db): Promise<MoveNote | null> {
  const row = await db.setting.findUnique({ where: { key: HALF_MOVED } })
  return parseNote(row?.value)
}

/**
 * In the transaction of the rows that it tells of.
 * @throws StoreProblem where it is not the one that was written last: somebody else moves into this database too
 */
export async function writeNote(db: Db, before: MoveNote | null, note: MoveNote): Promise<void> {
  const there = await readNote(db)
  if (JSON.stringify(there) !== JSON.stringify(before))
    throw new StoreProblem(
      'Another ebb move writes into this database: let that one end, then run this again.',
    )
  const value = JSON.stringify(note)
  await db.setting.upsert({
    where: { key: HALF_MOVED },
    create: { key: HALF_MOVED, value },
    update: { value },
  })
}

/** What keeps the bot from using a database; null: nothing. */
export const halfMoved = (note: MoveNote | null): string | null =>
  note &&
  `This database holds half of ${note.from}: finish it with ebb move, with the bot stopped, or name another in DATABASE_URL.`
