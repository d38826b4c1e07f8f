import { parseArgs } from 'node:util'
import { weekday } from '../domain/day.ts'
import { dayAt } from '../domain/local-time.ts'
import { lexiconVersion } from '../domain/reply/lexicon/index.ts'
import { readReply } from '../domain/reply/read.ts'
import type { Reading, ReadingContext } from '../domain/reply/reading.ts'
import { plannedOn } from '../engine/plan/rungs.ts'
import type { ClientFile } from '../engine/ports.ts'
import type { VersionRow } from '../engine/rows.ts'
import { StoreProblem } from '../store/problem.ts'
import type { Io } from './io.ts'
import { clientByAlias, NotFound, withStore } from './practice-store.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb reread CLIENT [--database URL] [--practice NAME] [--words] [--json]
Reads every stored reply of a client again with today's reader, in the context in which it was first read, and prints
what would now be read differently. Nothing is changed.
--database URL   file:PATH or postgresql://…; else DATABASE_URL, else file:data/ebbline.db
--practice NAME  where several practices know the alias
--words          print the client's own words too (they are health data: mind who sees the screen)
--json           one object a line: {"at", "day", "by", "now", "fields": {"pain": [before, now]}}, at the end
                 {"end": true, "read", "different"}
Exit status: 0 done, 1 no such client or database, 2 wrong use.`

const FIELDS = [
  'day',
  'sessions',
  'reach',
  'pain',
  'side',
  'signs',
  'denied',
  'care',
  'unsure',
  'intent',
  'others',
  'answer',
] as const

/** One stored reply that comes out otherwise today. */
interface Difference {
  readonly version: VersionRow
  readonly now: string
  readonly fields: Readonly<Record<string, readonly [unknown, unknown]>>
}

const isReply = ({ via, reading }: VersionRow): boolean =>
  (via === 'words' || via === 'edit') && 'intent' in reading

/** As stored; older versions kept none, and what can be known of it is worked out. */
function contextOf(version: VersionRow, file: ClientFile): ReadingContext {
  const stored = version.reading.context
  if (stored !== null && typeof stored === 'object') return stored as unknown as ReadingContext
  const written = dayAt(version.at, version.zone)
  const day = version.day ?? written
  const planned = file.checkIns.find((row) => row.day === day)?.planned ?? plannedOn(file, weekday(day))
  return { planned, today: written, promptDay: day, locale: file.client.language, asked: null }
}

function compare(version: VersionRow, file: ClientFile): Difference | null {
  const context = contextOf(version, file)
  const reading = readReply(version.words, context)
  const differing = FIELDS.filter(
    (field) =>
      field in version.reading && JSON.stringify(version.reading[field]) !== JSON.stringify(reading[field]),
  )
  if (differing.length === 0) return null
  const fields = Object.fromEntries(
    differing.map((field) => [field, [version.reading[field], reading[field as keyof Reading]] as const]),
  )
  return { version, now: lexiconVersion(context.locale), fields }
}

const shown = (value: unknown): string => (typeof value === 'string' ? value : JSON.stringify(value))

function lineOf({ version, now, fields }: Difference, words: boolean): string {
  const changes = Object.entries(fields).map(([field, [was, is]]) => `${field} ${shown(was)} -> ${shown(is)}`)
  const said = words ? `\n  ${JSON.stringify(version.words)}` : ''
  return `${version.day ?? 'no day'}, ${version.at.toISOString()}, ${version.lexicon} -> ${now}: ${changes.join('; ')}${said}`
}

const objectOf = ({ version, now, fields }: Difference, words: boolean): string =>
  JSON.stringify({
    at: version.at.toISOString(),
    day: version.day,
    by: version.lexicon,
    now,
    fields,
    ...(words ? { words: version.words } : {}),
  })

interface Options {
  readonly alias: string
  readonly database: string | undefined
  readonly practice: string | undefined
  readonly words: boolean
  readonly json: boolean
}

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): Options {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      database: { type: 'string' },
      practice: { type: 'string' },
      words: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
    },
  })
  const [alias, second] = positionals
  if (alias === undefined || second !== undefined) throw new Error('Name one client by alias.')
  return {
    alias,
    database: values.database,
    practice: values.practice,
    words: values.words,
    json: values.json,
  }
}

async function reread(options: Options, io: Io): Promise<void> {
  const { file, versions } = await withStore(options.database, ({ store }) =>
    store.transaction(async (tx) => {
      const found = await clientByAlias(tx, options.alias, options.practice)
      return { file: found, versions: (await tx.told(found.client.id)).versions }
    }),
  )
  const replies = versions.filter(isReply)
  let different = 0
  for (const version of replies) {
    const difference = compare(version, file)
    if (!difference) continue
    different += 1
    await io.out((options.json ? objectOf : lineOf)(difference, options.words))
  }
  await io.out(
    options.json
      ? JSON.stringify({ end: true, read: replies.length, different })
      : `${replies.length} replies read again, ${different} read differently.`,
  )
}

/** Exit code: 0 done, 1 the work failed, 2 wrong use. */
export async function run(args: string[], io: Io): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  try {
    await reread(options, io)
    return 0
  } catch (error) {
    if (!(error instanceof NotFound || error instanceof StoreProblem)) throw error
    io.err(error.message)
    return 1
  }
}
