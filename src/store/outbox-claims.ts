import type { OutboxRow } from '../engine/rows.ts'
import { Prisma } from '../generated/sqlite/client.ts'
import type { Database, Db } from './database.ts'
import { hasEnded } from './process-name.ts'

// Longer than one send may take: the platform's client tries four times, 15 s each, and waits for limits.
const HELD_MS = 120_000
// An urgent message twice (the platform drops it by its nonce) is better than two minutes too late.
const HELD_URGENT_MS = 20_000
const URGENT = 1
// From here on nobody waits for it: prompts and digests.
export const CAN_WAIT = 3
// What is more pressing leaves at once from the process that heard of it; so late it did not.
const SURELY_LATE_MS = 30_000

const PREFIX = 'outbox/'
const nameOf = (id: string): string => PREFIX + id
const idOf = (name: string): string => name.slice(PREFIX.length)

/** Which rows somebody looks for. */
export type Wanted = { readonly leastPressing: number } | { readonly lines: readonly string[] }

/** Claims on rows of the outbox: who sends them, and until when. Each is a lease under the row's id. */
export interface Claims {
  /** Name of the lease on a row. */
  nameOf(id: string): string
  /** Ends the claims of processes of this machine that were killed, and those on what waits no more. */
  freeTheDead(): Promise<void>
  /** The same, once: at the first use. */
  freeTheDeadOnce(): Promise<void>
  /** Ids of the next rows that nobody else holds, or holds one of the same client before them. */
  free(db: Db, now: Date, most: number, wanted: Wanted): Promise<string[]>
  /** Holds these rows; what was held beyond its time is taken over. */
  hold(db: Db, rows: readonly Pick<OutboxRow, 'id' | 'priority'>[], now: Date): Promise<void>
  /** In the transaction that says what has become of the row. */
  letGo(db: Db, id: string): Promise<void>
  /** Gives back what was not begun; of what was taken over it stays known that somebody held it. */
  release(db: Db, ids: readonly string[]): Promise<void>
  /** True where another process held the row before this one: it may have sent it. */
  takenOver(id: string): boolean
}

/** Of what somebody waits for, only what is surely late; the line's other messages at their time. */
export const mayBeAsked = (now: Date): Prisma.Sql =>
  Prisma.sql`("priority" >= ${CAN_WAIT} OR "notBefore" <= ${new Date(now.getTime() - SURELY_LATE_MS)})`

/** True where nobody but `holder` has claimed the row of the outbox under this name in the query. */
export const isFree = (
  table: 'o' | 'before',
  now: Date,
  holder: string,
): Prisma.Sql => Prisma.sql`NOT EXISTS (
  SELECT 1 FROM "Lease" AS "l" WHERE "l"."name" = ${PREFIX} || ${Prisma.raw(`"${table}"."id"`)}
    AND "l"."holder" <> ${holder} AND "l"."until" > ${now})`

export function createClaims(database: Database, holder: string): Claims {
  const over = new Set<string>()
  let looked: Promise<void> | null = null

  const among = (now: Date, wanted: Wanted): Prisma.Sql => {
    if ('leastPressing' in wanted) return Prisma.sql`"priority" <= ${wanted.leastPressing}`
    const keys = Prisma.join([...wanted.lines])
    return Prisma.sql`${mayBeAsked(now)}
      AND ("clientId" IN (${keys}) OR ("clientId" IS NULL AND "id" IN (${keys})))`
  }

  // the plus keeps SQLite from looking for a client's rows among all that wait
  const free: Claims['free'] = async (db, now, most, wanted) => {
    const found = await db.$queryRaw<{ id: string }[]>`
      SELECT "id" FROM "Outbox" AS "o"
      WHERE "state" = 'waiting' AND "notBefore" <= ${now} AND ${among(now, wanted)}
        AND ${isFree('o', now, holder)}
        AND NOT EXISTS (
          SELECT 1 FROM "Outbox" AS "before"
          WHERE "before"."clientId" = "o"."clientId" AND "before"."state" = 'waiting'
            AND +"before"."priority" = "o"."priority" AND +"before"."seq" < "o"."seq"
            AND ("before"."notBefore" > ${now} OR NOT ${isFree('before', now, holder)}))
      ORDER BY "priority", "seq" LIMIT ${most}`
    return found.map(({ id }) => id)
  }

  /** A claim that has ended stays known while its row waits: whoever takes the row over must know of it. */
  const freeTheDead = async (): Promise<void> => {
    const held = await database.use((db) => db.lease.findMany({ where: { name: { startsWith: PREFIX } } }))
    const until = new Date(0)
    const dead = [...new Set(held.map((lease) => lease.holder))].filter(hasEnded)
    const stale = held.filter((lease) => lease.until < new Date() || dead.includes(lease.holder))
    if (stale.length === 0) return
    await database.transaction(async (db) => {
      if (dead.length > 0)
        await db.lease.updateMany({
          where: { name: { startsWith: PREFIX }, holder: { in: dead } },
          data: { until },
        })
      const ids = stale.map(({ name }) => idOf(name))
      const some = await db.outbox.findMany({
        where: { id: { in: ids }, state: 'waiting' },
        select: { id: true },
      })
      const waiting = new Set(some.map(({ id }) => id))
      const names = ids.filter((id) => !waiting.has(id)).map(nameOf)
      if (names.length > 0) await db.lease.deleteMany({ where: { name: { in: names } } })
    })
  }

  return {
    nameOf,
    freeTheDead,
    freeTheDeadOnce() {
      looked ??= freeTheDead().catch((error) => {
        looked = null
        throw error
      })
      return looked
    },
    free,
    async hold(db, rows, now) {
      const name = { in: rows.map(({ id }) => nameOf(id)) }
      for (const lease of await db.lease.findMany({ where: { name, holder: { not: holder } } }))
        over.add(idOf(lease.name))
      await db.lease.deleteMany({ where: { name } })
      const until = (priority: number): Date =>
        new Date(now.getTime() + (priority <= URGENT ? HELD_URGENT_MS : HELD_MS))
      await db.lease.createMany({
        data: rows.map(({ id, priority }) => ({ name: nameOf(id), holder, until: until(priority) })),
      })
    },
    async letGo(db, id) {
      await db.lease.deleteMany({ where: { name: nameOf(id), holder } })
    },
    async release(db, ids) {
      const [known, fresh] = [true, false].map((isOver) =>
        ids.filter((id) => over.has(id) === isOver).map(nameOf),
      )
      await db.lease.deleteMany({ where: { name: { in: fresh! }, holder } })
      await db.lease.updateMany({ where: { name: { in: known! }, holder }, data: { until: new Date(0) } })
    },
    takenOver: (id) => over.has(id),
  }
}
