import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { type Diary, UnreadableDiary } from '../domain/history-csv/diary.ts'
import { diaryFromCsv } from '../domain/history-csv/from-csv.ts'
import { type ImportResult, importDiary } from '../engine/course/import.ts'
import { Draft } from '../engine/draft.ts'
import { StoreProblem } from '../store/problem.ts'
import { importTexts, problemLine, unreadableLine } from '../text/en/diary.ts'
import { textsFor } from '../text/index.ts'
import type { Io } from './io.ts'
import { clientByAlias, NotFound, withStore } from './practice-store.ts'
import { unread } from './unread.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb import CLIENT FILE [--dry-run] [--replace] [--partly] [--database URL] [--practice NAME]
Takes a past diary into the record of a client who has agreed. FILE is CSV as ebb assess reads it; of its columns
sessions, planned, reach, pain, signs, comfort and settled are taken, each day marked as filled in later. Signs in it
raise no alert: they are named here and to the coach, who should ask.
--dry-run        say what would be taken, and change nothing
--replace        let the file put right days that are there already (the earlier version stays in the trail)
--partly         take the good lines although others cannot be taken; without it one bad line keeps all of it out
--database URL   file:PATH or postgresql://…; else DATABASE_URL, else file:data/ebbline.db
--practice NAME  where several practices know the alias
Exit status: 0 all taken, 1 lines that cannot be taken (each named with its number), no such client or database,
2 wrong use.`

interface Options {
  readonly alias: string
  readonly diary: Diary
  readonly lines: readonly string[]
  readonly dry: boolean
  readonly replace: boolean
  readonly partly: boolean
  readonly database: string | undefined
  readonly practice: string | undefined
}

/** @throws Error in one sentence where the words typed, or the file as a whole, cannot be used */
function optionsOf(args: string[]): Options {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      'dry-run': { type: 'boolean', default: false },
      replace: { type: 'boolean', default: false },
      partly: { type: 'boolean', default: false },
      database: { type: 'string' },
      practice: { type: 'string' },
    },
  })
  const [alias, file, third] = positionals
  if (alias === undefined || file === undefined || third !== undefined)
    throw new Error('Name one client by alias, and one file.')
  const { replace, partly, database, practice } = values
  return { alias, ...read(file), dry: values['dry-run'], replace, partly, database, practice }
}

function read(file: string): { diary: Diary; lines: string[] } {
  let text: string
  try {
    text = readFileSync(file, 'utf8')
  } catch (error) {
    throw new Error(unread('file', file, error))
  }
  try {
    const lines = text.replace(/^\uFEFF/, '').split(/\r\n?|\n/)
    return { diary: diaryFromCsv(text), lines }
  } catch (error) {
    if (error instanceof UnreadableDiary) throw new Error(unreadableLine(error.why, error.detail))
    throw error
  }
}

interface Taken {
  readonly result: ImportResult
  readonly written: boolean
}

const take = (options: Options, now: Date): Promise<Taken> =>
  withStore(options.database, ({ store }) =>
    store.transaction(async (tx) => {
      const file = await clientByAlias(tx, options.alias, options.practice)
      if (file.consent?.answer !== 'yes') throw new NotFound(importTexts.noConsent(options.alias))
      const draft = new Draft(file, now, `import@${now.toISOString()}`, textsFor)
      const result = importDiary(draft, options.diary, options)
      const bad = options.diary.problems.length + result.notTaken.length > 0
      const written = !options.dry && (!bad || options.partly) && result.days.length > 0
      if (written) await tx.apply(draft.outcome)
      return { result, written }
    }),
  )

/** Every line that cannot be taken, in the order of the file, then signs, then what came of it. */
async function tell(options: Options, { result, written }: Taken, io: Io): Promise<number> {
  const bad = [
    ...options.diary.problems.map((problem) => ({ line: problem.line, text: problemLine(problem, 'csv') })),
    ...result.notTaken.map((row) => ({ line: row.line, text: importTexts.notTaken(row) })),
  ].sort((a, b) => a.line - b.line)
  for (const { text } of bad) io.err(text)
  for (const row of result.signs) io.err(importTexts.signs(row))
  const { days, replaced } = result
  await io.out(
    importTexts.outcome({ days, replaced: replaced.length, bad: bad.length, written, dry: options.dry }),
  )
  return bad.length > 0 ? 1 : 0
}

export async function run(args: string[], io: Io, now: () => Date = () => new Date()): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  try {
    return await tell(options, await take(options, now()), io)
  } catch (error) {
    if (!(error instanceof NotFound || error instanceof StoreProblem)) throw error
    io.err(error.message)
    return 1
  }
}
