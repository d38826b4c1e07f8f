import { setImmediate as letOthersIn } from 'node:timers/promises'
import { createDelivery } from './chat/delivery.ts'
import type { OnSent } from './chat/delivery-step.ts'
import { createInFlight } from './chat/in-flight.ts'
import type { Event, Undelivered } from './engine/event.ts'
import type { Courier, DueStore, Engine, Handled, OutboxStore } from './engine/ports.ts'

/** The bot's parts under one clock; the same in service, in rehearsal and in a scenario. */
export interface Bot {
  /** Applies an event and sends what it leads to. */
  handle(event: Event): Promise<Handled>
  /** Handles everything due by now, then sends what waits. */
  tick(): Promise<void>
  /** Handles everything due by now while a tick is still sending a long line; what is pressing goes past that line. */
  tickBeside(): Promise<void>
  /** The earliest instant at which something is due or may be sent again; null where nothing is. */
  nextDue(): Promise<Date | null>
  /** Resolves when nothing is being handled or sent. */
  idle(): Promise<void>
  /** Begins to send nothing more that can wait: others do. */
  stop?(): void
}

export interface BotParts {
  readonly engine: Engine
  readonly dues: DueStore
  readonly outbox: OutboxStore
  readonly courier: Courier
  readonly now: () => Date
  /** Called with every message that reached the platform. */
  readonly onSent?: OnSent
  /** Called with every event that was applied and what is shown for it in place. */
  readonly onHandled?: (event: Event, handled: Handled) => void
  /** Hears of messages that will not arrive. */
  readonly onUndelivered?: (event: Undelivered) => void
  /** Hears of failures that are tried again by themselves. */
  readonly onTrouble?: (error: unknown) => void
}

// So many due rows are taken at a time: enough to keep delivery busy, few enough to let an urgent event between.
const BATCH = 100
// One client's row that cannot be handled must not hold up the others; it is tried again at every tick.
const FAILURES_A_TICK = 10

export function createBot(parts: BotParts): Bot {
  const { engine, dues, outbox, now, onTrouble = () => {} } = parts
  const { track, idle } = createInFlight()
  const delivery = createDelivery({
    outbox,
    courier: parts.courier,
    now,
    onSent: parts.onSent ?? (() => {}),
    undelivered: (event) => {
      parts.onUndelivered?.(event)
      return engine.handle(event, now())
    },
    onTrouble,
  })

  const handle = async (event: Event): Promise<Handled> => {
    const handled = await engine.handle(event, now())
    parts.onHandled?.(event, handled)
    // applied is applied: what could not be sent yet waits in the outbox for the next tick
    await delivery.drain().catch(onTrouble)
    return handled
  }

  /** Between two batches `between` sends what they led to. */
  const handleDue = async (between: () => Promise<unknown>): Promise<void> => {
    const failed = new Set<string>()
    const next = async () =>
      (await dues.dueBy(now(), BATCH + failed.size)).filter(({ id }) => !failed.has(id))
    for (let batch = await next(); batch.length > 0; batch = await next()) {
      for (const due of batch) {
        try {
          await engine.handle({ kind: 'due', due }, now())
        } catch (error) {
          failed.add(due.id)
          onTrouble(error)
          // so many at once are no matter of single rows: the next tick tries again
          if (failed.size >= FAILURES_A_TICK) throw error
        }
        // SQLite answers at once: in a long run of rows nothing else would be heard or sent
        await letOthersIn()
      }
      await between()
    }
  }

  // a row is handled by one of the two at a time
  let sending = false
  const waitFor = async (work: Promise<unknown>): Promise<void> => {
    sending = true
    await work.finally(() => {
      sending = false
    })
  }
  const tick = async (): Promise<void> => {
    // what some rows led to is sent while the next are handled; what somebody waits for goes past it
    let underWay: Promise<void> = Promise.resolve()
    try {
      await handleDue(async () => {
        await waitFor(delivery.drainPressing())
        await waitFor(underWay)
        underWay = delivery.drain()
        underWay.catch(() => undefined)
      })
    } finally {
      await waitFor(underWay)
    }
    await waitFor(delivery.drain())
  }
  const tickBeside = async (): Promise<void> => {
    if (sending) await handleDue(() => delivery.drain())
  }

  return {
    handle: (event) => track(handle(event)),
    tick: () => track(tick()),
    tickBeside: () => track(tickBeside()),
    nextDue: async () => earliest(await dues.nextDue(), await outbox.nextDue()),
    idle,
  }
}

/** The earlier of the two, as far as there are any. */
export const earliest = (a: Date | null, b: Date | null): Date | null => (a && b ? (a < b ? a : b) : (a ?? b))
