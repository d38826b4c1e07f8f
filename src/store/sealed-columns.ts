import { Altered, type Seal } from '../seal.ts'
import type { PrismaClient } from './database.ts'
import { StoreProblem } from './problem.ts'

/**
 * Where words of people stand: what clients wrote and answered, what coaches noted (loads, clinicians and activities
 * by name are their words too), and the messages that repeat it.
 * No query looks for anything in these columns. Scales, days, signs and flags stay readable: the queries need them.
 */
export const SEALED_COLUMNS = {
  Version: ['words', 'reading'],
  Sign: ['words', 'endedBy'],
  Screening: ['answers'],
  Decision: ['reason'],
  Plan: ['loads'],
  Hold: ['endedBy'],
  Activity: ['scores'],
  Note: ['text'],
  Question: ['words', 'answer'],
  Asked: ['options'],
  Outbox: ['body'],
} as const satisfies Readonly<Record<string, readonly string[]>>

export type SealedTable = keyof typeof SEALED_COLUMNS
export const SEALED_TABLES = Object.keys(SEALED_COLUMNS) as SealedTable[]

type Row = Record<string, unknown>
/** Columns that hold any JSON; sealed, they hold a JSON string. */
const JSON_COLUMNS: readonly string[] = ['reading', 'answers', 'loads', 'scores', 'options', 'body']

const columnsOf = (model: string | undefined): readonly string[] => SEALED_COLUMNS[model as SealedTable] ?? []

/** The same client with these columns closed on the way in and open on the way out. */
export const sealing = (client: PrismaClient, seal: Seal): PrismaClient =>
  client.$extends({
    query: {
      $allModels: {
        async $allOperations({ model, args, query }) {
          return columnsOf(model).length === 0
            ? query(args)
            : opened(seal, model, await query(closed(seal, model, args as Row) as never))
        },
      },
    },
  }) as unknown as PrismaClient

/** What is written, by each of the names under which the client takes it. */
function closed(seal: Seal, model: string, args: Row): Row {
  const id = (args.where as Row | undefined)?.id
  const close = (row: unknown): unknown =>
    Array.isArray(row) ? row.map(close) : closeRow(seal, model, row as Row, (row as Row).id ?? id)
  const written = ['data', 'create', 'update'].filter((name) => args?.[name] !== undefined)
  return { ...args, ...Object.fromEntries(written.map((name) => [name, close(args[name])])) }
}

/** The row with its words sealed for their place; of a table of which nothing is, as it is. */
export function closeRow(seal: Seal, model: string, open: Row, id: unknown = open.id): Row {
  const row = { ...open }
  for (const column of columnsOf(model)) {
    const value = row[column]
    if (value === undefined || value === null) continue
    const text = JSON_COLUMNS.includes(column) ? JSON.stringify(value) : String(value)
    row[column] = seal.close(text, placeOf(model, column, id))
  }
  return row
}

function opened(seal: Seal, model: string, result: unknown): unknown {
  if (Array.isArray(result)) return result.map((row) => opened(seal, model, row))
  if (result === null || typeof result !== 'object') return result
  return openRow(seal, model, result as Row)
}

/** The row as it was before it was sealed; of a table of which nothing is, as it is. */
export function openRow(seal: Seal, model: string, closed: Row): Row {
  const row = { ...closed }
  for (const column of columnsOf(model)) {
    const value = row[column]
    if (typeof value !== 'string') continue
    const text = openAt(seal, value, placeOf(model, column, row.id))
    row[column] = text === value || !JSON_COLUMNS.includes(column) ? text : JSON.parse(text)
  }
  return row
}

function placeOf(model: string, column: string, id: unknown): string {
  if (typeof id !== 'string') throw new Error(`${model}.${column} is sealed for its row, which must be named`)
  return `${model}.${column}.${id}`
}

function openAt(seal: Seal, value: string, place: string): string {
  try {
    return seal.open(value, place)
  } catch (error) {
    if (!(error instanceof Altered)) throw error
    const [table, column, id] = place.split('.')
    throw new StoreProblem(
      `The ${column} of row ${id} in table ${table} was altered outside the bot: put back the latest backup with ebb restore FILE --replace.`,
      { cause: error },
    )
  }
}
