import type { Logger } from 'pino'
import { type Courier, type Sent, Undeliverable } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import { safeError } from '../safe-error.ts'
import type { Spool } from './spool.ts'

// Short enough that a hiccup of the network is hardly noticed; then twice as long each time, half a minute at most.
const FIRST_MS = 5_000
const LONGEST_MS = 30_000
// Some days of a practice of hundreds; a message has a few kilobytes.
const REMEMBERED = 2_000

export interface Sender {
  /** The courier for everybody: what went the short way already is not sent again, only told where it is. */
  readonly courier: Courier
  /** A message with choices among those sent last. */
  lately(outbox: string): OutboxRow | null
  /** Nothing of a client is kept any more. */
  forget(clientId: string): void
  /** A message is on the platform: told of once, whichever way it went. */
  announce(row: OutboxRow, sent: Sent): void
  /**
   * Sends past the store, the first try at once, and goes on until the message is on the platform or `over`.
   * Resolves after the first try. A final refusal goes to `instead`, where there is one.
   */
  send(row: OutboxRow, instead: OutboxRow | null, over: () => boolean): Promise<void>
  /** Ends the tries that still wait. */
  stop(): void
}

export interface SenderParts {
  readonly courier: Courier
  readonly spool: Spool
  readonly onSent: (row: OutboxRow, sent: Sent) => void
  /** A message is about to go past the store, and past the bot's own pace. */
  readonly onPast: (row: OutboxRow) => void
  readonly log: Logger
}

export function createSender({ courier, spool, onSent, onPast, log }: SenderParts): Sender {
  const under = new Map<string, Promise<Sent>>()
  const here = new Map<string, Sent>()
  const told = new Set<string>()
  const shown = new Map<string, OutboxRow>()
  const waits = new Set<NodeJS.Timeout>()
  let stopped = false

  const deliver = (row: OutboxRow): Promise<Sent> => {
    const known = here.get(row.id) ?? spool.sentTo(row.id)
    if (known) return Promise.resolve(known)
    const begun = under.get(row.id)
    if (begun) return begun
    const work = courier.deliver(row).finally(() => under.delete(row.id))
    if (row.body.buttons.length > 0 || row.body.pick) remember(row)
    under.set(row.id, work)
    return work
  }

  const remember = (row: OutboxRow): void => {
    shown.set(row.id, row)
    const [oldest] = shown.keys()
    if (shown.size > REMEMBERED && oldest !== undefined) shown.delete(oldest)
  }

  const announce = (row: OutboxRow, sent: Sent): void => {
    // only urgent messages and alerts may go both ways
    if (row.priority <= 1) {
      const before = told.has(row.id) || spool.sentTo(row.id) !== null
      told.add(row.id)
      if (before) return
    }
    onSent(row, sent)
  }

  /** Past the store: where it ends up is kept, so that the store can be told later. */
  const past = async (row: OutboxRow): Promise<void> => {
    onPast(row)
    const sent = await deliver(row)
    if (here.has(row.id)) return
    here.set(row.id, sent)
    announce(row, sent)
    await spool.sent(row.id, sent).catch((error) => unwritten(error, log))
  }

  /** Rejects where neither of the two is on the platform. */
  const attempt = async (row: OutboxRow, instead: OutboxRow | null): Promise<void> => {
    try {
      await past(row)
    } catch (error) {
      if (!(error instanceof Undeliverable)) throw error
      log.error({ kind: row.kind, reason: error.reason }, 'the platform refuses a message that must arrive')
      if (!instead) throw error
      await past(instead)
    }
  }

  const tries = async (row: OutboxRow, instead: OutboxRow | null, over: () => boolean, wait: number) => {
    try {
      await attempt(row, instead)
    } catch (error) {
      if (stopped || over()) return
      const told = { kind: row.kind, againInMs: wait, error: safeError(error) }
      log.error(told, 'a message that must arrive did not; it is tried again')
      const timer = setTimeout(() => {
        waits.delete(timer)
        if (!over()) void tries(row, instead, over, Math.min(wait * 2, LONGEST_MS))
      }, wait)
      waits.add(timer)
    }
  }

  return {
    courier: { deliver },
    lately: (outbox) => shown.get(outbox) ?? null,
    forget(clientId) {
      for (const row of shown.values()) if (row.clientId === clientId) shown.delete(row.id)
    },
    announce,
    send: (row, instead, over) => tries(row, instead, over, FIRST_MS),
    stop() {
      stopped = true
      for (const timer of waits) clearTimeout(timer)
      waits.clear()
    },
  }
}

/** The disk failed as well: what was sent is still known in memory. */
export const unwritten = (error: unknown, log: Logger): void =>
  log.error({ code: (error as NodeJS.ErrnoException).code ?? 'unknown' }, 'the spool file cannot be written')
