import { parseArgs } from 'node:util'
import { readSettings } from '../config.ts'
import { backupsUntil } from '../engine/course/erase.ts'
import { type Backup, backUp } from '../store/backup.ts'
import { StoreProblem } from '../store/problem.ts'
import type { Io } from './io.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb backup FILE [--database URL]
Copies the database into a new file while the bot may run, checks the copy, and prints how many rows it holds. FILE is
for its owner alone (mode 0600), is never written over, and has its name only once it is whole. Keep it on another disk,
no longer than EBBLINE_BACKUP_DAYS (30), and with it a copy of the list of erasures that lies beside the database
(its name ends in -erased.jsonl). A PostgreSQL database is copied by pg_dump.
--database URL   file:PATH; else DATABASE_URL, else file:data/ebbline.db
Exit status: 0 made, 1 not made, and nothing is left under FILE, 2 wrong use.`

interface Options {
  readonly file: string
  readonly url: string
  readonly days: number
}

/** @throws Error in one sentence where the words typed or the settings cannot be used */
function optionsOf(args: string[]): Options {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { database: { type: 'string' } },
  })
  const [file, second] = positionals
  if (file === undefined || second !== undefined) throw new Error('Name one new file for the backup.')
  const { databaseUrl, backupDays } = readSettings(process.env)
  return { file, url: values.database ?? databaseUrl, days: backupDays }
}

export async function run(args: string[], io: Io, now: () => Date = () => new Date()): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  const at = now()
  try {
    await tell(options, await backUp(options.url, options.file, at), at, io)
    return 0
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error
    io.err(error.message)
    return 1
  }
}

async function tell({ file, days }: Options, { counts, noted }: Backup, at: Date, io: Io): Promise<void> {
  for (const [table, rows] of Object.entries(counts)) await io.out(`${table.padEnd(10)} ${rows}`)
  io.err(
    `${file} is whole and checked. Whoever is erased from now on may still be in it: remove it by ${backupsUntil(at, 'utc', days)}.`,
  )
  if (!noted) io.err('The database could not be written, so ebb doctor will not know of this backup.')
}
