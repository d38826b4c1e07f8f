import type { Token } from './tokens.ts'

/** Signs for a session done and one left out. */
const DONE = new Set([...'✅✔✓☑'])
const MISSED = new Set([...'❌✖✗✘'])

/** A row of ticks that opens a message. */
export interface Ticks {
  readonly done: number
  /** How many tokens the row covers, from the first. */
  readonly taken: number
}

/** "✅✅ calf 4", "✅❌ calf 4": one tick a session; null where no row of two or more opens the message. */
export function ticksOf(tokens: readonly Token[]): Ticks | null {
  let done = 0
  let all = 0
  let taken = 0
  for (const { kind, text, start, end } of tokens) {
    const isDone = DONE.has(text)
    if (kind !== 'mark' || !(isDone || MISSED.has(text))) break
    const count = (end - start) / text.length
    if (isDone) done += count
    all += count
    taken += 1
  }
  return all < 2 ? null : { done, taken }
}
