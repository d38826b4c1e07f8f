import { Prisma } from '../generated/sqlite/client.ts'
import { KINDS, type Model } from './columns.ts'

/** What the two databases say differently where rows are asked for as JSON. */
export interface Dialect {
  /** An object, of names and what stands under them; as text where it is the whole answer. */
  object(parts: readonly (readonly [name: string, sql: string])[]): string
  /** The row under this alias. */
  row(model: Model, alias: string): string
  /** The rows "r" of a table under a condition, in the order of a column and of their ids. */
  list(model: Model, where: string, by: string): string
  /** The last of these. */
  latest(model: Model, where: string, by: string): string
  /** The local day so many days before the latest check-in of client "c"; long ago where there is none. */
  back(days: number): string
  /** The instant at which such a day begins in UTC, as the columns hold instants. */
  startOf(day: string): string
}

const LONG_AGO = '1970-01-01'
const LATEST_DAY = `coalesce((SELECT max(k."day") FROM "CheckIn" AS k WHERE k."clientId" = c."id"), '${LONG_AGO}')`

const namesOf = (model: Model): string[] => Object.keys(Prisma[`${model}ScalarFieldEnum`])
const last = (row: string, model: Model, where: string, by: string): string =>
  `(SELECT ${row} FROM "${model}" AS r WHERE ${where} ORDER BY r."${by}" DESC, r."id" DESC LIMIT 1)`
const ordered = (by: string): string => `ORDER BY r."${by}", r."id"`

const sqliteRow: Dialect['row'] = (model, alias) => {
  const json: readonly string[] = KINDS[model].json
  const parts = namesOf(model).map((name) => {
    const column = `${alias}."${name}"`
    return `'${name}', ${json.includes(name) ? `json(${column})` : column}`
  })
  return `json_object(${parts.join(', ')})`
}

export const dialects: Readonly<Record<'sqlite' | 'postgresql', Dialect>> = {
  sqlite: {
    object: (parts) => `json_object(${parts.map(([name, sql]) => `'${name}', ${sql}`).join(', ')})`,
    row: sqliteRow,
    list: (model, where, by) =>
      `(SELECT json_group_array(${sqliteRow(model, 'r')} ${ordered(by)}) FROM "${model}" AS r WHERE ${where})`,
    // what was sorted comes as text
    latest: (model, where, by) => `json(${last(sqliteRow(model, 'r'), model, where, by)})`,
    back: (days) => `date(${LATEST_DAY}, '-${days} days')`,
    // its instants are ISO text, which sorts behind the bare day
    startOf: (day) => day,
  },
  postgresql: {
    object: (parts) =>
      `json_build_object(${parts.map(([name, sql]) => `'${name}', ${sql}`).join(', ')})::text`,
    row: (_, alias) => `row_to_json(${alias})`,
    list: (model, where, by) =>
      `(SELECT coalesce(json_agg(r ${ordered(by)}), '[]') FROM "${model}" AS r WHERE ${where})`,
    latest: (model, where, by) => last('row_to_json(r)', model, where, by),
    back: (days) => `to_char(${LATEST_DAY}::date - ${days}, 'YYYY-MM-DD')`,
    startOf: (day) => `(${day})::timestamp`,
  },
}
