import { parseArgs } from 'node:util'
import { readSettings, SettingsError } from '../config.ts'
import { LADDERS } from '../domain/ladder/ladders.ts'
import { pageOf } from '../drawing.ts'
import { type DrawnReport, reportOf } from '../engine/coach/report.ts'
import { Draft } from '../engine/draft.ts'
import { readOwnLadders } from '../own-ladders.ts'
import { drawReportPdf, drawReportPng } from '../picture/report/index.ts'
import { StoreProblem } from '../store/problem.ts'
import { textsFor } from '../text/index.ts'
import { setOwnLadders } from '../text/own-ladders.ts'
import type { Io } from './io.ts'
import { clientByAlias, NotFound, withStore } from './practice-store.ts'
import { writePrivate } from './private-file.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb report CLIENT --out FILE [--database URL] [--practice NAME]
Writes the one-page report for a clinician: the whole course of a client, on A4. FILE ends in .pdf or .png, and only
its owner may read it: it holds health information.
--out FILE       where the report goes; a file of that name is replaced
--database URL   file:PATH or postgresql://…; else DATABASE_URL, else file:data/ebbline.db
--practice NAME  where several practices know the alias
The practice's own ladders are named as the bot names them where EBBLINE_LADDERS says where they are.
Exit status: 0 done, 1 no such client or database, or the file cannot be written, 2 wrong use.`

const DRAW = { pdf: drawReportPdf, png: drawReportPng } as const
type Ending = keyof typeof DRAW

interface Options {
  readonly alias: string
  readonly out: string
  readonly ending: Ending
  readonly database: string | undefined
  readonly practice: string | undefined
}

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): Options {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { out: { type: 'string' }, database: { type: 'string' }, practice: { type: 'string' } },
  })
  const [alias, second] = positionals
  if (alias === undefined || second !== undefined) throw new Error('Name one client by alias.')
  const { out, database, practice } = values
  const ending = /\.(pdf|png)$/i.exec(out ?? '')?.[1]?.toLowerCase()
  if (out === undefined || ending === undefined)
    throw new Error('Name the file with --out, ending in .pdf or .png.')
  return { alias, out, ending: ending as Ending, database, practice }
}

/** The facts of a client's report as they stand at an instant. */
async function factsOf({ alias, database, practice }: Options, now: Date): Promise<DrawnReport> {
  const own = readOwnLadders(readSettings(process.env).ladders)
  setOwnLadders(own)
  const ladders = [...LADDERS, ...own.map(({ ladder }) => ladder)]
  return withStore(database, ({ store }) =>
    store.transaction(async (tx) => {
      const file = await clientByAlias(tx, alias, practice)
      const draft = new Draft(file, now, 'report', textsFor, now, ladders)
      // the words stay out of the coach's channel where a practice wishes so; here the keeper asks for them
      return { language: file.practice.language, facts: reportOf(draft, file, { words: true }) }
    }),
  )
}

const isToldAsItIs = (error: unknown): error is Error =>
  error instanceof StoreProblem || error instanceof NotFound || error instanceof SettingsError

export async function run(args: string[], io: Io, now: () => Date = () => new Date()): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  try {
    const drawn = await factsOf(options, now())
    const bytes = await DRAW[options.ending](...pageOf(drawn))
    writePrivate(options.out, bytes)
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    if (isToldAsItIs(error)) io.err(error.message)
    else if (code === undefined) throw error
    else io.err(`The report cannot be written to ${options.out} (${code}): name another file.`)
    return 1
  }
  await io.out(
    `${options.out}: the report of ${options.alias}, one page. Hand it over only where they agree.`,
  )
  return 0
}
