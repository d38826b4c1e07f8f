import { setImmediate as letOthersIn } from 'node:timers/promises'
import { standsIn } from '../domain/cover.ts'
import type { Day } from '../domain/day.ts'
import { dayAt } from '../domain/local-time.ts'
import { userIn } from '../domain/mention.ts'
import type { Concerned, KnownClient } from '../engine/ports.ts'
import type { CoverRow, PracticeRow } from '../engine/rows.ts'
import { Prisma } from '../generated/sqlite/client.ts'
import type { Database, Db } from './database.ts'
import { WELCOME } from './directs.ts'
import { tableOf } from './tables.ts'

// So many people take some milliseconds: others get their turn between.
const PAGE = 200

/**
 * Everybody on file, or those concerned, a page at a time; all files of one person are in one page, the latest first.
 * The coach is who is called first at this instant.
 */
export async function* knownPeople(
  database: Database,
  now: Date,
  concerned: Concerned | null,
): AsyncGenerator<KnownClient[]> {
  const common: Common = { now, practices: new Map(), words: new Map() }
  if (concerned === null) await database.use((db) => learn(db, common, {}))
  for await (const rows of concerned === null ? everybody(database) : theirs(database, concerned)) {
    yield await database.use((db) => known(db, rows, common))
    await letOthersIn()
  }
}

async function* everybody(database: Database): AsyncGenerator<Row[]> {
  for (let last = ''; ; ) {
    const users = Prisma.sql`
      SELECT DISTINCT "user" FROM "Client" WHERE "user" > ${last} ORDER BY "user" LIMIT ${PAGE}`
    const rows = await database.use((db) => read(db, users))
    if (rows.length > 0) yield rows
    if (new Set(rows.map(({ user }) => user)).size < PAGE) return
    last = rows.at(-1)!.user
  }
}

async function* theirs(database: Database, { clients, practices }: Concerned): AsyncGenerator<Row[]> {
  const rows = await database.use((db) =>
    db.client.findMany({
      where: { OR: [{ id: { in: [...clients] } }, { practiceId: { in: [...practices] } }] },
      select: { user: true },
    }),
  )
  const users = [...new Set(rows.map(({ user }) => user))]
  for (let from = 0; from < users.length; from += PAGE) {
    const some = Prisma.join(users.slice(from, from + PAGE))
    yield await database.use((db) => read(db, some))
  }
}

/** A client, who made their latest plan, and their private channel: where the welcome went. */
type Row = KnownClient['client'] & {
  readonly coach: string | null
  readonly practiceId: string
  readonly planned: string | null
  readonly direct: string | null
}

/** One statement: the client of the database takes longer over three lists of rows than the database itself. */
const read = (db: Db, users: Prisma.Sql): Promise<Row[]> => db.$queryRaw<Row[]>`
  SELECT "c"."id" AS "id", "c"."user" AS "user", "c"."ref" AS "ref", "c"."stage" AS "stage", "c"."region" AS "region",
    "c"."zone" AS "zone", "c"."language" AS "language", "c"."coach" AS "coach", "c"."practiceId" AS "practiceId",
    (SELECT "p"."by" FROM "Plan" AS "p" WHERE "p"."clientId" = "c"."id" ORDER BY "p"."at" DESC LIMIT 1) AS "planned",
    (SELECT "o"."channel" ${WELCOME}) AS "direct"
  FROM "Client" AS "c" WHERE "c"."user" IN (${users}) ORDER BY "c"."user", "c"."createdAt" DESC, "c"."id" DESC`

/** What many clients have in common is kept in memory once. */
interface Common {
  readonly now: Date
  readonly practices: Map<string, Practice>
  /** Each text by itself. */
  readonly words: Map<string, string>
}
interface Practice {
  readonly facts: KnownClient['practice']
  readonly covers: readonly CoverRow[]
  /** The day there. */
  readonly today: Day
}

async function known(db: Db, rows: Row[], common: Common): Promise<KnownClient[]> {
  const { practices, words } = common
  const missing = new Set(rows.map(({ practiceId }) => practiceId).filter((id) => !practices.has(id)))
  if (missing.size > 0) await learn(db, common, { in: [...missing] })
  const once = <T extends string | null>(text: T): T => {
    if (text === null) return text
    if (!words.has(text)) words.set(text, text)
    return words.get(text) as T
  }
  return rows.map(({ id, user, ref, stage, region, zone, language, coach, practiceId, planned, direct }) => {
    const { facts, covers, today } = practices.get(practiceId)!
    const where = { region: once(region), zone: once(zone), language: once(language) }
    return {
      client: { id, user, ref, stage: once(stage), ...where },
      practice: facts,
      coach: once(userIn(standsIn(coach ?? planned, covers, today))),
      direct,
    }
  })
}

async function learn(db: Db, { now, practices }: Common, ids: { in?: string[] }): Promise<void> {
  const rows = await tableOf(db, 'practice').findMany({ where: { id: ids } })
  const covers = await tableOf(db, 'cover').findMany({ where: { practiceId: ids }, orderBy: { id: 'asc' } })
  for (const row of rows)
    practices.set(row.id, {
      facts: factsOf(row),
      covers: covers.filter((one) => one.practiceId === row.id),
      today: dayAt(now, row.zone),
    })
}

const factsOf = ({ id, zone, language, quote, ...row }: PracticeRow): KnownClient['practice'] => ({
  ...{ id, zone, language, quote },
  channel: row.alertChannel ?? row.coachChannel,
})
