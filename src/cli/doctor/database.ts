import type { PracticeRow } from '../../engine/rows.ts'
import type { Seal } from '../../seal.ts'
import { inspectDatabase } from '../../store/inspect.ts'
import { openStore } from '../../store/open.ts'
import { StoreProblem } from '../../store/problem.ts'
import { keyProblem, MARK, type Mark, parseMark } from '../../store/sealed-mark.ts'
import { doctor } from '../../text/en/doctor.ts'
import { type Line, notOk, ok } from './line.ts'
import { severalLines } from './several.ts'

/** Room for the log of writes and a backup beside the file; a figure of our own. */
const LEAST_FREE = 200 * 2 ** 20

export interface DatabaseFound {
  readonly lines: readonly Line[]
  /** Null where the database cannot be read as it is. */
  readonly practices: readonly PracticeRow[] | null
}

/** The database, looked at without changing it; its practices where the tables are up to date. */
export async function databaseLines(
  url: string,
  { backupDays, seal }: { backupDays: number; seal: Seal | null },
  now: Date,
): Promise<DatabaseFound> {
  try {
    const { sound, pending, writable, freeBytes, lastBackup } = await inspectDatabase(url)
    const lines = [
      ok('database', doctor.open),
      sound ? ok('integrity', doctor.sound) : notOk('integrity', doctor.broken),
      pending === 0 ? ok('migrations', doctor.migrated) : notOk('migrations', doctor.pending(pending)),
      writable ? ok('database access', doctor.writable) : notOk('database access', doctor.readOnly),
      spaceLine(freeBytes),
      freeBytes === null
        ? ok('backups', doctor.backupServer(backupDays))
        : backupLine(lastBackup, backupDays, now),
    ]
    const readable = sound && writable && pending === 0
    if (!readable) return { lines, practices: null }
    const { practices, mark, unsealed } = await contentsOf(url, seal)
    const words = wordsLine(parseMark(mark), seal, unsealed)
    return { lines: [...lines, words, ...(await severalLines(url, false))], practices }
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error
    return { lines: [notOk('database', error.message)], practices: null }
  }
}

function spaceLine(free: number | null): Line {
  if (free === null) return ok('disk space', doctor.serversOwn)
  return free < LEAST_FREE
    ? notOk('disk space', doctor.spaceLow(free, LEAST_FREE))
    : ok('disk space', doctor.space(free))
}

const DAY_MS = 24 * 3_600_000

/** Somebody who copies the file by other means is not told that they do wrong. */
function backupLine(last: string | null, days: number, now: Date): Line {
  if (last === null) return ok('backups', doctor.backupNever(days))
  return now.getTime() - Date.parse(last) > days * DAY_MS
    ? notOk('backups', doctor.backupOld(last, days))
    : ok('backups', doctor.backupAt(last, days))
}

interface Contents {
  readonly practices: readonly PracticeRow[]
  readonly mark: string | null
  /** Rows with words that are not sealed with the key in use; 0 where there is none. */
  readonly unsealed: number
}

async function contentsOf(url: string, seal: Seal | null): Promise<Contents> {
  // looking changes nothing: the list of erasures and the note of the key are the bot's to keep
  const { store, settings, notSealedWith, close } = await openStore(url, null, undefined, 'unread')
  try {
    const practices = await store.transaction((tx) => tx.practices())
    const unsealed = seal === null ? 0 : await notSealedWith(seal.id)
    return { practices, mark: await settings.get(MARK), unsealed }
  } finally {
    await close()
  }
}

/** Whether what people wrote is sealed, and all of it with the key in use. */
function wordsLine(mark: Mark | null, seal: Seal | null, unsealed: number): Line {
  const problem = keyProblem(mark, seal)
  if (problem !== null) return notOk('words', problem)
  if (seal === null) return ok('words', doctor.wordsPlain)
  return unsealed === 0
    ? ok('words', doctor.wordsSealed(seal.id))
    : notOk('words', doctor.wordsPartly(seal.id, unsealed))
}
