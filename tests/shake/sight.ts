import SqliteDatabase from 'better-sqlite3'
import type { Delivered, Played } from '../../src/rehearsal/player/index.ts'

type Row = Record<string, string | number | null>

/** What the invariants look at after a step. */
export interface Sight {
  readonly now: Date
  /** All that was delivered so far, and since the step before. */
  readonly delivered: readonly Delivered[]
  readonly fresh: readonly Delivered[]
  /** Messages that clients have sent so far, by alias. */
  readonly said: ReadonlyMap<string, number>
  /** No fault lasts, and none has for longer than the longest wait before another try. */
  readonly calm: boolean
  /** The database as it lies on the disk, read beside the bot. */
  rows(sql: string): Row[]
}

// The longest wait before another try is 5 min; the tick after it sends.
const CALM_MS = 6 * 60_000

/** Looks at a play after every step: at what was delivered, and at the database file past the bot. */
export function watcher(file: string) {
  let db: SqliteDatabase.Database | null = null
  let seen = 0
  let faultAt = Number.NEGATIVE_INFINITY
  return {
    /** Null while the database itself is what is struck. */
    sight({ stage, log }: Played, now: Date): Sight | null {
      const isStruck = stage.nextMend() !== null
      if (isStruck) faultAt = now.getTime()
      // a file that is moved away by a fault must not be held open under its old name
      if (isStruck) {
        db?.close()
        db = null
        return null
      }
      db ??= new SqliteDatabase(file, { readonly: true })
      const delivered = log.lines.map(({ message }) => message)
      const fresh = delivered.slice(seen)
      seen = delivered.length
      return {
        now,
        delivered,
        fresh,
        said: saidBy(log.story),
        calm: now.getTime() - faultAt > CALM_MS,
        rows: (sql) => db!.prepare(sql).all() as Row[],
      }
    },
    close(): void {
      db?.close()
      db = null
    },
  }
}

/** Words alone count: a press, a form and a command are no messages. */
function saidBy(story: Played['log']['story']): Map<string, number> {
  const counts = new Map<string, number>()
  for (const one of story)
    if ('who' in one && one.what.startsWith('“')) counts.set(one.who, (counts.get(one.who) ?? 0) + 1)
  return counts
}
