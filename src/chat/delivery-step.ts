import type { Undelivered } from '../engine/event.ts'
import { type Courier, type OutboxStore, type Sent, Undeliverable } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import { createHolds } from './delivery-holds.ts'
import { retryAt } from './retry-at.ts'

export type OnSent = (row: OutboxRow, sent: Sent) => void

export interface StepParts {
  readonly outbox: OutboxStore
  readonly courier: Courier
  readonly now: () => Date
  readonly onSent: OnSent
  /** Tells the engine that a message will not arrive. */
  readonly undelivered: (event: Undelivered) => Promise<unknown>
  /** Hears of a failure after which the message is tried again. */
  readonly onTrouble?: (error: unknown, row: OutboxRow) => void
}

/** Brings one message to the platform and marks it with what became of it. Rejects where the store fails. */
export type Step = (row: OutboxRow) => Promise<'done' | 'retry'>

/** Every step moves its row on: none is waiting for now afterwards. */
export function createStep(parts: StepParts): Step {
  const { outbox, courier, now } = parts
  const holds = createHolds()
  // on the platform, though the store could not be told: marked next time instead of sent twice
  const unmarked = new Map<string, Sent>()

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

  return async (row) => {
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
}
