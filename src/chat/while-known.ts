import { KNOWN_MS } from './look-back.ts'

// What is begun by then arrives while the platform knows the nonce of the first try.
const AGAIN_WITHIN_MS = KNOWN_MS - 10_000

/**
 * Ends the tries that the platform's client makes by itself once the first is so long ago that the platform may have
 * forgotten its nonce: this process has stood still, and one more would be a second message. Each try asks the clock,
 * since after a sleep the client's own timers are served before any that would abort.
 */
export function whileKnown(since = Date.now()): AbortSignal {
  const { signal } = new AbortController()
  return Object.defineProperty(signal, 'aborted', { get: () => Date.now() - since > AGAIN_WITHIN_MS })
}
