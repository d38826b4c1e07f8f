import type { Concerned, KnownClient, Store } from '../engine/ports.ts'
import type { SharedDues } from '../engine/several.ts'
import type { Seal } from '../seal.ts'
import { type Address, readAddress } from './address.ts'
import type { Database } from './database.ts'
import { type Directs, directsOf } from './directs.ts'
import { dueStore } from './dues.ts'
import { type Settled, settleErasures } from './erasures.ts'
import { knownPeople } from './known.ts'
import { ledgerPlace } from './ledger.ts'
import { migratePostgresql } from './migrate-postgresql.ts'
import { migrateSqlite } from './migrate-sqlite.ts'
import { halfMoved, readNote } from './move-note.ts'
import { type OutboxOfProcess, outboxStore } from './outbox.ts'
import { type LadderInPlans, laddersInPlans } from './plan-ladders.ts'
import { openPostgresql } from './postgresql.ts'
import { StoreProblem } from './problem.ts'
import { processNamed } from './process-name.ts'
import { notSealedWith } from './sealed-count.ts'
import { mustOpen, noteKey } from './sealed-mark.ts'
import { type SettingStore, settingStore } from './settings.ts'
import { openSqlite, prepareFile, type Sync } from './sqlite.ts'
import { createTx } from './tx.ts'

/** The database in use, part by part. */
export interface OpenStore {
  readonly kind: 'sqlite' | 'postgresql'
  readonly store: Store
  readonly outbox: OutboxOfProcess
  readonly dues: SharedDues
  readonly settings: SettingStore
  /** What the ledger of erasures said of this database when it was opened; null where there is no ledger. */
  readonly erasures: Settled | null
  readonly directs: Directs
  laddersInPlans(): Promise<LadderInPlans[]>
  /** How many rows hold words that are not sealed with the key of this id. */
  notSealedWith(key: string): Promise<number>
  /**
   * Everybody on file, or those concerned, with what an urgent answer needs, a page at a time; the coach is who is
   * called first now.
   */
  knownPeople(now: Date, concerned: Concerned | null): AsyncIterable<readonly KnownClient[]>
  /** Ends in order: what runs is finished first. */
  close(): Promise<void>
  /** Drops everything at once, as a killed process would: what was not committed is gone. */
  abandon(): void
}

/**
 * Opens the database at an address (`file:PATH` or `postgresql://…`), made and brought up to date where needed.
 * @throws StoreProblem in one sentence with the mend: a wrong address, a file or server that cannot be used, a
 * wrong password, a database that a newer version has changed.
 * @param ledger path of the list of erasures; beside a SQLite file and none for a server where left out, null: none
 * @param holder in whose name messages are claimed for delivery; this process's where left out
 * @param seal what closes and opens the words of people; null: they are kept as they are; 'unread': for whoever
 * neither reads nor writes any
 * @param sync how far a SQLite file waits for the disk; a play, in which no power is cut, need not
 */
export async function openStore(
  url: string,
  ledger: string | null = ledgerPlace(readAddress(url), null),
  holder: string = processNamed(),
  seal: Seal | null | 'unread' = null,
  sync: Sync = 'FULL',
): Promise<OpenStore> {
  const database =
    seal === 'unread' ? await openDatabase(readAddress(url), null, sync) : await openSealed(url, seal, sync)
  const settle = async () => (ledger === null ? null : settleErasures(database, ledger))
  const erasures = await settle()
  let closing: Promise<void> | null = null
  return {
    kind: database.kind,
    store: transactions(database, settle),
    outbox: outboxStore(database, holder),
    dues: dueStore(database),
    settings: settingStore(database),
    erasures,
    directs: directsOf(database),
    laddersInPlans: () => laddersInPlans(database),
    notSealedWith: (key) => notSealedWith(database, key),
    knownPeople: (now, concerned) => knownPeople(database, now, concerned),
    close() {
      closing ??= database.close()
      return closing
    },
    abandon: () => database.abandon(),
  }
}

/**
 * The database alone, with the key noted that its words are closed with from now on.
 * @throws StoreProblem where it cannot be used, or its words need another key
 */
export async function openSealed(url: string, seal: Seal | null, sync: Sync = 'FULL'): Promise<Database> {
  const database = await openDatabase(readAddress(url), seal, sync)
  try {
    const mark = await mustOpen(database, seal)
    if (seal !== null) await noteKey(database, seal, mark)
    return database
  } catch (error) {
    await database.close()
    throw error
  }
}

async function openDatabase(address: Address, seal: Seal | null, sync: Sync): Promise<Database> {
  const database = await openAny(address, seal, sync)
  try {
    const problem = halfMoved(await database.use(readNote))
    if (problem !== null) throw new StoreProblem(problem)
    return database
  } catch (error) {
    await database.close()
    throw error
  }
}

async function openAny(address: Address, seal: Seal | null, sync: Sync): Promise<Database> {
  if (address.kind === 'postgresql') {
    await migratePostgresql(address.url, address.server)
    return openPostgresql(address.url, seal)
  }
  prepareFile(address.path)
  migrateSqlite(address.path)
  return openSqlite(address.path, seal, sync)
}

function transactions(database: Database, settle: () => Promise<unknown>): Store {
  return {
    async transaction(work) {
      let erased = false
      const result = await database.transaction((db) => work(createTx(database, db, () => (erased = true))))
      if (!erased) return result
      await database.scrub()
      // what cannot be written to the ledger now is in the database, and is tried again at the next opening
      await settle().catch(() => undefined)
      return result
    },
  }
}
