import type { Platform } from '../../../src/rehearsal/platform/index.ts'
import type { Host } from './host.ts'

// Somebody who gets no answer for so often gives up.
const TRIES = 20

interface Parts {
  readonly platform: Platform
  readonly host: Host
  /** Resolves when all is quiet, with a new process where the old one was killed. */
  readonly settled: () => Promise<void>
}

/**
 * Presses or types, and does so again where the bot was killed before the person saw an answer: the platform gives an
 * interaction to the bot once, and tells the person that it failed.
 */
export async function whileUnanswered(
  { platform, host, settled }: Parts,
  act: () => Promise<unknown>,
): Promise<void> {
  let answers = 0
  const unhear = platform.on('message', (event) => {
    // a message in private tells the person as well that what they did has arrived
    if (event.interactionId !== null || event.change === 'edited' || event.guildId === null) answers += 1
  })
  try {
    for (let tries = 0; tries < TRIES; tries += 1) {
      const { kills } = host
      answers = 0
      const work = act().catch((error: Error) => {
        // what was pressed is gone: the press before it counted
        if (tries === 0 || !/no such component/.test(error.message)) throw error
        answers += 1
      })
      await Promise.race([work, host.over])
      await settled()
      if (host.kills === kills || answers > 0) return
      work.catch(() => {})
    }
    throw new Error(`not answered after ${TRIES} tries`)
  } finally {
    unhear()
  }
}
