import { AWAY_MS, tellAway } from './engine/coach/away.ts'
import type { Store } from './engine/ports.ts'
import type { SettingStore } from './store/settings.ts'
import { textsFor } from './text/index.ts'

/** Under which the instant of the latest beat is kept. */
export const HEARTBEAT = 'heartbeat'
/** A beat a minute is enough to know when the bot was away, and costs one write. */
const BEAT_MS = 60_000
/** Without a beat for so long the bot does not work: two were missed. */
export const STILL_MS = 3 * BEAT_MS

export interface Heart {
  /** Called once before the first beat: tells every practice where the bot was away for long. */
  awake(): Promise<void>
  /** Called after every tick that went through; writes at most once a minute. */
  beat(): Promise<void>
  /** Whether the latest beat is no longer ago than it may be. */
  isWell(): boolean
  latest(): Date | null
}

export function createHeart(parts: { store: Store; settings: SettingStore; now: () => Date }): Heart {
  const { store, settings, now } = parts
  let last: Date | null = null
  return {
    async awake() {
      const before = beatIn(await settings.get(HEARTBEAT))
      if (!before || now().getTime() - before.getTime() < AWAY_MS) return
      await store.transaction(async (tx) => {
        for (const practice of await tx.practices())
          await tellAway(tx, practice, textsFor(practice.language), before, now())
      })
    },
    async beat() {
      const at = now()
      if (last && Math.abs(at.getTime() - last.getTime()) < BEAT_MS) return
      await settings.set(HEARTBEAT, at.toISOString())
      last = at
    },
    isWell: () => last !== null && now().getTime() - last.getTime() < STILL_MS,
    latest: () => last,
  }
}

/** Reads what was kept; null where there is none. */
export function beatIn(kept: string | null): Date | null {
  const at = new Date(kept ?? '')
  return Number.isNaN(at.getTime()) ? null : at
}
