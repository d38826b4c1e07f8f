import type { Kept } from '../engine/ports.ts'
import type { Db } from './database.ts'
import { type StoredRows, tableOf } from './tables.ts'

/** By which column the rows of a table are in order of time. */
const TIME = {
  consent: 'at',
  screening: 'startedAt',
  plan: 'at',
  rung: 'at',
  checkIn: 'day',
  version: 'at',
  sign: 'at',
  hold: 'at',
  flag: 'openedAt',
  decision: 'at',
  alert: 'openedAt',
  alertStep: 'at',
  note: 'at',
  activity: 'at',
  question: 'at',
  outbox: 'seq',
} as const satisfies Record<keyof Kept, string>

/** Everything that is kept of one client; empty lists where there is no such client. */
export async function keptOf(db: Db, clientId: string): Promise<Kept> {
  const kept: Partial<Record<keyof Kept, StoredRows[keyof Kept][]>> = {}
  for (const [table, time] of Object.entries(TIME) as [keyof Kept, string][])
    kept[table] = await tableOf(db, table).findMany({
      where: { clientId },
      orderBy: [{ [time]: 'asc' }, { id: 'asc' }],
    })
  return kept as Kept
}
