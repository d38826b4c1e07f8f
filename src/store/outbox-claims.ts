import type { OutboxRow } from '../engine/rows.ts'
import type { Database, Db } from './database.ts'
import { hasEnded } from './leases.ts'

// Longer than one send may take: the platform's client tries four times, 15 s each, and waits for limits.
const HELD_MS = 120_000
// An urgent message twice (the platform drops it by its nonce) is better than two minutes too late.
const HELD_URGENT_MS = 20_000
const URGENT = 1

const PREFIX = 'outbox/'
const nameOf = (id: string): string => PREFIX + id

/** Claims on rows of the outbox: who sends them, and until when. Each is a lease under the row's id. */
export interface Claims {
  /** Once, at the first use: ends the claims of processes of this machine that were killed. */
  freeTheDead(): Promise<void>
  /** Ids of the next rows that nobody else holds, or holds one of the same client before them. */
  free(db: Db, now: Date, most: number, leastPressing: number): Promise<string[]>
  /** Holds these rows; what was held beyond its time is taken over. */
  hold(db: Db, rows: readonly Pick<OutboxRow, 'id' | 'priority'>[], now: Date): Promise<void>
  /** In the transaction that says what has become of the row. */
  letGo(db: Db, id: string): Promise<void>
}

export function createClaims(database: Database, holder: string): Claims {
  let looked: Promise<void> | null = null
  // the plus keeps SQLite from looking for a client's rows among all that wait
  const free: Claims['free'] = async (db, now, most, leastPressing) => {
    const found = await db.$queryRaw<{ id: string }[]>`
      SELECT "id" FROM "Outbox" AS "o"
      WHERE "state" = 'waiting' AND "notBefore" <= ${now} AND "priority" <= ${leastPressing}
        AND NOT EXISTS (
          SELECT 1 FROM "Lease" AS "l"
          WHERE "l"."name" = ${PREFIX} || "o"."id" AND "l"."holder" <> ${holder} AND "l"."until" > ${now})
        AND NOT EXISTS (
          SELECT 1 FROM "Outbox" AS "before"
          WHERE "before"."clientId" = "o"."clientId" AND "before"."state" = 'waiting'
            AND +"before"."priority" = "o"."priority" AND +"before"."seq" < "o"."seq"
            AND ("before"."notBefore" > ${now} OR EXISTS (
              SELECT 1 FROM "Lease" AS "l"
              WHERE "l"."name" = ${PREFIX} || "before"."id" AND "l"."holder" <> ${holder} AND "l"."until" > ${now})))
      ORDER BY "priority", "seq" LIMIT ${most}`
    return found.map(({ id }) => id)
  }

  /** A process of this machine that was killed holds nothing any more: what it had claimed is free at once. */
  const freeTheDead = (): Promise<void> =>
    database.transaction(async (db) => {
      const held = await db.lease.findMany({ where: { name: { startsWith: PREFIX } } })
      const dead = held.filter((lease) => hasEnded(lease.holder)).map(({ name }) => name)
      if (dead.length > 0) await db.lease.deleteMany({ where: { name: { in: dead } } })
    })

  return {
    freeTheDead() {
      looked ??= freeTheDead().catch((error) => {
        looked = null
        throw error
      })
      return looked
    },
    free,
    async hold(db, rows, now) {
      const names = rows.map(({ id }) => nameOf(id))
      await db.lease.deleteMany({
        where: { OR: [{ name: { in: names } }, { name: { startsWith: PREFIX }, until: { lt: now } }] },
      })
      const until = (priority: number): Date =>
        new Date(now.getTime() + (priority <= URGENT ? HELD_URGENT_MS : HELD_MS))
      await db.lease.createMany({
        data: rows.map(({ id, priority }) => ({ name: nameOf(id), holder, until: until(priority) })),
      })
    },
    async letGo(db, id) {
      await db.lease.deleteMany({ where: { name: nameOf(id), holder } })
    },
  }
}
