import { parseArgs } from 'node:util'
import { readSettings, SettingsError } from '../config.ts'
import { readSeal } from '../keys.ts'
import type { Seal } from '../seal.ts'
import { openSealed } from '../store/open.ts'
import { StoreProblem } from '../store/problem.ts'
import { closeAll } from '../store/sealed-close.ts'
import { writeMark } from '../store/sealed-mark.ts'
import type { Io } from './io.ts'
import { mustBeThere } from './practice-store.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb rekey [--database URL]
Seals all that people wrote with the first key of EBBLINE_KEY_FILE: after the first key was set, and after a new one was
put before the old. Stop the bot before. It may be stopped at any time: run again, it goes on where it was. When it is
done, the older keys may go, but keep them as long as you keep backups from their time.
EBBLINE_KEY_FILE  a file for its owner alone (mode 0600), a key a line: 32 bytes in base64 or hexadecimal
EBBLINE_KEY       the same in the environment, where there is no file
--database URL    file:PATH or postgresql://…; else DATABASE_URL, else file:data/ebbline.db
Exit status: 0 done, 1 no such database, or a key is missing, 2 wrong use.`

/** @throws Error in one sentence where the words typed or the settings cannot be used */
function optionsOf(args: string[]): { url: string; seal: Seal } {
  const { values } = parseArgs({ args, options: { database: { type: 'string' } } })
  const settings = readSettings(process.env)
  const seal = readSeal(settings)
  if (seal === null) throw new SettingsError('There is no key: name a file of keys in EBBLINE_KEY_FILE.')
  return { url: values.database ?? settings.databaseUrl, seal }
}

export async function run(args: string[], io: Io): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  try {
    const { url, seal } = options
    mustBeThere(url)
    const database = await openSealed(url, seal)
    try {
      await closeAll(database, seal.id, (table, rows) => io.err(`${table.padEnd(10)} ${rows}`))
      await writeMark(database, { keys: [seal.id], plain: false })
      await database.scrub()
    } finally {
      await database.close()
    }
    await io.out(`All that people wrote is sealed with key ${seal.id}.`)
    return 0
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error
    io.err(error.message)
    return 1
  }
}
