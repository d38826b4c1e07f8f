import type { Undelivered } from '../engine/event.ts'
import { type Courier, type OutboxStore, Undeliverable } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import { createHolds } from './delivery-holds.ts'
import { createLane } from './delivery-lane.ts'
import { createTaken } from './delivery-taken.ts'
import { within } from './in-flight.ts'
import { retryAt } from './retry-at.ts'

// So long one message of the express lane may hold up the next; after that they go side by side.
const PATIENCE_MS = 100
// A channel over its limit holds up to five seconds of alerts: they must leave room for others.
const SIDE_BY_SIDE = 4

/** Where a message ended up. */
export interface Sent {
  readonly channel: string
  readonly platformId: string
}
export type OnSent = (row: OutboxRow, sent: Sent) => void

export interface Delivery {
  /**
   * Sends everything whose time has come; resolves when nothing is left to send now. A call meanwhile makes it look
   * again, and sends what somebody waits for past what is under way. Rejects where the store fails; what was not
   * marked stays waiting.
   */
  drain(): Promise<void>
}

export interface DeliveryParts {
  readonly outbox: OutboxStore
  readonly courier: Courier
  readonly now: () => Date
  readonly onSent: OnSent
  /** Tells the engine that a message will not arrive. */
  readonly undelivered: (event: Undelivered) => Promise<unknown>
  /** Hears of a failure after which the message is tried again. */
  readonly onTrouble?: (error: unknown, row: OutboxRow) => void
}

/**
 * Takes messages from the outbox to the platform, in order, each marked with what became of it. One lane takes all of
 * them, most pressing first; while it is busy, urgent messages, alerts and answers go by an express lane beside it.
 */
export function createDelivery(parts: DeliveryParts): Delivery {
  const { outbox, courier, now } = parts
  const holds = createHolds()
  // on the platform, though the store could not be told: marked next time instead of sent twice
  const unmarked = new Map<string, Sent>()
  const taken = createTaken(outbox, now)

  const drain = async (): Promise<void> => {
    if (!main.isRunning()) return main.run()
    // whoever began the run hears of its failures
    main.run().catch(() => undefined)
    await express.run()
    // what had to wait behind one of these
    if (!main.isRunning()) await main.run()
  }

  const sendAll = async (): Promise<void> => {
    while (!main.isCalled()) {
      const rows = await taken.next()
      if (rows.length === 0) return
      await sendBatch(rows)
    }
  }

  const sendBatch = async (rows: readonly OutboxRow[]): Promise<void> => {
    try {
      for (const row of rows) {
        if (!taken.isStillOurs(row)) return
        const failed = (await step(row)) === 'retry'
        if (main.isCalled() || failed) return
      }
    } finally {
      taken.giveBack(rows)
    }
  }

  const sendPressing = async (): Promise<void> => {
    const underWay = new Set<Promise<unknown>>()
    const failures: unknown[] = []
    const begin = (row: OutboxRow): Promise<void> => {
      const work: Promise<void> = step(row)
        .then(() => undefined)
        .catch((error) => void failures.push(error))
        .finally(() => {
          taken.giveBack([row])
          underWay.delete(work)
        })
      underWay.add(work)
      return work
    }
    const hasRoom = (row: OutboxRow): boolean => row.priority === 0 || underWay.size < SIDE_BY_SIDE
    while (failures.length === 0) {
      const row = await taken.nextPressing(hasRoom)
      if (row) await within(begin(row), PATIENCE_MS, undefined)
      else if (underWay.size === 0) break
      else await Promise.race([...underWay, express.called()])
    }
    await Promise.all(underWay)
    if (failures.length > 0) throw failures[0]
  }

  const main = createLane(sendAll)
  const express = createLane(sendPressing)

  /** Every step moves its row on: none is waiting for now afterwards. */
  const step = async (row: OutboxRow): Promise<'done' | 'retry'> => {
    const until = holds.until(row, now())
    if (until) {
      await outbox.retry(row.id, until)
      return 'done'
    }
    try {
      await settle(row)
      holds.end(row)
      return 'done'
    } catch (error) {
      parts.onTrouble?.(error, row)
      const at = retryAt(row, now())
      await outbox.retry(row.id, at)
      holds.begin(row, at)
      return 'retry'
    }
  }

  const settle = async (row: OutboxRow): Promise<void> => {
    if (row.expires && row.expires <= now() && !unmarked.has(row.id)) {
      await parts.undelivered({ kind: 'undelivered', outbox: row.id, reason: 'stale' })
      return outbox.dropped(row.id, 'stale')
    }
    const sent = unmarked.get(row.id) ?? (await send(row))
    if (sent instanceof Undeliverable) {
      // told before it is marked: a crash between the two tells the coach again under the same key, never not at all
      await parts.undelivered({ kind: 'undelivered', outbox: row.id, reason: sent.reason })
      return outbox.failed(row.id, sent.reason)
    }
    if (!unmarked.has(row.id)) parts.onSent(row, sent)
    unmarked.set(row.id, sent)
    await outbox.sent(row.id, now(), sent.channel, sent.platformId)
    unmarked.delete(row.id)
  }

  const send = async (row: OutboxRow): Promise<Sent | Undeliverable> => {
    try {
      return await courier.deliver(row)
    } catch (error) {
      if (error instanceof Undeliverable) return error
      throw error
    }
  }

  return { drain }
}
