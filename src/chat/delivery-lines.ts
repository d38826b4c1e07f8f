import type { Courier } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import type { SharedOutbox } from '../engine/several.ts'
import { type Delivery, onLanes } from './delivery.ts'
import { type Pace, paced } from './delivery-pace.ts'
import { createStep, type StepParts } from './delivery-step.ts'
import { createTaken } from './delivery-taken.ts'

/** Delivery of one process among several. */
export interface SharedDelivery extends Pick<Delivery, 'drainPressing'> {
  /**
   * Sends all that may go of these lines: each in order, line beside line. What another process has claimed is left to
   * it. Rejects where the store fails; what was not marked stays waiting.
   */
  sendLines(keys: readonly string[]): Promise<void>
  /** Begins no further message, and gives back what was claimed for later. */
  stop(): void
}

export interface SharedDeliveryParts extends StepParts {
  readonly outbox: SharedOutbox
  readonly pace: Pace
}

export function createSharedDelivery(parts: SharedDeliveryParts): SharedDelivery {
  const { outbox, pace } = parts
  const taken = createTaken(outbox, parts.now)
  const courier: Courier = {
    async deliver(row) {
      // its turn may have come late, or the process have stood still: another may have it by now
      if (!taken.isStillOurs(row)) throw new Error('claimed too long ago')
      return parts.courier.deliver(row)
    },
  }
  const step = createStep({ ...parts, courier: paced(courier, pace) })
  const { drainPressing } = onLanes(taken, step)
  let stopped = false

  /** Gives those that were not begun. */
  const sendInOrder = async (rows: readonly OutboxRow[]): Promise<readonly OutboxRow[]> => {
    for (const [n, row] of rows.entries()) {
      if (stopped || !taken.isStillOurs(row)) return rows.slice(n)
      if ((await step(row)) === 'retry') return rows.slice(n + 1)
    }
    return []
  }

  const sendAll = async (rows: readonly OutboxRow[]): Promise<void> => {
    const ended = await Promise.allSettled(byLine(rows).map(sendInOrder))
    taken.giveBack(rows)
    const left = ended.flatMap((one) => (one.status === 'fulfilled' ? one.value : []))
    if (left.length > 0) await outbox.release(left.map(({ id }) => id))
    const failed = ended.find((one) => one.status === 'rejected')
    if (failed) throw failed.reason
  }

  return {
    drainPressing,
    async sendLines(keys) {
      while (!stopped) {
        const rows = await taken.nextOf(keys, outbox)
        if (rows.length === 0) return
        await sendAll(rows)
      }
    },
    stop() {
      stopped = true
    },
  }
}

function byLine(rows: readonly OutboxRow[]): OutboxRow[][] {
  const lines = new Map<string, OutboxRow[]>()
  for (const row of rows) {
    const key = row.clientId ?? row.id
    lines.set(key, [...(lines.get(key) ?? []), row])
  }
  return [...lines.values()]
}
