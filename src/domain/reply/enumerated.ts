import { type Item, isMark, makeItem } from './items.ts'

/** Fewer than this many numbered answers are no list. */
const LEAST_ENTRIES = 3

/** "1) two 2) calf 3) five": the numbers of the list go, and each answer is a clause of its own. */
export function withoutListNumbers(items: readonly Item[]): readonly Item[] {
  const [first, mark] = items
  if (first?.cue !== 'num' || first.text !== '1' || !mark?.tight || !isMark(mark, ').:')) return items
  const places: number[] = []
  items.forEach((item, at) => {
    const named = item.cue === 'num' && item.text === String(places.length + 1)
    if (named && isMark(items[at + 1], mark.text) && items[at + 1]!.tight) places.push(at)
  })
  if (places.length < LEAST_ENTRIES) return items
  return items.flatMap((item, at) => {
    if (places.includes(at - 1)) return []
    return places.includes(at) ? [makeItem('mark', 0, '\n', item.start, item.end, false)] : [item]
  })
}
