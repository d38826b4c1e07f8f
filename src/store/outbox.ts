import type { OutboxStore } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import type { Database } from './database.ts'
import { tableOf } from './tables.ts'

/** A message written before messages could carry files carries none. */
const upToDate = (row: OutboxRow): OutboxRow => ({
  ...row,
  body: { ...row.body, files: row.body.files ?? [] },
})

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
  /** Of an answer to a stranger nothing is kept; the event's own id keeps it from being written again. */
  const forget = (id: string): Promise<void> =>
    database.use(async (db) => {
      await tableOf(db, 'outbox').deleteMany({ where: { id, practiceId: null } })
    })
  /** The text of a file is in the record itself: once it has gone no second copy is kept. */
  const emptyFiles = (id: string): Promise<void> =>
    database.use(async (db) => {
      const row = await tableOf(db, 'outbox').findFirst({ where: { id, kind: 'report' } })
      if (!row?.body.files?.some((file) => 'text' in file)) return
      const files = row.body.files.map((file) => ('text' in file ? { ...file, text: '' } : file))
      await tableOf(db, 'outbox').updateMany({ where: { id }, data: { body: { ...row.body, files } } })
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
        const rows = await tableOf(db, 'outbox').findMany({
          where: { id: { in: found.map((row) => row.id) } },
          orderBy: [{ priority: 'asc' }, { seq: 'asc' }],
        })
        return rows.map(upToDate)
      }),
    sent: async (id, sentAt, channel, platformId) => {
      await update(id, {}, { state: 'sent', sentAt, channel, platformId, reason: null, ...tried })
      await emptyFiles(id)
      await forget(id)
    },
    failed: async (id, reason) => {
      await update(id, waiting, { state: 'failed', reason, ...tried })
      await forget(id)
    },
    dropped: async (id, reason) => {
      await update(id, waiting, { state: 'dropped', reason })
      await forget(id)
    },
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
