import type { OutboxRow } from '../engine/rows.ts'
import type { Line } from '../engine/several.ts'
import type { Db } from './database.ts'
import { isFree, mayBeAsked } from './outbox-claims.ts'
import { tableOf } from './tables.ts'

/** These rows, in the order in which they leave. */
export async function rowsInOrder(db: Db, ids: readonly string[]): Promise<OutboxRow[]> {
  const rows = await tableOf(db, 'outbox').findMany({
    where: { id: { in: ids } },
    orderBy: [{ priority: 'asc' }, { seq: 'asc' }],
  })
  return rows.map(upToDate)
}

/** A message written before messages could carry files carries none. */
const upToDate = (row: OutboxRow): OutboxRow => ({
  ...row,
  body: { ...row.body, files: row.body.files ?? [] },
})

/** Ids of what may leave now: nothing behind a message of its client and priority that must wait. */
export async function waitingIds(db: Db, now: Date, most: number): Promise<string[]> {
  const found = await db.$queryRaw<{ id: string }[]>`
    SELECT "id" FROM "Outbox" AS "o"
    WHERE "state" = 'waiting' AND "notBefore" <= ${now} AND NOT EXISTS (
      SELECT 1 FROM "Outbox" AS "before"
      WHERE "before"."clientId" = "o"."clientId" AND "before"."state" = 'waiting'
        AND "before"."priority" = "o"."priority" AND "before"."seq" < "o"."seq"
        AND "before"."notBefore" > ${now})
    ORDER BY "priority", "seq" LIMIT ${most}`
  return found.map(({ id }) => id)
}

/** Lines with something that may leave now and that nobody has claimed; the most pressing first. */
export const linesDue = (db: Db, now: Date, most: number): Promise<Line[]> =>
  db.$queryRaw<Line[]>`
    SELECT COALESCE("clientId", "id") AS "key", MIN("priority") AS "priority" FROM "Outbox" AS "o"
    WHERE "state" = 'waiting' AND "notBefore" <= ${now} AND ${mayBeAsked(now)} AND ${isFree('o', now, '')}
    GROUP BY 1 ORDER BY 2, MIN("seq") LIMIT ${most}`

/** When the next message may leave: the first of each row decides, those behind it cannot go earlier. */
export async function nextToLeave(db: Db): Promise<Date | null> {
  const [row] = await db.$queryRaw<{ at: Date | null }[]>`
    SELECT "notBefore" AS "at" FROM "Outbox" AS "o"
    WHERE "state" = 'waiting' AND NOT EXISTS (
      SELECT 1 FROM "Outbox" AS "before"
      WHERE "before"."clientId" = "o"."clientId" AND "before"."state" = 'waiting'
        AND "before"."priority" = "o"."priority" AND "before"."seq" < "o"."seq")
    ORDER BY "notBefore" LIMIT 1`
  return row?.at ?? null
}
