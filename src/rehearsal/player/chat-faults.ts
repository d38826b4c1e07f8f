import type { Platform } from '../platform/index.ts'
import type { ChatFault, Fault } from '../scenario/index.ts'
import type { Host } from './chat-stage.ts'
import type { VirtualClock } from './clock.ts'

interface Parts {
  readonly platform: Platform
  readonly clock: VirtualClock
  readonly host: Host
}

export interface ChatFaults {
  strike(fault: Fault): Promise<void>
  readonly isDown: () => boolean
  readonly nextMend: () => Date | null
  /** Ends what has lasted long enough; true where there was something. */
  mend(): Promise<boolean>
}

/** Where the scenario does not say how long. */
const USUAL_MS = 10 * 60_000
/** Real time: each answer of a slow platform takes so long. */
const SLOW_MS = 300
/** How many requests are told to come later, and after how many real seconds. */
const PACED = { times: 3, retryAfterS: 0.2 }
const POST = /^POST \/channels\/\d+\/messages$/

/** The faults of the chat, through the knobs of the stand-in. */
export function chatFaults({ platform, clock, host }: Parts): ChatFaults {
  let down = false
  let open: { readonly until: Date; readonly end: () => Promise<void> | void }[] = []

  const lasting = (forMs: number | null, end: () => Promise<void> | void): void => {
    open.push({ until: new Date(clock.world().getTime() + (forMs ?? USUAL_MS)), end })
  }

  const chat = async (what: ChatFault, forMs: number | null): Promise<void> => {
    const limits = { 'Retry-After': String(PACED.retryAfterS) }
    switch (what) {
      case 'down':
        down = true
        platform.chatDown(true)
        return lasting(forMs, () => {
          down = false
          platform.chatDown(false)
        })
      case 'slow':
        platform.slow(SLOW_MS)
        return lasting(forMs, () => platform.slow(0))
      case '500':
        platform.fault({ match: POST, status: 500, times: Number.POSITIVE_INFINITY })
        return lasting(forMs, () => platform.clearFaults())
      case '429': {
        const body = { message: 'You are being rate limited.', retry_after: PACED.retryAfterS, global: false }
        return platform.fault({ match: POST, status: 429, headers: limits, body, times: PACED.times })
      }
      case 'lost-answer':
        platform.fault({
          match: POST,
          drop: true,
          afterApply: true,
          times: forMs === null ? 1 : Number.POSITIVE_INFINITY,
        })
        if (forMs !== null) lasting(forMs, () => platform.clearFaults())
        return
      case 'gateway-drop':
        return platform.dropGateway()
      case 'no-resume':
        platform.refuseResume()
        return platform.dropGateway()
      case 'revoked':
        platform.revokeToken()
        await host.stop()
        return lasting(forMs, async () => {
          platform.restoreToken()
          await host.start()
        })
    }
  }

  return {
    async strike(fault) {
      if (fault.kind === 'clock') return clock.jump(fault.ms)
      if (fault.kind === 'chat') return chat(fault.what, fault.forMs)
      if (fault.kind !== 'restart') throw new Error(`the fault ${fault.kind} cannot be played`)
      if (fault.what === 'kill') await host.kill()
      else await host.stop()
      await host.start()
    },
    isDown: () => down,
    nextMend: () =>
      open.reduce<Date | null>((first, { until }) => (first && first <= until ? first : until), null),
    async mend() {
      const over = open.filter(({ until }) => until <= clock.world())
      open = open.filter(({ until }) => until > clock.world())
      for (const { end } of over) await end()
      return over.length > 0
    },
  }
}
