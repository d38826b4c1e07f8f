import { mkdirSync } from 'node:fs'
import { open, rename, writeFile } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'

/** Where the two small files of the way without a store lie. */
export interface Places {
  /** The database file; null for a server. */
  readonly database: string | null
  readonly known: string
  readonly spool: string
}

/**
 * Beside the database file, or in the folder named.
 * @param database path of the SQLite file; null for a server, whose files lie in `data`
 * @param folder where they lie instead; null: not set
 */
export function placesFor(database: string | null, folder: string | null): Places {
  const name = database === null ? 'ebbline' : basename(database)
  const base = folder ?? (database === null ? 'data' : dirname(database))
  return { database, known: join(base, `${name}-known.json`), spool: join(base, `${name}-spool`) }
}

/** Makes the folder of a file where it is missing, closed to others. */
export const makeFolder = (path: string): void =>
  void mkdirSync(dirname(path), { recursive: true, mode: 0o700 })

/** Replaces a file (mode 0600) as a whole: after a power cut there is the old one or the new one. */
export async function replaceFile(path: string, text: string | Iterable<string>): Promise<void> {
  makeFolder(path)
  const fresh = `${path}.new`
  const file = await open(fresh, 'w', 0o600)
  try {
    await file.chmod(0o600)
    await writeFile(file, text)
    await file.sync()
  } finally {
    await file.close()
  }
  await rename(fresh, path)
  const folder = await open(dirname(path), 'r')
  await folder.sync().finally(() => folder.close())
}

/** Writes on behind a file (mode 0600): after a power cut all of it is there, or part of it. */
export async function extendFile(path: string, text: string): Promise<void> {
  const file = await open(path, 'a', 0o600)
  try {
    await file.writeFile(text)
    await file.datasync()
  } finally {
    await file.close()
  }
}
