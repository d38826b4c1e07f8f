import type { Logger } from 'pino'
import type { Concerned, Courier, Engine, KnownClient, Sent, Store } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import { safeError } from '../safe-error.ts'
import type { Seal } from '../seal.ts'
import type { Texts } from '../text/index.ts'
import type { IdOf } from './answers.ts'
import type { KnownPeople } from './known.ts'
import { createSender } from './sender.ts'
import { openSpool } from './spool.ts'
import { createUrgentFirst } from './urgent-first.ts'
import { watched } from './watched.ts'

// Who is called first may change with the day, without anything being written.
const REFRESH_MS = 3_600_000

export interface WithoutStoreParts {
  readonly spool: string
  /** What closes the words in it; null: they are kept as they are. */
  readonly seal: Seal | null
  readonly known: KnownPeople
  readonly store: Store
  readonly engineOn: (store: Store) => Engine
  readonly courier: Courier
  readonly textsFor: (language: string) => Texts
  readonly languages: readonly string[]
  readonly idOf: IdOf
  /** Everybody, or those concerned, a page at a time. */
  readonly readKnown: (concerned: Concerned | null) => AsyncIterable<readonly KnownClient[]>
  /** Writes something, and rejects where the store is away, full or may not be written. */
  readonly probe: () => Promise<unknown>
  /** What is wrong with the store, in one sentence with the mend, where an error comes from there. */
  readonly problemOf?: (error: unknown) => Error | null
  readonly onSent: (row: OutboxRow, sent: Sent) => void
  /** A message is about to go past the store, and past the bot's own pace; left out: nobody keeps a pace. */
  readonly onPast?: (row: OutboxRow) => void
  readonly now: () => Date
  readonly log: Logger
}

/** The bot's engine and courier with the short way beside them, for when the store is away. */
export interface WithoutStore {
  readonly engine: Engine
  readonly courier: Courier
  /** A message sent lately that has choices: a press must be understood without the store. */
  lately(outbox: string): OutboxRow | null
  /** Called by delivery with what is marked as sent; what went the short way has been told of before. */
  readonly onSent: (row: OutboxRow, sent: Sent) => void
  /** A tick, with what was put aside handed over before it and forgotten after it. */
  tick(tick: () => Promise<void>): Promise<void>
  close(): Promise<void>
  /** Ends at once; what is on the disk stays. */
  abandon(): void
}

/** Opens the spool. @throws where its folder cannot be written */
export async function openWithoutStore(parts: WithoutStoreParts): Promise<WithoutStore> {
  const { known, readKnown, onSent, onPast = () => {}, now, log } = parts
  const spool = await openSpool(parts.spool, parts.seal)
  const sender = createSender({ courier: parts.courier, spool, onSent, onPast, log })
  let refreshed = 0
  let wanted: Concerned | null = { clients: [], practices: [] }
  const takeIn = once(async () => {
    const concerned = wanted
    wanted = { clients: [], practices: [] }
    try {
      if (concerned === null) await known.replace(readKnown(null))
      else await known.update(readKnown(concerned))
      if (concerned === null) refreshed = now().getTime()
    } catch (error) {
      wanted = null
      log.warn({ error: safeError(error) }, 'who is known could not be written down; the last list holds')
    }
  })
  const refresh = (concerned: Concerned | null): Promise<void> => {
    wanted = both(wanted, concerned)
    return takeIn()
  }
  const urgent = createUrgentFirst({
    ...{
      known,
      spool,
      sender,
      log,
      textsFor: parts.textsFor,
      languages: parts.languages,
      idOf: parts.idOf,
      probe: parts.probe,
    },
    ...(parts.problemOf ? { problemOf: parts.problemOf } : {}),
    engine: parts.engineOn(watched(parts.store, (concerned) => void refresh(concerned), sender.forget)),
  })
  await refresh(null)

  return {
    engine: urgent.engine,
    courier: sender.courier,
    lately: sender.lately,
    onSent: sender.announce,
    async tick(tick) {
      await urgent.takeUp()
      const handed = urgent.handed()
      await tick()
      // the tick has marked their messages as sent, and sent what was not
      await urgent.forget(handed)
      if (Math.abs(now().getTime() - refreshed) >= REFRESH_MS) await refresh(null)
    },
    abandon() {
      sender.stop()
      void spool.close()
    },
    async close() {
      sender.stop()
      await takeIn.idle()
      await spool.close()
    },
  }
}

const both = (one: Concerned | null, other: Concerned | null): Concerned | null =>
  one && other
    ? {
        clients: [...one.clients, ...other.clients],
        practices: [...one.practices, ...other.practices],
      }
    : null

/** Runs the work one at a time; asked for meanwhile, once more afterwards. */
function once(work: () => Promise<void>): (() => Promise<void>) & { idle(): Promise<void> } {
  let running: Promise<void> | null = null
  let again = false
  const run = async (): Promise<void> => {
    while (again) {
      again = false
      await work()
    }
  }
  const start = (): Promise<void> => {
    again = true
    running ??= run().finally(() => {
      running = null
    })
    return running
  }
  return Object.assign(start, { idle: async () => running ?? undefined })
}
