import type { Seal } from '../seal.ts'
import type { Database } from './database.ts'
import { StoreProblem } from './problem.ts'

/** The setting that holds it. */
export const MARK = 'sealed-with'

/** Which keys the words of a database are closed with. */
export interface Mark {
  /** Ids of the keys that some row may need. */
  readonly keys: readonly string[]
  /** Rows from before the first key may be plain. */
  readonly plain: boolean
}

export const parseMark = (value: string | null): Mark | null =>
  value === null ? null : (JSON.parse(value) as Mark)

export const readMark = (database: Database): Promise<Mark | null> =>
  database.use(async (db) => {
    const row = await db.setting.findUnique({ where: { key: MARK } })
    return parseMark(row?.value ?? null)
  })

export const writeMark = (database: Database, mark: Mark): Promise<void> =>
  database.use(async (db) => {
    const value = JSON.stringify(mark)
    await db.setting.upsert({ where: { key: MARK }, create: { key: MARK, value }, update: { value } })
  })

/** What keeps these keys from opening a database with this mark, and the mend; null: nothing. */
export function keyProblem(mark: Mark | null, seal: Seal | null): string | null {
  const missing = (mark?.keys ?? []).filter((id) => !seal?.ids.includes(id))
  if (missing.length === 0) return null
  const sealed = `The words in this database are sealed with key ${missing.join(', ')}`
  return seal === null
    ? `${sealed}: name the file that holds it in EBBLINE_KEY_FILE.`
    : `${sealed}, which is not among those given (${seal.ids.join(', ')}): add it to the key file, a line each; the first closes, all of them open.`
}

/**
 * Refuses a database whose words these keys cannot open, before anything is read or written.
 * @throws StoreProblem that names the key that is missing
 */
export async function mustOpen(database: Database, seal: Seal | null): Promise<Mark | null> {
  const mark = await readMark(database)
  const problem = keyProblem(mark, seal)
  if (problem !== null) throw new StoreProblem(problem)
  return mark
}

/** Notes that rows are closed with this key from now on. */
export async function noteKey(database: Database, seal: Seal, mark: Mark | null): Promise<void> {
  if (mark?.keys.includes(seal.id)) return
  await writeMark(database, { keys: [...(mark?.keys ?? []), seal.id], plain: mark?.plain ?? true })
}
