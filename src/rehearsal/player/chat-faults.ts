import type { Platform } from '../platform/index.ts'
import type { ChatFault, Fault } from '../scenario/index.ts'
import type { VirtualClock } from './clock.ts'
import type { DatabaseFaults } from './database-faults.ts'
import type { Host } from './host.ts'

interface Parts {
  readonly platform: Platform
  readonly clock: VirtualClock
  readonly host: Host
  readonly database: DatabaseFaults
}
type End = () => Promise<void> | void

/** Where the scenario does not say how long. */
const USUAL_MS = 10 * 60_000
/** Real time: each answer of a slow platform takes so long. */
const SLOW_MS = 300
/** How many requests are told to come later, and after how many real seconds: the clock of the play stands still. */
const PACED = { times: 3, retryAfterS: 0.2 }
const POST = /^POST \/channels\/\d+\/messages$/
const ALWAYS = Number.POSITIVE_INFINITY

/** The faults of the chat, through the knobs of the stand-in; those of the database, and of the bot's host. */
export class ChatFaults {
  private open: { readonly kind: 'chat' | 'database'; readonly until: Date; readonly end: End }[] = []

  constructor(private readonly parts: Parts) {}

  async strike(fault: Fault): Promise<void> {
    const { clock, host } = this.parts
    if (fault.kind === 'clock') return clock.jump(fault.ms)
    if (fault.kind === 'chat') return this.chat(fault.what, fault.forMs)
    if (fault.kind === 'database')
      return this.lasting(fault.forMs, await this.parts.database.begin(fault.what), 'database')
    if (fault.what === 'kill') await host.kill()
    else await host.stop()
    await host.start()
  }

  get nextMend(): Date | null {
    return this.open.reduce<Date | null>(
      (first, { until }) => (first && first <= until ? first : until),
      null,
    )
  }

  /** Those of a kind end now, at the next `mend`. */
  release(kind: 'chat' | 'database'): void {
    const until = this.parts.clock.world()
    this.open = this.open.map((one) => (one.kind === kind ? { ...one, until } : one))
  }

  /** Ends what has lasted long enough; true where there was something. */
  async mend(): Promise<boolean> {
    const now = this.parts.clock.world()
    const over = this.open.filter(({ until }) => until <= now)
    this.open = this.open.filter(({ until }) => until > now)
    for (const { end } of over) await end()
    return over.length > 0
  }

  private chat(what: ChatFault, forMs: number | null): Promise<void> | void {
    const { platform } = this.parts
    switch (what) {
      case 'down':
        return this.cut(forMs)
      case 'slow':
        platform.slow(SLOW_MS)
        return this.lasting(forMs, () => platform.slow(0))
      case '500':
        platform.fault({ match: POST, status: 500, times: ALWAYS })
        return this.lasting(forMs, () => platform.clearFaults())
      case '429':
        return platform.fault(pacing())
      case 'lost-answer':
        platform.fault({ match: POST, drop: true, afterApply: true, times: forMs === null ? 1 : ALWAYS })
        return forMs === null ? undefined : this.lasting(forMs, () => platform.clearFaults())
      case 'gateway-drop':
        return platform.dropGateway()
      case 'no-resume':
        platform.refuseResume()
        return platform.dropGateway()
      case 'revoked':
        return this.revoke(forMs)
    }
  }

  private cut(forMs: number | null): void {
    const { platform, host } = this.parts
    host.isCut = true
    platform.chatDown(true)
    this.lasting(forMs, () => {
      host.isCut = false
      platform.chatDown(false)
    })
  }

  /** The bot ends by itself; its keeper gives it a good token and starts it again. */
  private async revoke(forMs: number | null): Promise<void> {
    const { platform, host } = this.parts
    platform.revokeToken()
    await host.stop()
    this.lasting(forMs, async () => {
      platform.restoreToken()
      await host.start()
    })
  }

  private lasting(forMs: number | null, end: End, kind: 'chat' | 'database' = 'chat'): void {
    const until = new Date(this.parts.clock.world().getTime() + (forMs ?? USUAL_MS))
    this.open.push({ kind, until, end })
  }
}

const pacing = () => ({
  match: POST,
  status: 429,
  headers: { 'Retry-After': String(PACED.retryAfterS) },
  body: { message: 'You are being rate limited.', retry_after: PACED.retryAfterS, global: false },
  times: PACED.times,
})
