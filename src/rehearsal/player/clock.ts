/** A clock that stands still until it is set; the host's may be ahead of the world's or behind it. */
export interface VirtualClock {
  /** Time in the world: on the platform, and for people. */
  world(): Date
  /** Time as the bot's host has it. */
  host(): Date
  /** Moves on to an instant of the world; never back. */
  set(at: Date): void
  /** The host's clock jumps against the world's. */
  jump(ms: number): void
  /** An instant of the host's clock in the world's time. */
  inWorld(host: Date): Date
}

export function createClock(start: Date): VirtualClock {
  let now = start.getTime()
  let ahead = 0
  return {
    world: () => new Date(now),
    host: () => new Date(now + ahead),
    set(at) {
      now = Math.max(now, at.getTime())
    },
    jump(ms) {
      ahead += ms
    },
    inWorld: (host) => new Date(host.getTime() - ahead),
  }
}
