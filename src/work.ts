import { type APIUser, type Client, Routes } from 'discord.js'
import type { Logger } from 'pino'
import { commandsWith } from '../commands/index.ts'
import { createSending } from './bot-several.ts'
import { createClient, problemOf } from './chat/client.ts'
import { createCourier } from './chat/courier.ts'
import { sharedPaceOf } from './chat/delivery-pace.ts'
import { within } from './chat/in-flight.ts'
import { askedPrivate } from './chat/kept-private.ts'
import { createLookBack } from './chat/look-back.ts'
import type { OwnLadder } from './domain/ladder/ladder-file.ts'
import { LADDERS } from './domain/ladder/ladders.ts'
import { draw, drawFile } from './drawing.ts'
import { createEngine } from './engine/engine.ts'
import type { OutboxRow } from './engine/rows.ts'
import { safeError } from './safe-error.ts'
import type { Seal } from './seal.ts'
import { openSeveral, type Several } from './several.ts'
import type { Address } from './store/address.ts'
import { inspectDatabase } from './store/inspect.ts'
import { type OpenStore, openStore } from './store/open.ts'
import { CAN_WAIT } from './store/outbox-claims.ts'
import { workerNamed } from './store/processes.ts'
import { textsFor } from './text/index.ts'
import { setOwnLadders } from './text/own-ladders.ts'
import { told } from './told-keeper.ts'
import { mustFit, noLongerFits } from './work-fit.ts'

// Often enough that no lane stands empty for long; where nothing waits it costs two queries.
const BEAT_MS = 1_000
// Whether it still fits the others: soon enough that a claim of its own has not ended.
const LOOK_MS = 60_000
// Of the 5 s that a stop may take.
const LAST_WORK_MS = 3_500

export interface WorkParts {
  readonly address: Extract<Address, { kind: 'postgresql' }>
  readonly token: string
  readonly api: string | null
  readonly perSecond?: number
  readonly ladders: readonly OwnLadder[]
  readonly seal: Seal | null
  readonly now: () => Date
  readonly log: Logger
  /** Called where this process must not go on beside the others: their version or its clock is another now. */
  readonly unfit?: (problem: Error) => void
}

/**
 * A process that only sends, beside the one that has the gateway: what can wait leaves from whichever is free.
 * @throws StoreProblem or ChatProblem, each one sentence with the mend
 */
export const startWork = (parts: WorkParts): Promise<{ stop(): Promise<void> }> =>
  orAway(parts.address, () => start(parts))

async function start(parts: WorkParts): Promise<{ stop(): Promise<void> }> {
  const { address, log, seal } = parts
  await mustFit(address, parts.now)
  const client = createClient(parts.token, parts.api, parts.perSecond)
  const store = await openStore(address.url, null, undefined, seal)
  let several: Several | null = null
  try {
    const self = (await client.rest.get(Routes.user()).catch((error) => {
      throw problemOf(error, client, textsFor('en').chat)
    })) as APIUser
    several = await openSeveral(address, log, parts.perSecond, workerNamed())
    const sending = await sendingOf(parts, { client, store, several, ownId: self.id })
    const timer = setInterval(() => {
      void sending
        .beat()
        .catch((error) => log.warn({ error: safeError(error) }, 'a beat failed; the next tries again'))
    }, BEAT_MS)
    const looking = setInterval(() => {
      void noLongerFits(address, parts.now).then((problem) => {
        if (problem) parts.unfit?.(problem)
      })
    }, LOOK_MS)
    const { jobs } = several
    return {
      async stop() {
        clearInterval(timer)
        clearInterval(looking)
        sending.stop()
        await within(sending.idle(), LAST_WORK_MS, undefined)
        await Promise.all([jobs.close(), store.close(), client.destroy()])
      },
    }
  } catch (error) {
    await several?.jobs.close().catch(() => undefined)
    await store.close()
    await client.destroy()
    throw error
  }
}

/** A server that goes away in the middle of a start is what the keeper should read of, not what failed by it. */
async function orAway<T>({ url }: WorkParts['address'], start: () => Promise<T>): Promise<T> {
  try {
    return await start()
  } catch (error) {
    await inspectDatabase(url)
    throw error
  }
}

interface Opened {
  readonly client: Client
  readonly store: OpenStore
  readonly several: Several
  readonly ownId: string
}

async function sendingOf({ ladders: own, now, log }: WorkParts, { client, store, several, ownId }: Opened) {
  const { rest } = client
  const ladders = [...LADDERS, ...own.map(({ ladder }) => ladder)]
  setOwnLadders(own)
  const directs = new Map<string, string>()
  for await (const page of store.directs.all())
    for (const { user, channel } of page) directs.set(user, channel)
  // what somebody waits for the process with the gateway may have sent past the store
  const mayBeThere = ({ id, priority }: OutboxRow): boolean =>
    priority < CAN_WAIT || store.outbox.takenOver(id)
  const lookBack = createLookBack({
    ...{ rest, now, mayBeThere, marked: store.outbox.marked },
    ownId: () => ownId,
  })
  const directOf = (user: string): string | null => directs.get(user) ?? null
  const courier = createCourier({ rest, directOf, lookBack, draw, drawFile, log })
  const { sending } = createSending({
    engine: createEngine({ store: store.store, commands: commandsWith(ladders), textsFor, ladders }),
    outbox: store.outbox,
    courier: askedPrivate(courier, rest),
    pace: sharedPaceOf(rest, several.budget),
    jobs: several.jobs,
    now,
    ...told(log),
  })
  return oneAtATime(sending)
}

/** A beat that takes long is not overtaken by the next. */
function oneAtATime<T extends { beat(): Promise<void> }>(sending: T): T {
  let beating: Promise<void> | null = null
  return {
    ...sending,
    beat() {
      beating ??= sending.beat().finally(() => {
        beating = null
      })
      return beating
    },
  }
}
