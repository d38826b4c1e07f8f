import { type Bot, type BotParts, earliest } from './bot.ts'
import { createSharedDelivery } from './chat/delivery-lines.ts'
import type { Pace } from './chat/delivery-pace.ts'
import { createInFlight } from './chat/in-flight.ts'
import type { DueKind } from './engine/rows.ts'
import type { Line, SharedDues, SharedOutbox } from './engine/several.ts'
import type { Jobs } from './schedule/jobs.ts'
import { CAN_WAIT } from './store/outbox-claims.ts'

// So many are asked for at a time: enough for every process until the next tick, few enough to sort quickly.
const MOST = 1_000
// So many lines wait for the next process that is free: as many as a few of them take in a second.
const ENOUGH = 200
// So many batches of lines are sent side by side: the platform takes a tenth of a second to answer.
const LANES = 4
/** Somebody may need help; then what is due to a minute; then what may come a little later. */
const PRIORITY: Partial<Record<DueKind, number>> = {
  ...{ 'alert-step': 0, untaken: 0, 'urgent-follow-up': 0 },
  ...{ prompt: 1, reminder: 1, deadline: 1, digest: 3, retention: 3 },
}
const OTHERS = 2

export interface SharedBotParts extends BotParts {
  readonly dues: SharedDues
  readonly outbox: SharedOutbox
  readonly jobs: Jobs
  readonly pace: Pace
}

/** Sends, beside others that do: what waits is asked for by jobs, and whoever is free takes them. */
export interface Sending {
  /** Asks for what waits, and sends until nobody asks; resolves once what there was to ask has been asked. */
  beat(): Promise<void>
  /** Resolves when nothing is being sent. */
  idle(): Promise<void>
  /** Begins nothing more. */
  stop(): void
}

/** The bot of the process that has the gateway, where several share a database. */
export function createSharedBot(parts: SharedBotParts): Bot {
  const { engine, dues, outbox, jobs, now, onTrouble = () => {} } = parts
  const { sending, drainPressing } = createSending(parts)
  const { track, idle } = createInFlight()

  const handleThese = async (ids: readonly string[]): Promise<readonly string[]> => {
    const failed: string[] = []
    for (const due of await dues.dueAmong(ids, now())) {
      try {
        await engine.handle({ kind: 'due', due }, now())
      } catch (error) {
        onTrouble(error)
        failed.push(due.id)
      }
    }
    await drainPressing()
    return failed
  }

  /** Asks for what is due and neither asked for nor put aside; gives how many there were. */
  const askForDue = async (): Promise<number> => {
    const resting = await jobs.resting('due')
    const rows = (await dues.dueBy(now(), MOST + resting.size)).filter(({ id }) => !resting.has(id))
    await jobs.send(
      'due',
      rows.map(({ id, kind }) => ({ key: id, priority: PRIORITY[kind] ?? OTHERS })),
    )
    return rows.length
  }

  const tick = async (): Promise<void> => {
    // what went past the store is marked before anybody is asked to send it
    await drainPressing()
    for (let asked = MOST; asked === MOST; ) {
      asked = await askForDue()
      await jobs.run('due', handleThese)
    }
    await sending.beat()
  }
  /** What comes due meanwhile goes past what is less pressing. */
  const tickBeside = async (): Promise<void> => {
    await askForDue()
    await drainPressing()
    await sending.beat()
  }

  return {
    async handle(event) {
      const handled = await track(engine.handle(event, now()))
      parts.onHandled?.(event, handled)
      // applied is applied: what could not be sent yet waits in the outbox for the next tick
      await track(drainPressing()).catch(onTrouble)
      return handled
    },
    tick: () => track(tick()),
    tickBeside: () => track(tickBeside()),
    nextDue: async () => earliest(await dues.nextDue(), await outbox.nextDue()),
    async idle() {
      await idle()
      await sending.idle()
    },
    stop: sending.stop,
  }
}

/** The part that every process has. */
export function createSending(parts: Omit<SharedBotParts, 'dues'>): {
  readonly sending: Sending
  readonly drainPressing: () => Promise<void>
} {
  const { engine, outbox, jobs, now, onTrouble = () => {} } = parts
  const delivery = createSharedDelivery({
    outbox,
    courier: parts.courier,
    pace: parts.pace,
    now,
    onSent: parts.onSent ?? (() => {}),
    undelivered: (event) => {
      parts.onUndelivered?.(event)
      return engine.handle(event, now())
    },
    onTrouble,
  })
  const lanes = new Set<Promise<void>>()
  let stopped = false

  const send = async (keys: readonly string[]): Promise<readonly string[]> => {
    await delivery.sendLines(keys)
    return []
  }
  const openLane = (): void => {
    const lane = jobs
      .run('deliver', send)
      .catch(onTrouble)
      .finally(() => lanes.delete(lane))
    lanes.add(lane)
  }

  /** Where others have asked for enough, only what goes past it: each would ask for all of them once a second. */
  const linesToAskFor = async (): Promise<readonly Line[]> => {
    const lines = await outbox.linesWaiting(now(), MOST)
    if (lines.length < ENOUGH || (await jobs.waiting('deliver', ENOUGH)) < ENOUGH) return lines
    return lines.filter(({ priority }) => priority < CAN_WAIT)
  }

  const sending: Sending = {
    async beat() {
      if (stopped) return
      await outbox.freeTheDead()
      await jobs.send('deliver', await linesToAskFor())
      while (lanes.size < LANES) openLane()
    },
    async idle() {
      while (lanes.size > 0) await Promise.allSettled(lanes)
    },
    stop() {
      stopped = true
      delivery.stop()
    },
  }
  return { sending, drainPressing: delivery.drainPressing }
}
