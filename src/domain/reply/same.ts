import { type Item, isBreak } from './items.ts'
import type { Ask, Slot } from './reading.ts'
import type { SlotsFound } from './taken.ts'

/** "as yesterday", and nothing else in the clause. */
const isWholeComparison = (items: readonly Item[], at: number): boolean =>
  items[at]!.cue === 'compare' &&
  isBreak(items[at - 1]) &&
  items[at + 1]?.date != null &&
  isBreak(items[at + 2])

/** Same as before: what was not told otherwise is asked back, with the values of that day at hand. */
export function takeSame(items: readonly Item[], found: SlotsFound, asked: Ask | null): void {
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!
    if (item.unread || item.denied || !(item.cue === 'same' || isWholeComparison(items, at))) continue
    const next = items[at + 1]?.cue
    if (next === 'leg' || next === 'legs' || next === 'sideNoun') {
      found.unsure.delete('reach')
      continue
    }
    if (next === 'zone') continue
    // "the usual two" as the answer to how many
    if (next === 'num' && asked !== null) continue
    const slots: Slot[] =
      next === 'pain'
        ? ['pain']
        : next === 'place'
          ? ['reach']
          : next === 'session'
            ? ['sessions']
            : ['sessions', 'reach', 'pain']
    for (const slot of slots) {
      if (found[slot] !== null) continue
      found.unsure.add(slot)
      if (!found.same.includes(slot)) found.same.push(slot)
    }
  }
}
