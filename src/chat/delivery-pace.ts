import { setTimeout as pause } from 'node:timers/promises'
import type { REST } from 'discord.js'
import type { Courier } from '../engine/ports.ts'
import type { SharedBudget } from '../engine/several.ts'
import { isUrgent } from './retry-at.ts'

// Of the requests that the platform allows in a second, what is kept free for urgent messages and answers.
export const KEPT_FREE = 0.04
// For a minute after somebody needed help: alert and answers follow, and one request over the limit stops all for a
// second, as the platform's second and ours do not begin together.
export const KEPT_FREE_URGENT = 0.15
export const URGENT_MS = 60_000
// Turns that came late are made up for by so many at once, but never beyond the share of a second.
const LATE_MOST = 4
const SECOND_MS = 1_000
// From here on a message waits for its turn: prompts and digests. Whoever waits for an answer does not.
const PACED_FROM = 3

/** What the platform's client knows of the limit over all requests. */
type Budget = Pick<REST, 'globalRemaining' | 'globalReset'> & {
  readonly options: { readonly globalRequestsPerSecond: number }
}

/** The even pace of what can wait, one for each client of the platform. */
export interface Pace {
  /** Counts a request that goes at once. */
  count(isUrgent: boolean): void
  /** Counts a request, and resolves when it may go. */
  turn(): Promise<void>
}

const RATE_LIMITED = 429

const paces = new WeakMap<object, Pace>()

/**
 * What can wait is sent evenly and leaves room for what cannot: sent in bursts, it would use up a second's requests at
 * its beginning, and an urgent reply would wait for the next second.
 */
export function paceOf(budget: Budget): Pace {
  const pace = paces.get(budget) ?? createPace(budget)
  paces.set(budget, pace)
  return pace
}

function createPace(budget: Budget): Pace {
  const perSecond = budget.options.globalRequestsPerSecond
  const turns = createTurns(perSecond)
  let urgentUntil = 0
  const kept = (): number => (performance.now() < urgentUntil ? KEPT_FREE_URGENT : KEPT_FREE)
  const next = (): number => turns(performance.now(), perSecond * (1 - kept()))
  const left = (): number => leftFor(budget, Math.max(1, Math.round(perSecond * kept())))
  return {
    count(isUrgent) {
      if (isUrgent) urgentUntil = performance.now() + URGENT_MS
      next()
    },
    async turn() {
      const wait = next() - performance.now()
      if (wait > 0) await pause(wait)
      for (let ms = left(); ms > 0; ms = left()) await pause(ms)
    },
  }
}

/**
 * Turns of requests, in milliseconds of one clock: evenly over each second, those that came late made up for by the
 * next, but in no second more than its share.
 * @param most the largest share of a second, in requests
 */
export function createTurns(most: number): (now: number, share: number) => number {
  let next = Number.NEGATIVE_INFINITY
  // when the last requests went, the oldest first
  const gone: number[] = []
  return (now, share) => {
    const every = SECOND_MS / share
    // after a quiet second nothing is late
    next = now - next > SECOND_MS ? now : Math.max(next + every, now - LATE_MOST * every)
    const first = gone.at(-Math.floor(share))
    const turn = Math.max(next, first === undefined ? now : first + SECOND_MS)
    gone.push(Math.max(turn, now))
    if (gone.length > most) gone.shift()
    return turn
  }
}

/**
 * The same among several processes: turns come from one budget, and what one of them is refused holds all. While the
 * budget cannot be asked, each keeps its own pace.
 */
export function sharedPaceOf(rest: REST, shared: SharedBudget): Pace {
  const own = paceOf(rest)
  rest.on('response', (_, { status, headers }) => {
    if (status !== RATE_LIMITED || !headers.has('x-ratelimit-global')) return
    const seconds = Number(headers.get('retry-after'))
    shared.hold(1_000 * (seconds > 0 ? seconds : 1)).catch(() => undefined)
  })
  return {
    count(isUrgent) {
      own.count(isUrgent)
      shared.count().catch(() => undefined)
      if (isUrgent) shared.keepFree().catch(() => undefined)
    },
    async turn() {
      const wait = await shared.count().catch(() => null)
      if (wait === null) return own.turn()
      if (wait <= 0) return
      await pause(wait)
      // refused meanwhile, perhaps in another process: all who waited would go at once after it, so they queue anew
      if ((await shared.held().catch(() => 0)) > 0) await this.turn()
    },
  }
}

/** The same courier, which sends prompts and digests at that pace. */
export function paced(courier: Courier, pace: Pace): Courier {
  return {
    async deliver(row) {
      if (row.priority >= PACED_FROM) await pace.turn()
      else pace.count(isUrgent(row))
      return courier.deliver(row)
    },
  }
}

/** Milliseconds until there is more of the budget than what is kept free; 0 where there is. */
function leftFor({ globalRemaining, globalReset }: Budget, free: number): number {
  return globalRemaining > free ? 0 : Math.max(0, globalReset - Date.now())
}
