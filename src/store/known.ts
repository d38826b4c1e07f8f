import { setImmediate as letOthersIn } from 'node:timers/promises'
import { standsIn } from '../domain/cover.ts'
import { dayAt } from '../domain/local-time.ts'
import type { Concerned, KnownClient } from '../engine/ports.ts'
import type { CoverRow, PracticeRow, Stage } from '../engine/rows.ts'
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
  const common: Common = { practices: new Map(), words: new Map() }
  for await (const users of concerned === null ? everybody(database) : theirs(database, concerned)) {
    yield await database.use((db) => page(db, users, common, now))
    await letOthersIn()
  }
}

async function* everybody(database: Database): AsyncGenerator<string[]> {
  for (let last = '', size = PAGE; size === PAGE; ) {
    const rows = await database.use(
      (db) => db.$queryRaw<{ user: string }[]>`
        SELECT DISTINCT "user" FROM "Client" WHERE "user" > ${last} ORDER BY "user" LIMIT ${PAGE}`,
    )
    size = rows.length
    last = rows.at(-1)?.user ?? last
    if (size > 0) yield rows.map(({ user }) => user)
  }
}

async function* theirs(database: Database, { clients, practices }: Concerned): AsyncGenerator<string[]> {
  const rows = await database.use((db) =>
    db.client.findMany({
      where: { OR: [{ id: { in: [...clients] } }, { practiceId: { in: [...practices] } }] },
      select: { user: true },
    }),
  )
  const users = [...new Set(rows.map(({ user }) => user))]
  for (let from = 0; from < users.length; from += PAGE) yield users.slice(from, from + PAGE)
}

/** What many clients have in common is kept in memory once. */
interface Common {
  readonly practices: Map<string, Practice>
  /** Each text by itself. */
  readonly words: Map<string, string>
}
interface Practice {
  readonly facts: KnownClient['practice']
  readonly covers: readonly CoverRow[]
}

async function page(
  db: Db,
  users: string[],
  { practices, words }: Common,
  now: Date,
): Promise<KnownClient[]> {
  const clients = await db.client.findMany({
    where: { user: { in: users } },
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
  })
  const ids = clients.map(({ id }) => id)
  await learn(db, practices, [...new Set(clients.map(({ practiceId }) => practiceId))])
  const planned = await plannedBy(db, ids)
  const directs = await channelsOf(db, ids)
  const once = <T extends string | null>(text: T): T => {
    if (text === null) return text
    if (!words.has(text)) words.set(text, text)
    return words.get(text) as T
  }
  return clients.map(({ id, user, ref, stage, region, zone, language, coach, practiceId }): KnownClient => {
    const { facts, covers } = practices.get(practiceId)!
    const where = { region: once(region), zone: once(zone), language: once(language) }
    return {
      client: { id, user, ref, stage: once(stage) as Stage, ...where },
      practice: facts,
      coach: once(idIn(standsIn(coach ?? planned.get(id) ?? null, covers, dayAt(now, facts.zone)))),
      direct: directs.get(id) ?? null,
    }
  })
}

async function learn(db: Db, practices: Map<string, Practice>, ids: string[]): Promise<void> {
  const missing = ids.filter((id) => !practices.has(id))
  if (missing.length === 0) return
  const rows = await tableOf(db, 'practice').findMany({ where: { id: { in: missing } } })
  const covers = await tableOf(db, 'cover').findMany({
    where: { practiceId: { in: missing } },
    orderBy: { id: 'asc' },
  })
  for (const row of rows)
    practices.set(row.id, { facts: factsOf(row), covers: covers.filter((one) => one.practiceId === row.id) })
}

const factsOf = ({ id, zone, language, quote, ...row }: PracticeRow): KnownClient['practice'] => ({
  ...{ id, zone, language, quote },
  channel: row.alertChannel ?? row.coachChannel,
})

/** The platform's id within a mention. */
const idIn = (mention: string | null): string | null => /^<@(.+)>$/.exec(mention ?? '')?.[1] ?? null

/** Who made each client's latest plan. */
async function plannedBy(db: Db, ids: string[]): Promise<Map<string, string>> {
  const plans = await db.plan.findMany({
    where: { clientId: { in: ids } },
    select: { clientId: true, by: true },
    orderBy: { at: 'asc' },
  })
  return new Map(plans.map(({ clientId, by }) => [clientId, by]))
}

/** Each client's private channel: where the welcome went. */
async function channelsOf(db: Db, ids: string[]): Promise<Map<string, string>> {
  const rows = await db.$queryRaw<{ id: string; channel: string | null }[]>`
    SELECT "c"."id" AS "id", (SELECT "o"."channel" ${WELCOME}) AS "channel"
    FROM "Client" AS "c" WHERE "c"."id" IN (${Prisma.join(ids)})`
  return new Map(rows.flatMap(({ id, channel }) => (channel === null ? [] : [[id, channel]])))
}
