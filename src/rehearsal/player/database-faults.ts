import { renameSync } from 'node:fs'
import { setTimeout as pause } from 'node:timers/promises'
import SqliteDatabase from 'better-sqlite3'
import type { Tx } from '../../engine/ports.ts'
import { readAddress } from '../../store/address.ts'
import type { OpenStore, openStore as openAny } from '../../store/open.ts'
import type { DatabaseFault } from '../scenario/index.ts'
import { goneServer, lockedServer } from './server-faults.ts'

type End = () => Promise<void> | void

// Real time. A transaction: longer than the platform waits for an answer (3 s).
const SLOW_MS = 3_500
// Anything else: longer than delivery waits for a claim (0.3 s).
const SLOW_USE_MS = 500
const CODES = { full: 'SQLITE_FULL', 'read-only': 'SQLITE_READONLY' } as const
const PARTS = ['', '-wal', '-shm']

/**
 * The faults of the database. Locked and gone are real ones: another connection holds it, or the file is moved away, or
 * the server takes no connections. A full disk, one that may not be written and a slow one stand between the bot and
 * the store.
 */
export class DatabaseFaults {
  private what: DatabaseFault | null = null

  constructor(
    private readonly url: string,
    private readonly openStore: typeof openAny,
  ) {}

  get isAway(): boolean {
    return this.what !== null
  }

  /** Not even the play's own look at it would get an answer. */
  get isUnreadable(): boolean {
    return this.what === 'gone' || this.what === 'locked'
  }

  /** A failure that the fault explains is passed over; any other is not. */
  readonly pass = (error: unknown): void => {
    if (!this.isAway) throw error
  }

  async begin(what: DatabaseFault): Promise<End> {
    const end = await this.strike(what)
    this.what = what
    return async () => {
      this.what = null
      await end()
    }
  }

  private strike(what: DatabaseFault): Promise<End> | End {
    if (what !== 'locked' && what !== 'gone') return () => {}
    const address = readAddress(this.url)
    if (address.kind === 'sqlite') return what === 'locked' ? locked(address.path) : gone(address.path)
    return what === 'locked' ? lockedServer(address.url) : goneServer(address.url)
  }

  /** The store with the fault before every use. */
  readonly open: typeof openAny = async (url, ledger, holder, seal): Promise<OpenStore> => {
    // a play ends processes and never cuts the power: nothing is gained by waiting for the disk
    const opened = await this.openStore(url, ledger, holder, seal, 'OFF')
    const wait = async (ms: number): Promise<void> => {
      if (this.what === 'slow') await pause(ms)
    }
    const mayWrite = async (): Promise<void> => {
      if (this.what === 'full' || this.what === 'read-only')
        throw Object.assign(new Error(`the database is ${this.what}`), { code: CODES[this.what] })
    }
    const before = async (writes: boolean): Promise<void> => {
      await wait(SLOW_USE_MS)
      if (writes) await mayWrite()
    }
    const { outbox, dues, settings } = opened
    return {
      ...opened,
      store: {
        transaction: async (work) => {
          await wait(SLOW_MS)
          return opened.store.transaction((tx) => work(guarded(tx, mayWrite)))
        },
      },
      outbox: behind(outbox, (name) => before(!['waiting', 'nextDue'].includes(name))),
      dues: behind(dues, () => before(false)),
      settings: behind(settings, (name) => before(name === 'set')),
    }
  }
}

const WRITES = ['apply', 'withdraw', 'erase', 'keepShown']

const guarded = (tx: Tx, before: () => Promise<void>): Tx =>
  behind(tx, async (name) => {
    if (WRITES.includes(name)) await before()
  })

/** The same methods, each behind `before`. */
function behind<T extends object>(part: T, before: (name: string) => Promise<void>): T {
  const methods = Object.entries(part).map(([name, method]) => [
    name,
    async (...given: unknown[]) => {
      await before(name)
      return (method as (...given: unknown[]) => unknown)(...given)
    },
  ])
  return Object.fromEntries(methods) as T
}

function locked(path: string): End {
  const other = new SqliteDatabase(path, { timeout: 5_000 })
  other.exec('BEGIN IMMEDIATE')
  return () => {
    other.exec('ROLLBACK')
    other.close()
  }
}

function gone(path: string): End {
  const move = (from: string, to: string): void => {
    for (const part of PARTS) {
      try {
        renameSync(`${from}${part}`, `${to}${part}`)
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error
      }
    }
  }
  move(path, `${path}.away`)
  return () => move(`${path}.away`, path)
}
