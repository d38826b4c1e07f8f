import type { SharedDues } from '../engine/several.ts'
import type { Database } from './database.ts'
import { tableOf } from './tables.ts'

/** What is due when, read by instant through its index. */
export function dueStore(database: Database): SharedDues {
  const order = [{ at: 'asc' }, { id: 'asc' }]
  return {
    dueBy: (now, most) =>
      database.use((db) =>
        tableOf(db, 'due').findMany({ where: { at: { lte: now } }, orderBy: order, take: most }),
      ),
    dueAmong: (ids, now) =>
      database.use((db) =>
        tableOf(db, 'due').findMany({ where: { id: { in: ids }, at: { lte: now } }, orderBy: order }),
      ),
    nextDue: () =>
      database.use(async (db) => (await tableOf(db, 'due').findFirst({ orderBy: order }))?.at ?? null),
  }
}
