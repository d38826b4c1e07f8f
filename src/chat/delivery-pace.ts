import { setTimeout as pause } from 'node:timers/promises'
import type { Courier } from '../engine/ports.ts'

// Of the requests that the platform allows in a second, what is kept free for urgent messages and answers: 4 %.
const KEPT_FREE = 0.04
// A timer that comes late may be made up for by so many messages at once.
const BURST = 3
// From here on a message waits for its turn: prompts and digests. Whoever waits for an answer does not.
const PACED_FROM = 3

/** What the platform's client knows of the limit over all requests. */
export interface Budget {
  readonly globalRemaining: number
  /** In ms since 1970. */
  readonly globalReset: number
}

/**
 * The same courier, which sends prompts and digests evenly and leaves room for what cannot wait: sent in bursts, they
 * would use up a second's requests at its beginning, and an urgent reply would wait for the next second.
 * @param perSecond requests that the platform allows in a second
 */
export function paced(courier: Courier, budget: Budget, perSecond: number): Courier {
  const every = 1_000 / (perSecond * (1 - KEPT_FREE))
  const free = Math.max(1, Math.round(perSecond * KEPT_FREE))
  let next = 0

  const turn = async (): Promise<void> => {
    const wait = next - performance.now()
    if (wait > 0) await pause(wait)
    for (let left = leftFor(budget, free); left > 0; left = leftFor(budget, free)) await pause(left)
  }

  return {
    async deliver(row) {
      // what goes past the line puts it off by one message all the same
      next = Math.max(next + every, performance.now() - BURST * every)
      if (row.priority >= PACED_FROM) await turn()
      return courier.deliver(row)
    },
  }
}

/** Milliseconds until there is more of the budget than what is kept free; 0 where there is. */
function leftFor({ globalRemaining, globalReset }: Budget, free: number): number {
  return globalRemaining > free ? 0 : Math.max(0, globalReset - Date.now())
}
