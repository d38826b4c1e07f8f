import cron from 'node-cron'
import type { Logger } from 'pino'

// Often enough that a prompt leaves within seconds of its minute and a retry of 5 s is no later than 10.
const EVERY_FIVE_SECONDS = '*/5 * * * * *'

export interface Ticker {
  stop(): Promise<void>
}

/** Calls `tick` every five seconds, one at a time; who is due is the store's business. */
export function startTicker(tick: () => Promise<void>, log: Logger): Ticker {
  let running: Promise<void> = Promise.resolve()
  const once = async (): Promise<void> => {
    try {
      await tick()
    } catch (error) {
      log.error({ error: (error as Error).name }, 'tick failed; the next one tries again')
    }
  }
  const task = cron.schedule(
    EVERY_FIVE_SECONDS,
    () => {
      running = once()
      return running
    },
    { noOverlap: true },
  )
  return {
    stop: async () => {
      await task.stop()
      await running
    },
  }
}
