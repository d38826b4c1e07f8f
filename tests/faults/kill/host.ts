import type { Platform } from '../../../src/rehearsal/platform/index.ts'
import { BotProcess, Died } from './bot-process.ts'
import type { Ask, Told } from './protocol.ts'

// So long may it take, in real time, until all is quiet.
const QUIET_MS = 30_000

export interface HostParts {
  /** The bundle that is run. */
  readonly file: string
  readonly now: () => Date
  readonly onSent?: (told: Told & { told: 'sent' }) => void
  readonly onHandled?: (told: Told & { told: 'handled' }) => void
  /** Called with each new process before it starts: the place to take aim. */
  readonly before?: (bot: BotProcess) => Promise<void>
}

export interface Place {
  readonly databaseUrl: string
  /** Of its small files; null: beside the database. */
  readonly folder: string | null
  readonly platform: Platform
}

/** Where the bot runs: one process at work, another one loaded and waiting to take over. */
export class Host {
  kills = 0
  private bot: BotProcess
  private next: BotProcess
  private place: Place | null = null

  constructor(readonly parts: HostParts) {
    this.bot = new BotProcess(parts.file)
    this.next = new BotProcess(parts.file)
  }

  get isAlive(): boolean {
    return this.bot.isAlive
  }

  get over(): Promise<void> {
    return this.bot.over
  }

  kill(): void {
    this.bot.kill()
  }

  /** @throws Died */
  ask(ask: Ask): Promise<unknown> {
    return this.bot.ask(this.parts.now(), ask)
  }

  /** Starts the bot at a place. @throws Died */
  async start(place: Place): Promise<void> {
    this.place = place
    const { bot } = this
    bot.onSent = (told) => this.parts.onSent?.(told)
    bot.onHandled = (told) => this.parts.onHandled?.(told)
    await bot.ready
    await this.parts.before?.(bot)
    const { databaseUrl, folder, platform } = place
    await this.ask({ ask: 'start', databaseUrl, folder, token: platform.token, api: platform.apiUrl })
  }

  /** After a kill: the waiting process takes over at the same place; killed again, the one behind it. */
  async revive(): Promise<void> {
    for (;;) {
      await this.bot.over
      this.kills += 1
      this.bot = this.next
      this.next = new BotProcess(this.parts.file)
      try {
        await this.start(this.place!)
        await this.quiet()
        // the first beat of the ticker
        await this.ask({ ask: 'tick' })
        return
      } catch (error) {
        if (!(error instanceof Died)) throw error
      }
    }
  }

  /** Does something with the bot; where it is killed meanwhile, again with the next one. */
  async surely<T>(work: () => Promise<T>): Promise<T> {
    for (;;) {
      try {
        return await work()
      } catch (error) {
        if (!(error instanceof Died)) throw error
        await this.revive()
      }
    }
  }

  /** Resolves when the platform, the line and the bot have nothing left to do. @throws Died */
  async quiet(): Promise<void> {
    const { platform } = this.place!
    const late = performance.now() + QUIET_MS
    for (let calm = 0; calm < 2; ) {
      const heard = Number(await this.ask({ ask: 'quiet' }))
      const isCalm = platform.busy.requests === 0 && platform.connected && heard >= platform.sequence
      calm = isCalm ? calm + 1 : 0
      if (!isCalm) await new Promise((resolve) => setTimeout(resolve, 2))
      if (performance.now() > late) throw new Error('the bot did not become quiet')
    }
  }

  close(): void {
    this.bot.kill()
    this.next.kill()
  }
}
