import type { Undelivered } from '../engine/event.ts'
import { type Courier, type OutboxStore, Undeliverable } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import { isUrgent, retryAt } from './retry-at.ts'

// So many rows are read at a time; a new message ends the batch, so an urgent one waits for one send at most.
const BATCH = 50

/** Where a message ended up. */
export interface Sent {
  readonly channel: string
  readonly platformId: string
}
export type OnSent = (row: OutboxRow, sent: Sent) => void

export interface Delivery {
  /**
   * Sends everything whose time has come; resolves when nothing is left to send now. One drain runs at a time: a
   * call meanwhile makes it look again, and resolves with it. Rejects where the store fails; what was not marked
   * stays waiting.
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

/** Takes messages from the outbox to the platform, in order, each marked with what became of it. */
export function createDelivery(parts: DeliveryParts): Delivery {
  const { outbox, courier, now } = parts
  const holds = createHolds()
  // on the platform, though the store could not be told: marked next time instead of sent twice
  const unmarked = new Map<string, Sent>()
  let running: Promise<void> | null = null
  let again = false

  const drain = (): Promise<void> => {
    again = true
    running ??= run()
    return running
  }

  const run = async (): Promise<void> => {
    try {
      while (again) {
        again = false
        await sendAll()
      }
    } finally {
      running = null
    }
  }

  const sendAll = async (): Promise<void> => {
    for (let rows = await next(); rows.length > 0; rows = await next()) {
      for (const row of rows) {
        const failed = (await step(row)) === 'retry'
        if (again) return
        if (failed) break
      }
    }
  }
  const next = (): Promise<OutboxRow[]> => outbox.waiting(now(), BATCH)

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

interface Hold {
  readonly seq: number
  readonly priority: number
  readonly until: Date
}

/**
 * Keeps order: while a message waits for another try, what comes after it (written later and no more pressing) for
 * that client and place waits too. Urgent ones wait for nothing.
 */
function createHolds() {
  const holds = new Map<string, Hold>()
  const lane = ({ clientId, body: { address } }: OutboxRow): string =>
    `${clientId} > ${address.to === 'client' ? address.user : address.channel}`

  return {
    begin(row: OutboxRow, until: Date): void {
      const held = holds.get(lane(row))
      if (row.clientId === null || (held && held.seq < row.seq)) return
      holds.set(lane(row), { seq: row.seq, priority: row.priority, until })
    },
    end(row: OutboxRow): void {
      if (holds.get(lane(row))?.seq === row.seq) holds.delete(lane(row))
    },
    /** Until when the row must wait; null where it may go. */
    until(row: OutboxRow, now: Date): Date | null {
      const held = holds.get(lane(row))
      if (!held || isUrgent(row) || row.seq <= held.seq || row.priority < held.priority) return null
      if (held.until > now) return held.until
      holds.delete(lane(row))
      return null
    },
  }
}
