import type { OutboxRow } from '../engine/rows.ts'
import { wayOf } from './delivery-holds.ts'
import { createLane } from './delivery-lane.ts'
import { createStep, type Step, type StepParts } from './delivery-step.ts'
import { createTaken, type Taken } from './delivery-taken.ts'
import { within } from './in-flight.ts'

// While a long run of rows is handled, an answer of the platform is heard late: one message at a time would fall behind
// the pace that the platform allows.
const AT_ONCE = 3
// So long one message of the express lane may hold up the next; after that they go side by side.
const PATIENCE_MS = 100
// A channel over its limit holds up to five seconds of alerts: they must leave room for others.
const SIDE_BY_SIDE = 4

export interface Delivery {
  /**
   * Sends everything whose time has come; resolves when nothing is left to send now. A call meanwhile makes it look
   * again, and sends what somebody waits for past what is under way. Rejects where the store fails; what was not
   * marked stays waiting.
   */
  drain(): Promise<void>
  /** Sends only what somebody waits for, by the express lane. */
  drainPressing(): Promise<void>
}

/**
 * Takes messages from the outbox to the platform, each client's in order, each marked with what became of it. One lane
 * takes all of them, most pressing first, some side by side; while it is busy, urgent messages, alerts and answers go
 * by an express lane beside it.
 */
export function createDelivery(parts: StepParts): Delivery {
  return onLanes(createTaken(parts.outbox, parts.now), createStep(parts))
}

/** @param taken and step are shared where the process sends in other ways as well */
export function onLanes(taken: Taken, step: Step): Delivery {
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

  /** Some side by side; of each client and place one after another. */
  const sendBatch = async (rows: readonly OutboxRow[]): Promise<void> => {
    const underWay = new Map<string, Promise<void>>()
    const failures: unknown[] = []
    let goesOn = true
    const begin = (row: OutboxRow): void => {
      const work = step(row)
        .then((outcome) => {
          goesOn &&= outcome === 'done'
        })
        .catch((error) => {
          goesOn = false
          failures.push(error)
        })
        .finally(() => underWay.delete(wayOf(row)))
      underWay.set(wayOf(row), work)
    }
    for (const [n, row] of rows.entries()) {
      while (underWay.size >= AT_ONCE || underWay.has(wayOf(row))) await Promise.race(underWay.values())
      // called again and again, it still sends one each time
      if (!goesOn || !taken.isStillOurs(row) || (n > 0 && main.isCalled())) break
      begin(row)
    }
    await Promise.all(underWay.values())
    taken.giveBack(rows)
    if (failures.length > 0) throw failures[0]
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

  return { drain, drainPressing: express.run }
}
