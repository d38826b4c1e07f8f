import type { Database, Db } from './database.ts'
import { eraseClient } from './erase.ts'
import { appendLedger, type Erasure, erasureOf, isOf, ledgerProblem, readLedger, without } from './ledger.ts'

/** Erasures stand among the settings under such keys. */
const KEY = 'erased:'

/** Notes an erasure in the database, in the transaction of the erasure: the ledger is written from there. */
export async function noteErasure(db: Db, clientId: string, at: Date): Promise<void> {
  await keep(db, [erasureOf(clientId, at)])
}

async function keep(db: Db, erasures: readonly Erasure[]): Promise<void> {
  if (erasures.length === 0) return
  await db.setting.createMany({ data: erasures.map(asSetting) })
}

const asSetting = ({ hash, salt, at }: Erasure): { key: string; value: string } => ({
  key: KEY + hash,
  value: `${salt} ${at}`,
})

export function fromSetting({ key, value }: { key: string; value: string }): Erasure {
  const [salt = '', at = ''] = value.split(' ')
  return { hash: key.slice(KEY.length), salt, at }
}

/** How database and ledger came to agree. */
export interface Settled {
  /** Clients that an older copy of the database had brought back, and that are gone again. */
  readonly again: number
  /** There was a ledger before. */
  readonly wasThere: boolean
  /** Lines of it that could not be read. */
  readonly unreadable: number
  /** Why the ledger could not be read or written, in one sentence with the mend; null where it could. */
  readonly problem: string | null
}

/**
 * Makes database and ledger know of the same erasures. One that only the ledger knows was made after this copy of the
 * database: its client is erased again. One that only the database knows is added to the ledger. No clock is asked, so
 * one that was wrong does no harm.
 * @param more erasures known from elsewhere: from the database that this one replaces
 */
export async function settleErasures(
  database: Database,
  path: string,
  more: readonly Erasure[] = [],
): Promise<Settled> {
  let settled: Settled = { again: 0, wasThere: true, unreadable: 0, problem: null }
  // the ledger is read under the writer's lock, so that two processes do not add the same line
  await database.transaction(async (db) => {
    let again = await eraseAgain(db, without(more, await erasuresIn(db)))
    try {
      const { erasures, isThere: wasThere, unreadable } = readLedger(path)
      again += await eraseAgain(db, without(erasures, await erasuresIn(db)))
      const unwritten = without(await erasuresIn(db), erasures)
      settled = { again, wasThere, unreadable, problem: null }
      if (!wasThere || unwritten.length > 0) appendLedger(path, unwritten)
    } catch (error) {
      if ((error as NodeJS.ErrnoException).syscall === undefined) throw error
      settled = { ...settled, again, problem: ledgerProblem(error, path) }
    }
  })
  if (settled.again > 0) await database.scrub()
  return settled
}

async function erasuresIn(db: Db): Promise<Erasure[]> {
  return (await db.setting.findMany({ where: { key: { startsWith: KEY } } })).map(fromSetting)
}

async function eraseAgain(db: Db, erasures: readonly Erasure[]): Promise<number> {
  if (erasures.length === 0) return 0
  const clients = await db.client.findMany({ select: { id: true } })
  const back = clients.filter(({ id }) => erasures.some((erasure) => isOf(erasure, id)))
  for (const { id } of back) await eraseClient(db, id)
  await keep(db, dedupe(erasures))
  return back.length
}

/** A ledger put together from two may say the same thing twice. */
const dedupe = (erasures: readonly Erasure[]): Erasure[] => [
  ...new Map(erasures.map((erasure) => [erasure.hash, erasure])).values(),
]
