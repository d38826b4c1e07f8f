import { type Item, isBreak, isMark, makeItem } from './items.ts'

/** Fewer than this many numbered answers are no list. */
const LEAST_ENTRIES = 3

/** "1) two 2) calf 3) five": the numbers of the list go, and each answer is a clause of its own. */
export function withoutListNumbers(items: readonly Item[]): readonly Item[] {
  const first = items.findIndex((item, at) => item.cue === 'num' && item.text === '1' && opensList(items, at))
  if (first < 0) return items
  const mark = items[first + 1]!.text
  const places: number[] = []
  items.forEach((item, at) => {
    const named = at >= first && item.cue === 'num' && item.text === String(places.length + 1)
    if (named && isMark(items[at + 1], mark) && items[at + 1]!.tight) places.push(at)
  })
  if (places.length < LEAST_ENTRIES) return items
  return items.flatMap((item, at) => {
    if (places.includes(at - 1)) return []
    return places.includes(at) ? [makeItem('mark', 0, '\n', item.start, item.end, false)] : [item]
  })
}

function opensList(items: readonly Item[], at: number): boolean {
  const opens = isBreak(items[at - 1]) || isMark(items[at - 1], ':')
  return opens && isMark(items[at + 1], ').:') && items[at + 1]!.tight
}
