import { parseArgs } from 'node:util'
import { EXPORT_FORMATS, type ExportFormat, exportText } from '../engine/course/export.ts'
import { StoreProblem } from '../store/problem.ts'
import { textsFor } from '../text/index.ts'
import type { Io } from './io.ts'
import { clientByAlias, NotFound, withStore } from './practice-store.ts'
import { writePrivate } from './private-file.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb export CLIENT [--format json|csv|fhir] [--out FILE] [--notes] [--database URL] [--practice NAME]
Writes everything kept of a client. It is health information: FILE may be read by its owner alone.
--format json    all of it, every version with its words (the default)
         csv     the days, as ebb assess and ebb import read them
         fhir    an HL7 FHIR R4 Bundle: Patient by alias, Observation, QuestionnaireResponse, CarePlan
--out FILE       where it goes (default standard output); a file of that name is replaced
--notes          with the coach's own notes (json alone)
--database URL   file:PATH or postgresql://…; else DATABASE_URL, else file:data/ebbline.db
--practice NAME  where several practices know the alias
Exit status: 0 done, 1 no such client or database, or the file cannot be written, 2 wrong use.`

interface Options {
  readonly alias: string
  readonly format: ExportFormat
  readonly out: string | undefined
  readonly notes: boolean
  readonly database: string | undefined
  readonly practice: string | undefined
}

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): Options {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      format: { type: 'string', default: 'json' },
      out: { type: 'string' },
      notes: { type: 'boolean', default: false },
      database: { type: 'string' },
      practice: { type: 'string' },
    },
  })
  const [alias, second] = positionals
  if (alias === undefined || second !== undefined) throw new Error('Name one client by alias.')
  const { out, notes, database, practice } = values
  const format = EXPORT_FORMATS.find((one) => one === values.format)
  if (!format) throw new Error(`There is no format ${values.format}: choose ${EXPORT_FORMATS.join(', ')}.`)
  if (notes && format !== 'json') throw new Error('Notes go into json alone: leave out --notes.')
  return { alias, format, out, notes, database, practice }
}

const textOf = ({ alias, format, notes, database, practice }: Options, now: Date): Promise<string> =>
  withStore(database, ({ store }) =>
    store.transaction(async (tx) => {
      const whole = await clientByAlias(tx, alias, practice)
      const kept = await tx.kept(whole.client.id)
      const texts = textsFor(whole.practice.language)
      return exportText(format, { whole, kept, texts, now }, { words: true, notes })
    }),
  )

export async function run(args: string[], io: Io, now: () => Date = () => new Date()): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  try {
    const text = await textOf(options, now())
    if (options.out === undefined) await io.out(text.replace(/\r?\n$/, ''))
    else writePrivate(options.out, text)
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    if (error instanceof StoreProblem || error instanceof NotFound) io.err(error.message)
    else if (code === undefined) throw error
    else io.err(`The export cannot be written to ${options.out} (${code}): name another file.`)
    return 1
  }
  if (options.out !== undefined)
    io.err(
      `${options.out}: all that is kept of ${options.alias}. What leaves this place cannot be erased here.`,
    )
  return 0
}
