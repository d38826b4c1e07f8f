import type { OutboxStore } from '../engine/ports.ts'
import type { Database } from './database.ts'
import { tableOf } from './tables.ts'

/**
 * The ledger of messages. A client's messages of one priority leave in the order in which they were written: one
 * that must wait (a later time, another try) keeps those behind it waiting too.
 */
export function outboxStore(database: Database): OutboxStore {
  const update = (id: string, from: object, data: object): Promise<void> =>
    database.use(async (db) => {
      // a row that is gone (its client was erased meanwhile) is no error
      await tableOf(db, 'outbox').updateMany({ where: { id, ...from }, data })
    })
  const waiting = { state: 'waiting' }
  const tried = { attempts: { increment: 1 } }

  return {
    waiting: (now, most) =>
      database.use(async (db) => {
        const found = await db.$queryRaw<{ id: string }[]>`
          SELECT "id" FROM "Outbox" AS "o"
          WHERE "state" = 'waiting' AND "notBefore" <= ${now} AND NOT EXISTS (
            SELECT 1 FROM "Outbox" AS "before"
            WHERE "before"."clientId" = "o"."clientId" AND "before"."state" = 'waiting'
              AND "before"."priority" = "o"."priority" AND "before"."seq" < "o"."seq"
              AND "before"."notBefore" > ${now})
          ORDER BY "priority", "seq" LIMIT ${most}`
        return tableOf(db, 'outbox').findMany({
          where: { id: { in: found.map((row) => row.id) } },
          orderBy: [{ priority: 'asc' }, { seq: 'asc' }],
        })
      }),
    sent: (id, sentAt, channel, platformId) =>
      update(id, {}, { state: 'sent', sentAt, channel, platformId, reason: null, ...tried }),
    failed: (id, reason) => update(id, waiting, { state: 'failed', reason, ...tried }),
    dropped: (id, reason) => update(id, waiting, { state: 'dropped', reason }),
    retry: (id, notBefore) => update(id, waiting, { notBefore, ...tried }),
    nextDue: () =>
      database.use(async (db) => {
        // the first of each row of waiting messages decides, those behind it cannot go earlier
        const [row] = await db.$queryRaw<{ at: Date | null }[]>`
          SELECT "notBefore" AS "at" FROM "Outbox" AS "o"
          WHERE "state" = 'waiting' AND NOT EXISTS (
            SELECT 1 FROM "Outbox" AS "before"
            WHERE "before"."clientId" = "o"."clientId" AND "before"."state" = 'waiting'
              AND "before"."priority" = "o"."priority" AND "before"."seq" < "o"."seq")
          ORDER BY "notBefore" LIMIT 1`
        return row?.at ?? null
      }),
  }
}
