/** The platform's ids count from the first instant of 2015 (Discord, API reference: Snowflakes). */
const EPOCH_MS = 1_420_070_400_000n
const TIME_SHIFT = 22n

/**
 * Makes ids that carry the time of `now` and always increase, also where the clock stands still or goes back.
 * The same calls at the same times give the same ids.
 * @param now milliseconds since 1970
 */
export function createSnowflakes(now: () => number): () => string {
  let last = 0n
  return () => {
    const stamped = (BigInt(Math.floor(now())) - EPOCH_MS) << TIME_SHIFT
    last = stamped > last ? stamped : last + 1n
    return last.toString()
  }
}

/** The time that an id carries, in milliseconds since 1970. */
export function snowflakeTime(id: string): number {
  return Number((BigInt(id) >> TIME_SHIFT) + EPOCH_MS)
}

/** Orders two ids, oldest first. */
export function compareSnowflakes(a: string, b: string): number {
  return a.length - b.length || (a < b ? -1 : a > b ? 1 : 0)
}
