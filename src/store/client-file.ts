import type { ClientFile } from '../engine/ports.ts'
import type { ClientRow } from '../engine/rows.ts'
import { Prisma } from '../generated/sqlite/client.ts'
import { fromJson, type Model } from './columns.ts'
import type { DatabaseTraits, Db } from './database.ts'
import { type Dialect, dialects } from './dialects.ts'

/** Days of check-ins that a file holds, up to the latest. */
const CHECK_IN_DAYS = 100
// Counted back from the latest check-in, which lies at or before now, so that at least the last 60 days are there.
const ENDED_DAYS = 61
// A statement on SQLite takes fewer than 1,000 parameters here, and others get their turn between.
const CLIENTS_AT_ONCE = 100

/** How far a file goes back: what the engine looks at day by day, or to the beginning. */
export type Reach = 'recent' | 'whole'

type Lists = Omit<ClientFile, 'practice' | 'client' | 'consent' | 'screening' | 'plan'>
interface Listed {
  readonly model: Model
  /** In this order, and by id. */
  readonly by: string
  /** What a recent file holds of it; all where left out. Rows are "r", the client is "c". */
  readonly recent?: (dialect: Dialect) => string
}

const sinceDay = ({ back }: Dialect): string => `r."day" >= ${back(ENDED_DAYS)}`
const since = (column: string, { back, startOf }: Dialect): string =>
  `r."${column}" >= ${startOf(back(ENDED_DAYS))}`

const LISTS: Readonly<Record<keyof Lists, Listed>> = {
  rungs: { model: 'Rung', by: 'at' },
  checkIns: { model: 'CheckIn', by: 'day', recent: ({ back }) => `r."day" > ${back(CHECK_IN_DAYS)}` },
  signs: {
    model: 'Sign',
    by: 'at',
    recent: (on) => `r."state" IN ('asked', 'open') OR ${sinceDay(on)} OR ${since('endedAt', on)}`,
  },
  holds: {
    model: 'Hold',
    by: 'at',
    recent: (on) => `r."endedAt" IS NULL OR ${sinceDay(on)} OR ${since('endedAt', on)}`,
  },
  flags: {
    model: 'Flag',
    by: 'openedAt',
    recent: (on) => `r."closedAt" IS NULL OR ${sinceDay(on)} OR ${since('closedAt', on)}`,
  },
  decisions: { model: 'Decision', by: 'at', recent: sinceDay },
  alerts: {
    model: 'Alert',
    by: 'openedAt',
    recent: (on) => `r."closedAt" IS NULL OR ${since('openedAt', on)} OR ${since('closedAt', on)}`,
  },
  asked: { model: 'Asked', by: 'at' },
  dues: { model: 'Due', by: 'at' },
  activities: { model: 'Activity', by: 'at' },
  questions: {
    model: 'Question',
    by: 'at',
    recent: (on) => `r."answeredAt" IS NULL OR ${since('at', on)}`,
  },
  covers: { model: 'Cover', by: 'from' },
}

/** Of these a file holds the latest. */
const LATEST = {
  consent: { model: 'Consent', by: 'at' },
  screening: { model: 'Screening', by: 'startedAt' },
  plan: { model: 'Plan', by: 'at' },
} as const satisfies Partial<Record<keyof ClientFile, Listed>>

const OF_THE_CLIENT = `r."clientId" = c."id"`
const OF_THE_PRACTICE = `r."practiceId" = c."practiceId"`

/**
 * Selects the files of some clients, one row each, as JSON: what belongs to a client stands in fifteen tables, and the
 * client of the database takes six times as long to ask for each by itself.
 */
function selectFiles(dialect: Dialect, reach: Reach): string {
  const lists = Object.entries(LISTS).map(([name, { model, by, recent }]) => {
    const whose = model === 'Cover' ? OF_THE_PRACTICE : OF_THE_CLIENT
    const where = recent && reach === 'recent' ? `${whose} AND (${recent(dialect)})` : whose
    return [name, dialect.list(model, where, by)]
  })
  const latest = Object.entries(LATEST).map(([name, { model, by }]) => [
    name,
    dialect.latest(model, OF_THE_CLIENT, by),
  ])
  const practice = `(SELECT ${dialect.row('Practice', 'p')} FROM "Practice" AS p WHERE p."id" = c."practiceId")`
  const parts = [['client', dialect.row('Client', 'c')], ['practice', practice], ...latest, ...lists]
  return `SELECT ${dialect.object(parts as [string, string][])} AS "file" FROM "Client" AS c WHERE `
}

const SELECTS = new Map<string, Prisma.Sql>()

function selectOn(kind: DatabaseTraits['kind'], reach: Reach): Prisma.Sql {
  const name = `${kind} ${reach}`
  const known = SELECTS.get(name) ?? Prisma.raw(selectFiles(dialects[kind], reach))
  SELECTS.set(name, known)
  return known
}

/** The files of some clients, in the order given. */
export async function loadFiles(
  source: DatabaseTraits,
  db: Db,
  clients: readonly Pick<ClientRow, 'id'>[],
): Promise<ClientFile[]> {
  const files = new Map<string, ClientFile>()
  for (let from = 0; from < clients.length; from += CLIENTS_AT_ONCE) {
    const ids = clients.slice(from, from + CLIENTS_AT_ONCE).map(({ id }) => id)
    const which = Prisma.sql`c."id" IN (${Prisma.join(ids)})`
    for (const file of await findFiles(source, db, which, 'recent')) files.set(file.client.id, file)
  }
  return clients.flatMap(({ id }) => files.get(id) ?? [])
}

/** The files of the clients "c" who meet a condition. */
export async function findFiles(
  { kind, seal }: DatabaseTraits,
  db: Db,
  which: Prisma.Sql,
  reach: Reach,
): Promise<ClientFile[]> {
  const found = await db.$queryRaw<{ file: string }[]>`${selectOn(kind, reach)}${which}`
  return found.map(({ file }) => fileOf(JSON.parse(file), seal))
}

type Row = Record<string, unknown>

function fileOf(found: Record<string, unknown>, seal: DatabaseTraits['seal']): ClientFile {
  const one = (model: Model, row: unknown) => (row === null ? null : fromJson(model, row as Row, seal))
  const file: Record<string, unknown> = {
    practice: one('Practice', found.practice),
    client: one('Client', found.client),
  }
  for (const [name, { model }] of Object.entries(LATEST)) file[name] = one(model, found[name])
  for (const [name, { model }] of Object.entries(LISTS))
    file[name] = (found[name] as Row[]).map((row) => fromJson(model, row, seal))
  return file as unknown as ClientFile
}
