import cron from 'node-cron'
import type { Logger } from 'pino'
import { safeError } from '../safe-error.ts'

// Often enough that a prompt leaves within seconds of its minute and a retry of 5 s is no later than 10.
const EVERY_FIVE_SECONDS = '*/5 * * * * *'
const WATCH_MS = 1_000
const JUMP_MS = 60_000

export interface Ticker {
  /** Begins no further tick; one under way goes on. */
  stop(): Promise<void>
}

/**
 * Calls `tick` every five seconds, one at a time; who is due is the store's business. Where one takes longer, because
 * a long line of messages is being sent, `beside` is called meanwhile, one at a time too.
 */
export function startTicker(tick: () => Promise<void>, log: Logger, beside = async () => {}): Ticker {
  const alone = (work: () => Promise<void>): (() => boolean) => {
    let busy = false
    const run = async (): Promise<void> => {
      try {
        await work()
      } catch (error) {
        log.error({ error: safeError(error) }, 'tick failed; the next one tries again')
      } finally {
        busy = false
      }
    }
    return () => {
      if (busy) return false
      busy = true
      void run()
      return true
    }
  }
  const begin = alone(tick)
  const beginBeside = alone(beside)
  // a beat that was missed is made up for by the next: what is due stays due
  const task = cron.schedule(EVERY_FIVE_SECONDS, () => void (begin() || beginBeside()), {
    suppressMissedWarning: true,
  })
  const unwatch = whenPutElsewhere(async () => {
    await task.stop()
    await task.start()
  })
  return {
    stop: async () => {
      unwatch()
      await task.stop()
    },
  }
}

/**
 * Hears that the host's clock was put elsewhere. Put back, the next beat would be waited for all over again; put
 * forward (or the machine slept), the scheduler would first walk through every beat that it missed.
 */
function whenPutElsewhere(again: () => Promise<void>): () => void {
  let seen = Date.now()
  const watch = setInterval(() => {
    const now = Date.now()
    if (now < seen || now > seen + JUMP_MS) void again()
    seen = now
  }, WATCH_MS)
  return () => clearInterval(watch)
}
