import { pino } from 'pino'
import { leave } from '../../chat/leave.ts'
import { type Service, startService } from '../../service.ts'
import type { openStore } from '../../store/open.ts'
import type { Platform } from '../platform/index.ts'
import type { Script } from '../scenario/index.ts'
import type { VirtualClock } from './clock.ts'
import type { Received } from './received.ts'
import type { Hooks } from './stage.ts'

// Under a virtual clock nothing is gained by waiting: the stand-in takes as many requests as come.
const PER_SECOND = 1_000_000
// So long may it take, in real time, until all that an act leads to is done; a slow line takes seconds.
const QUIET_MS = 60_000
const ERROR = pino.levels.values.error!

interface HostParts {
  readonly url: string
  readonly openStore: typeof openStore
  readonly platform: Platform
  readonly received: Received
  readonly clock: VirtualClock
  readonly hooks: Hooks
  readonly script: Script
}

/** The bot's process: it can be ended in order or dropped, and started again on the same database. */
export class Host {
  /** Null while the bot is not running. */
  service: Service | null = null
  /** The platform cannot be reached: nobody waits for it. */
  isCut = false
  private last: Service['store'] | null = null

  constructor(private readonly parts: HostParts) {}

  get store(): Service['store'] {
    return this.last!
  }

  async start(): Promise<void> {
    const { url, platform, received, clock, hooks } = this.parts
    this.service = await startService({
      databaseUrl: url,
      openStore: this.parts.openStore,
      token: platform.token,
      api: platform.apiUrl,
      perSecond: PER_SECOND,
      now: clock.host,
      log: this.log(),
      onSent: (row, sent) => {
        received.sent(row)
        hooks.onSent(row, sent)
      },
      onHandled: (event, handled) => {
        received.handled(event, handled)
        hooks.onHandled(event, handled)
      },
      lost: () => void this.stop(),
    })
    this.last = this.service.store
  }

  /** Ends in order. */
  async stop(): Promise<void> {
    const ending = this.service
    this.service = null
    await ending?.stop()
  }

  /** Drops all that is in memory, without any closing step. */
  async kill(): Promise<void> {
    const ending = this.service
    this.service = null
    ending?.abandon()
    if (ending) await leave(ending.client)
  }

  /** Resolves when the platform, the line and the bot have nothing left to do. */
  async quiet(): Promise<void> {
    const late = performance.now() + QUIET_MS
    for (let calm = 0; calm < 2; ) {
      await this.service?.chat.idle()
      await this.service?.bot.idle()
      calm = this.isCalm() ? calm + 1 : 0
      if (calm < 2) await new Promise((resolve) => setTimeout(resolve, calm === 0 ? 1 : 0))
      if (performance.now() < late) continue
      this.parts.hooks.onTrouble(`it did not become quiet at ${this.parts.clock.world().toISOString()}`)
      return
    }
  }

  private isCalm(): boolean {
    const { platform } = this.parts
    const { requests, interactions } = platform.busy
    if (requests > 0 || (interactions > 0 && !this.isCut)) return false
    if (this.isCut || !this.service) return true
    return platform.connected && this.service.chat.lastSequence() >= platform.sequence
  }

  /** What the bot reports as an error fails the play; with faults on the way, errors are part of it. */
  private log() {
    const { script, hooks, platform } = this.parts
    const isPlain = script.steps.every(({ act }) => act.who !== 'world')
    const write = (line: string): void => {
      hooks.onLogged(line)
      if (line.includes(platform.token)) hooks.onTrouble('the log tells the token')
      const { level } = JSON.parse(line) as { level: number }
      if (isPlain && level >= ERROR) hooks.onTrouble(`the bot reports: ${line.trim()}`)
    }
    return pino({ level: 'trace', base: null }, { write })
  }
}
