import { parseArgs } from 'node:util'
import { readSettings } from '../config.ts'
import { readSeal } from '../keys.ts'
import type { Seal } from '../seal.ts'
import { StoreProblem } from '../store/problem.ts'
import { type Restored, restore, WouldReplace } from '../store/restore.ts'
import type { Io } from './io.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb restore FILE [--replace] [--database URL]
Puts a backup in the place of the database and prints how many rows it holds. Stop the bot first: it is refused while
another program has the database open. FILE stays as it is; its copy is checked, brought up to date where it is of an
older version, and whoever was erased since is erased again, by the list of erasures beside the database.
--replace        a database is there: keep it beside under a dated name, and put the backup in its place
--database URL   file:PATH; else DATABASE_URL, else file:data/ebbline.db
What came after the backup is not in it. At its next start the bot reads again what clients have written meanwhile;
messages that waited when the backup was made may be sent a second time. A backup whose words are sealed needs the key
of its time in EBBLINE_KEY_FILE. Into PostgreSQL goes pg_restore.
Exit status: 0 restored, 1 not restored, and nothing was changed, 2 wrong use, or --replace is missing.`

interface Options {
  readonly file: string
  readonly url: string
  readonly replace: boolean
  readonly seal: Seal | null
}

/** @throws Error in one sentence where the words typed or the settings cannot be used */
function optionsOf(args: string[]): Options {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { database: { type: 'string' }, replace: { type: 'boolean', default: false } },
  })
  const [file, second] = positionals
  if (file === undefined || second !== undefined) throw new Error('Name one backup.')
  const settings = readSettings(process.env)
  const seal = readSeal(settings)
  return { file, url: values.database ?? settings.databaseUrl, replace: values.replace, seal }
}

export async function run(args: string[], io: Io, now: () => Date = () => new Date()): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  const { url, file, ...how } = options
  try {
    await tell(file, await restore(url, file, { ...how, now: now() }), io)
    return 0
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error
    io.err(error.message)
    return error instanceof WouldReplace ? 2 : 1
  }
}

async function tell(file: string, restored: Restored, io: Io): Promise<void> {
  const { counts, migrated, erasures, noLedger, kept } = restored
  for (const [table, rows] of Object.entries(counts)) await io.out(`${table.padEnd(10)} ${rows}`)
  if (migrated > 0)
    io.err(`The backup was of an older version: ${migrated} change(s) of its tables were made.`)
  if (erasures.again > 0)
    io.err(`Erased since the backup, and erased again in it: ${erasures.again} client(s).`)
  if (noLedger !== null)
    io.err(
      `There is no list of erasures at ${noLedger}, so whoever was erased after this backup may be back: put the list there and start the bot, or erase them again with ebb erase CLIENT.`,
    )
  if (erasures.unreadable > 0)
    io.err(
      `The list of erasures has ${erasures.unreadable} line(s) that cannot be read: look whom you have erased lately, and erase them again with ebb erase CLIENT.`,
    )
  if (erasures.problem !== null) io.err(erasures.problem)
  if (kept !== null)
    io.err(
      `The database that was there lies at ${kept}: it holds clients' data, so remove it once you are sure.`,
    )
  io.err(`${file} has been restored. Start the bot.`)
}
