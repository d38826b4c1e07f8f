import { parseArgs } from 'node:util'
import { readSettings } from '../config.ts'
import { allRows, backupsUntil, eraseClient } from '../engine/course/erase.ts'
import { Draft } from '../engine/draft.ts'
import type { RowCounts } from '../engine/ports.ts'
import { isLocked } from '../engine/status.ts'
import { StoreProblem } from '../store/problem.ts'
import { textsFor } from '../text/index.ts'
import type { Io } from './io.ts'
import { clientByAlias, NotFound, withStore } from './practice-store.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb erase CLIENT [--yes] [--database URL] [--practice NAME]
Erases every row about a client, for good, and prints how many went from each table.
--yes            do it; without it the counts are shown and nothing is changed
--database URL   file:PATH or postgresql://…; else DATABASE_URL, else file:data/ebbline.db
--practice NAME  where several practices know the alias
Backups made before, files exported, and the chat platform's own copies are out of reach of this: a backup may hold the
client until it is removed, EBBLINE_BACKUP_DAYS (30) after it was made. One put back does not bring the client back.
Exit status: 0 erased, 1 no such client or database, 2 wrong use, or --yes is missing.`

interface Options {
  readonly alias: string
  readonly yes: boolean
  readonly database: string | undefined
  readonly practice: string | undefined
  readonly days: number
}

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): Options {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      yes: { type: 'boolean', default: false },
      database: { type: 'string' },
      practice: { type: 'string' },
    },
  })
  const [alias, second] = positionals
  if (alias === undefined || second !== undefined) throw new Error('Name one client by alias.')
  const { backupDays: days } = readSettings(process.env)
  return { alias, yes: values.yes, database: values.database, practice: values.practice, days }
}

interface Outcome {
  readonly counts: RowCounts
  readonly locked: boolean
}

const erase = ({ alias, yes, database, practice }: Options, now: Date): Promise<Outcome> =>
  withStore(database, ({ store }) =>
    store.transaction(async (tx) => {
      const file = await clientByAlias(tx, alias, practice)
      const draft = new Draft(file, now, `erase@${now.toISOString()}`, textsFor)
      const counts = yes ? await eraseClient(tx, draft) : await tx.rowsOf(file.client.id)
      return { counts, locked: isLocked(file) }
    }),
  )

const backups = (now: Date, days: number): string =>
  `Backups made before now may hold a copy until ${backupsUntil(now, 'utc', days)}; they, files exported and the chat platform’s own copies are out of reach.`

async function tell(
  { alias, yes, days }: Options,
  { counts, locked }: Outcome,
  now: Date,
  io: Io,
): Promise<void> {
  for (const [table, rows] of Object.entries(counts)) await io.out(`${table.padEnd(10)} ${rows}`)
  await io.out(`${'all'.padEnd(10)} ${allRows(counts)}`)
  if (locked) io.err(`An urgent sign of ${alias} is open: they were told to seek care, and that stands.`)
  if (yes) {
    io.err(`${alias} has been erased. ${backups(now, days)}`)
    return
  }
  io.err(
    `This would be erased of ${alias}, for good. Nothing was changed: run it again with --yes. ${backups(now, days)}`,
  )
}

export async function run(args: string[], io: Io, now: () => Date = () => new Date()): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  try {
    const at = now()
    await tell(options, await erase(options, at), at, io)
    return options.yes ? 0 : 2
  } catch (error) {
    if (!(error instanceof NotFound || error instanceof StoreProblem)) throw error
    io.err(error.message)
    return 1
  }
}
