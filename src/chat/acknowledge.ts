import type { Logger } from 'pino'
import { safeError } from '../safe-error.ts'
import { within } from './in-flight.ts'

/**
 * The platform drops an interaction that is not acknowledged within 3 s ("Receiving and Responding to
 * Interactions"). What must be known first may take half of that, and the rest is for the way there.
 */
export const LOOK_UP_MS = 1_500

// The event itself does not wait longer for the platform: a sign in it must be answered though the line is slow.
const WAIT_MS = 1_000

/** Takes note of an interaction. Where that fails the event counts all the same; only its answer has no place. */
export async function acknowledge(defer: () => Promise<unknown>, log: Logger): Promise<void> {
  const work = defer().catch((error) => {
    log.warn({ error: safeError(error) }, 'an interaction could not be acknowledged')
  })
  await within(work, WAIT_MS, undefined)
}
