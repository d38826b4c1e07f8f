import type { OutboxRow } from '../engine/rows.ts'
import type { SharedOutbox } from '../engine/several.ts'
import { Prisma } from '../generated/sqlite/client.ts'
import type { Database } from './database.ts'
import { createClaims, type Wanted } from './outbox-claims.ts'
import { linesDue, nextToLeave, rowsInOrder, waitingIds } from './outbox-queries.ts'
import { processNamed } from './process-name.ts'
import { tableOf } from './tables.ts'

/** The text of a file is in the record itself: once the message has gone, or will not go, no second copy is kept. */
function withoutText({ kind, body }: OutboxRow): { body?: OutboxRow['body'] } {
  if (kind !== 'report' || !body.files?.some((file) => 'text' in file)) return {}
  return {
    body: { ...body, files: body.files.map((file) => ('text' in file ? { ...file, text: '' } : file)) },
  }
}

/** The ledger as one process uses it. */
export interface OutboxOfProcess extends SharedOutbox {
  /** True where another process held the row before this one: it may have sent it. */
  takenOver(id: string): boolean
}

/**
 * The ledger of messages. A client's messages of one priority leave in the order in which they were written: one
 * that must wait (a later time, another try) keeps those behind it waiting too.
 * @param holder in whose name rows are claimed; left out, this process's
 */
export function outboxStore(database: Database, holder: string = processNamed()): OutboxOfProcess {
  const claims = createClaims(database, holder)
  /**
   * What has become of a row, in one transaction. Of an answer to a stranger nothing is kept: the event's own id keeps
   * it from being written again. A row that is gone (its client was erased meanwhile) is no error.
   */
  const settle = (id: string, from: object, data: object): Promise<void> =>
    database.transaction(async (db) => {
      const outbox = tableOf(db, 'outbox')
      await claims.letGo(db, id)
      const row = await outbox.findFirst({ where: { id, ...from } })
      if (!row) return
      if (row.practiceId === null) await outbox.deleteMany({ where: { id } })
      else await outbox.updateMany({ where: { id }, data: { ...data, ...withoutText(row) } })
    })
  const claim = async (now: Date, most: number, wanted: Wanted): Promise<OutboxRow[]> => {
    await claims.freeTheDeadOnce()
    // where nothing waits nothing is written
    const some = await database.use((db) => claims.free(db, now, 1, wanted))
    if (some.length === 0) return []
    return database.transaction(async (db) => {
      const rows = await rowsInOrder(db, await claims.free(db, now, most, wanted))
      await claims.hold(db, rows, now)
      return rows
    })
  }
  /**
   * The usual case without reading the row, on PostgreSQL beside the writers of other rows; false where it is none: an answer to a stranger,
   * or a file that must not be kept twice.
   */
  const sentAtOnce = async (id: string, at: Date, channel: string, platformId: string): Promise<boolean> => {
    const letGo = Prisma.sql`DELETE FROM "Lease" WHERE "name" = ${claims.nameOf(id)} AND "holder" = ${holder}`
    const mark = Prisma.sql`UPDATE "Outbox" SET "state" = 'sent', "sentAt" = ${at}, "channel" = ${channel},
        "platformId" = ${platformId}, "reason" = NULL, "attempts" = "attempts" + 1
      WHERE "id" = ${id} AND "practiceId" IS NOT NULL AND "kind" <> 'report'`
    const marked =
      database.kind === 'postgresql'
        ? database.use((db) => db.$executeRaw`WITH "let go" AS (${letGo}) ${mark}`)
        : database.transaction(async (db) => {
            await db.$executeRaw(letGo)
            return db.$executeRaw(mark)
          })
    return (await marked) > 0
  }
  const waiting = { state: 'waiting' }
  const tried = { attempts: { increment: 1 } }

  return {
    waiting: (now, most) => database.use(async (db) => rowsInOrder(db, await waitingIds(db, now, most))),
    claim: (now, most, leastPressing) => claim(now, most, { leastPressing }),
    claimLines: (lines, now, most) => claim(now, most, { lines }),
    release: (ids) => database.transaction((db) => claims.release(db, ids)),
    freeTheDead: claims.freeTheDead,
    takenOver: claims.takenOver,
    linesWaiting: (now, most) => database.use((db) => linesDue(db, now, most)),
    sent: async (id, sentAt, channel, platformId) => {
      if (await sentAtOnce(id, sentAt, channel, platformId)) return
      await settle(id, {}, { state: 'sent', sentAt, channel, platformId, reason: null, ...tried })
    },
    failed: (id, reason) => settle(id, waiting, { state: 'failed', reason, ...tried }),
    dropped: (id, reason) => settle(id, waiting, { state: 'dropped', reason }),
    retry: (id, notBefore) =>
      database.transaction(async (db) => {
        await claims.letGo(db, id)
        await tableOf(db, 'outbox').updateMany({ where: { id, ...waiting }, data: { notBefore, ...tried } })
      }),
    marked: (platformIds) =>
      database.use(async (db) => {
        const platformId = { in: [...platformIds] }
        const rows = await tableOf(db, 'outbox').findMany({ where: { state: 'sent', platformId } })
        return new Set(rows.flatMap((row) => row.platformId ?? []))
      }),
    nextDue: () => database.use(nextToLeave),
  }
}
