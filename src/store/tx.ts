import type { ClientFile, Tx } from '../engine/ports.ts'
import { Prisma } from '../generated/sqlite/client.ts'
import { applyOutcome, keepShown } from './apply.ts'
import { findFiles, loadFiles, type Reach } from './client-file.ts'
import type { DatabaseTraits, Db } from './database.ts'
import { eraseClient, rowsOf } from './erase.ts'
import { noteErasure } from './erasures.ts'
import { keptOf } from './kept.ts'
import { tableOf } from './tables.ts'

/** Reading and writing inside one transaction; `erased` hears of it where a client is removed. */
export function createTx(source: DatabaseTraits, db: Db, erased: () => void): Tx {
  const practices = tableOf(db, 'practice')
  const clients = tableOf(db, 'client')

  const file = async (which: Prisma.Sql, reach: Reach = 'recent'): Promise<ClientFile | null> =>
    (await findFiles(source, db, which, reach))[0] ?? null

  return {
    seen: async (id) =>
      (await db.$queryRaw<unknown[]>`SELECT 1 FROM "Inbound" WHERE "id" = ${id}`).length > 0,
    practice: (id) => practices.findFirst({ where: { id } }),
    practiceOfGuild: (guild) => practices.findFirst({ where: { guild } }),
    practices: () => practices.findMany({ orderBy: [{ name: 'asc' }, { id: 'asc' }] }),
    clientsOfUser: (user) =>
      findFiles(
        source,
        db,
        Prisma.sql`c."user" = ${user} ORDER BY c."createdAt" DESC, c."id" DESC`,
        'recent',
      ),
    clientRowsOfUser: (user) =>
      clients.findMany({ where: { user }, orderBy: [{ createdAt: 'desc' }, { id: 'desc' }] }),
    client: (id) => file(Prisma.sql`c."id" = ${id}`),
    wholeClient: (id) => file(Prisma.sql`c."id" = ${id}`, 'whole'),
    clientByRef: (practiceId, ref) => file(Prisma.sql`c."practiceId" = ${practiceId} AND c."ref" = ${ref}`),
    roster: async (practiceId) =>
      loadFiles(
        source,
        db,
        await clients.findMany({ where: { practiceId, stage: { not: 'left' } }, orderBy: { ref: 'asc' } }),
      ),
    refs: async (practiceId) => {
      const rows = await clients.findMany({
        where: { practiceId, stage: { not: 'left' } },
        orderBy: { ref: 'asc' },
      })
      return rows.map((row) => row.ref)
    },
    plans: (clientId) =>
      tableOf(db, 'plan').findMany({ where: { clientId }, orderBy: [{ at: 'asc' }, { id: 'asc' }] }),
    proposals: async (practiceId) => {
      const where = { client: { practiceId } }
      return {
        flags: await tableOf(db, 'flag').findMany({ where, orderBy: [{ openedAt: 'asc' }, { id: 'asc' }] }),
        decisions: await tableOf(db, 'decision').findMany({ where, orderBy: [{ at: 'asc' }, { id: 'asc' }] }),
      }
    },
    covers: (practiceId) =>
      tableOf(db, 'cover').findMany({ where: { practiceId }, orderBy: [{ from: 'asc' }, { id: 'asc' }] }),
    notes: (clientId) =>
      tableOf(db, 'note').findMany({ where: { clientId }, orderBy: [{ at: 'asc' }, { id: 'asc' }] }),
    told: async (clientId) => ({
      checkIns: await tableOf(db, 'checkIn').findMany({ where: { clientId }, orderBy: { day: 'asc' } }),
      versions: await tableOf(db, 'version').findMany({
        where: { clientId },
        orderBy: [{ at: 'asc' }, { id: 'asc' }],
      }),
    }),
    kept: (clientId) => keptOf(db, clientId),
    rowsOf: (clientId) => rowsOf(db, clientId),
    outbox: (id) => tableOf(db, 'outbox').findFirst({ where: { id } }),
    outboxByKey: (key) => tableOf(db, 'outbox').findFirst({ where: { key } }),
    due: (id) => tableOf(db, 'due').findFirst({ where: { id } }),
    keepShown: (message, of) => keepShown(source, db, message, of),
    apply: (outcome) => applyOutcome(source, db, outcome),
    withdraw: async (clientId, reason, which) => {
      const outbox = tableOf(db, 'outbox')
      const waiting = await outbox.findMany({ where: { clientId, state: 'waiting' } })
      const ids = waiting.filter(which).map((row) => row.id)
      if (ids.length === 0) return
      await outbox.updateMany({ where: { id: { in: ids } }, data: { state: 'dropped', reason } })
    },
    erase: async (clientId, at) => {
      const counts = await eraseClient(db, clientId)
      if (counts.client === undefined) return counts
      await noteErasure(db, clientId, at)
      erased()
      return counts
    },
  }
}
