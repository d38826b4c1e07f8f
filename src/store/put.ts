import { Prisma } from '../generated/sqlite/client.ts'
import { cleanText } from './clean.ts'
import { KINDS, type Model } from './columns.ts'
import type { DatabaseTraits, Db } from './database.ts'
import { closeRow } from './sealed-columns.ts'

type Row = { readonly id: string } & Record<string, unknown>
const quoted = (name: string): string => `"${name}"`

/** Writes a row as it stands: inserted, or in the place of the one with its id. The client takes twice as long. */
export async function putRow(target: DatabaseTraits, db: Db, model: Model, row: object): Promise<void> {
  const values = valuesOf(target, model, row as Row)
  const names = Object.keys(values)
  const set = names.map((name) => `${quoted(name)} = excluded.${quoted(name)}`).join(', ')
  await db.$executeRaw`INSERT INTO ${insertOf(model, names)} VALUES (${Prisma.join(Object.values(values))})
    ON CONFLICT ("id") DO UPDATE SET ${Prisma.raw(set)}`
}

export async function dropRow(db: Db, model: Model, id: string): Promise<void> {
  await db.$executeRaw`DELETE FROM ${Prisma.raw(quoted(model))} WHERE "id" = ${id}`
}

const LAST = Prisma.sql`(SELECT coalesce(max("seq"), 0) + 1 FROM "Outbox")`

/** Writes a message at the end of the ledger, under the writer's lock; one that is there already stays as it is. */
export async function postRow(target: DatabaseTraits, db: Db, row: object): Promise<void> {
  const values = { ...valuesOf(target, 'Outbox', row as Row), seq: LAST }
  await db.$executeRaw`INSERT INTO ${insertOf('Outbox', Object.keys(values))}
    VALUES (${Prisma.join(Object.values(values))}) ON CONFLICT DO NOTHING`
}

const insertOf = (model: Model, names: readonly string[]): Prisma.Sql =>
  Prisma.raw(`${quoted(model)} (${names.map(quoted).join(', ')})`)

/** Each column as a statement takes it: text that both databases can hold, words sealed, JSON as text. */
function valuesOf({ kind, seal }: DatabaseTraits, model: Model, row: Row): Record<string, unknown> {
  const clean = cleanText(row)
  const closed: Record<string, unknown> = seal === null ? { ...clean } : closeRow(seal, model, clean)
  for (const name of KINDS[model].json as readonly string[]) {
    if (closed[name] === null) continue
    const text = JSON.stringify(closed[name])
    closed[name] = kind === 'sqlite' ? text : Prisma.sql`${text}::jsonb`
  }
  return closed
}
