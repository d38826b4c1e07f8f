import { pino } from 'pino'
import { commands } from '../../../commands/index.ts'
import { customId } from '../../chat/custom-id.ts'
import type { Filled } from '../../engine/event.ts'
import type { OutboxRow } from '../../engine/rows.ts'
import { type Service, startService } from '../../service.ts'
import { type Answer, createPlatform, type FieldValues, type Platform } from '../platform/index.ts'
import type { Script } from '../scenario/index.ts'
import { buildCast, type Cast, userOf } from './cast.ts'
import { chatFaults } from './chat-faults.ts'
import type { VirtualClock } from './clock.ts'
import { createReceived, type Received } from './received.ts'
import type { Hooks, Stage } from './stage.ts'

interface ChatParts {
  readonly url: string
  readonly clock: VirtualClock
  readonly hooks: Hooks
  readonly script: Script
}

// Under a virtual clock nothing is gained by waiting: the stand-in takes as many requests as come.
const PER_SECOND = 1_000_000
// So long may it take, in real time, until all that an act leads to is done; a slow line takes seconds.
const QUIET_MS = 60_000

/** Through the real chat client against the stand-in of the platform on this machine. */
export async function chatStage(parts: ChatParts): Promise<Stage> {
  const { clock, script, hooks } = parts
  const platform = createPlatform({ now: () => clock.world().getTime() })
  const cast = buildCast(platform.build, script)
  const received = createReceived(platform, cast, hooks.onTrouble)
  await platform.start()
  const host = await createHost(parts, platform, received)
  const people = peopleOn({ platform, cast, received, hooks })
  const faults = chatFaults({ platform, clock, host })

  /** Acts, then waits until all is quiet and looks at what was received. */
  const then = async <T>(work: Promise<T> | T): Promise<T> => {
    const result = await work
    await host.quiet(faults.isDown)
    received.verify()
    return result
  }

  return {
    cast,
    get store() {
      return host.store()
    },
    say: (who, text) => then(people.person(who).say(text)),
    edit: (who, message, text) => then(people.person(who).edit(message, text)),
    takeBack: (who, message) => then(people.person(who).delete(message)),
    press: (who, row, index) => then(people.press(who, row, index)),
    choose: (who, row, values) => then(people.choose(who, row, values)),
    fill: (who, row, index, filled) => then(people.fill(who, row, index, filled)),
    command: (who, { name, options }) => then(people.command(who, name, options)),
    tick: () => then(host.service()?.bot.tick()),
    async nextDue() {
      const due = (await host.service()?.bot.nextDue()) ?? null
      return due && clock.inWorld(due)
    },
    fault: (fault) => then(faults.strike(fault)),
    nextMend: faults.nextMend,
    mend: async () => {
      if (await faults.mend()) await then(null)
    },
    async close() {
      for (const { request, reason, errors } of platform.violations)
        hooks.onTrouble(`${request}: ${reason} ${JSON.stringify(errors)}`)
      await host.stop()
      await platform.stop()
    },
  }
}

/** The bot's process: it can be ended in order or dropped, and started again on the same database. */
export interface Host {
  service(): Service | null
  store(): Service['store']
  quiet(isDown: () => boolean): Promise<void>
  start(): Promise<void>
  stop(): Promise<void>
  /** Drops all that is in memory, without any closing step. */
  kill(): Promise<void>
}

async function createHost(
  { url, clock, hooks, script }: ChatParts,
  platform: Platform,
  received: Received,
): Promise<Host> {
  const isPlain = script.steps.every(({ act }) => act.who !== 'world')
  const log = pino({ level: 'error', base: null }, {
    // with faults on the way, errors are part of the play
    write: (line: string) => isPlain && hooks.onTrouble(`the bot reports: ${line.trim()}`),
  } as pino.DestinationStream)
  let service: Service | null = null
  let last: Service['store'] | null = null

  const host: Host = {
    service: () => service,
    store: () => last!,
    async start() {
      service = await startService({
        databaseUrl: url,
        token: platform.token,
        api: platform.apiUrl,
        perSecond: PER_SECOND,
        now: clock.host,
        log,
        onSent: (row, sent) => received.sent(row, () => hooks.onSent(row, sent)),
        onHandled: (event, handled) => {
          received.handled(event, handled)
          hooks.onHandled(event, handled)
        },
        lost: () => void host.stop(),
      })
      last = service.store
    },
    async stop() {
      const ending = service
      service = null
      await ending?.stop()
    },
    async kill() {
      const ending = service
      service = null
      ending?.client.removeAllListeners()
      ending?.store.abandon()
      await ending?.client.destroy()
    },
    async quiet(isDown) {
      const late = performance.now() + QUIET_MS
      for (let calm = 0; calm < 2; ) {
        await service?.chat.idle()
        await service?.bot.idle()
        calm = isCalm(platform, service, isDown()) ? calm + 1 : 0
        if (calm < 2) await new Promise((resolve) => setTimeout(resolve, calm === 0 ? 1 : 0))
        if (performance.now() < late) continue
        hooks.onTrouble(`it did not become quiet at ${clock.world().toISOString()}`)
        return
      }
    },
  }
  await host.start()
  return host
}

function isCalm(platform: Platform, service: Service | null, down: boolean): boolean {
  const { requests, interactions } = platform.busy
  if (requests > 0 || (interactions > 0 && !down)) return false
  if (down || !service) return true
  return platform.connected && service.chat.lastSequence() >= platform.sequence
}

/** What people do with their own apps. */
function peopleOn({
  platform,
  cast,
  received,
  hooks,
}: {
  platform: Platform
  cast: Cast
  received: Received
  hooks: Hooks
}) {
  const person = (who: string) => platform.person(userOf(cast, who))
  const place = (row: OutboxRow, custom: string): string => received.messageWith(row, custom)

  const answered = async (answer: Answer): Promise<Answer> => {
    if (answer.outcome === 'expired') hooks.onTrouble('an interaction was not answered within 3 s')
    return answer
  }

  return {
    person,
    async press(who: string, row: OutboxRow, index: number): Promise<void> {
      const custom = customId({ outbox: row.id, part: 'button', index })
      await answered(await person(who).press(place(row, custom), custom))
    },
    async choose(who: string, row: OutboxRow, values: readonly string[]): Promise<void> {
      const custom = customId({ outbox: row.id, part: 'pick', index: 0 })
      await answered(await person(who).choose(place(row, custom), custom, values))
    },
    async fill(who: string, row: OutboxRow, index: number, filled: Filled): Promise<void> {
      const custom = customId({ outbox: row.id, part: 'button', index })
      const opened = await answered(await person(who).press(place(row, custom), custom))
      if (opened.outcome !== 'modal') return hooks.onTrouble(`${who} pressed for a form and none was shown`)
      await answered(await person(who).submit(opened.modal, filled as FieldValues))
    },
    async command(
      who: string,
      name: string,
      options: Readonly<Record<string, string | number | boolean>>,
    ): Promise<void> {
      const isClients = commands.find((one) => one.name === name)?.who === 'client'
      const where = who === 'coach' ? cast.coachChannel : isClients ? 'dm' : cast.hall
      await answered(await person(who).slash(where, name, { ...options }))
    },
  }
}
