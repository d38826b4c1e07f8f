import { type Item, isBreak } from './items.ts'

const TURNS = new Set<Item['cue']>(['moved', 'change', 'better'])
const BETWEEN_ZONES = new Set<Item['cue']>([
  'article',
  'left',
  'right',
  'partOf',
  'inside',
  'to',
  'soft',
  'now',
])

/** "moved up from the calf to the thigh" tells a change, and its end is where it is. */
export function setMoved(items: readonly Item[]): void {
  for (let at = 0; at < items.length; at++) {
    if (items[at]!.cue === 'from') leaveBehind(items, at)
    const turns =
      items[at]!.cue === 'change' || (items[at]!.cue === 'from' && TURNS.has(items[at - 1]?.cue ?? 'mark'))
    if (!turns) continue
    const from = nextZone(items, at + 1)
    const to = from === null ? null : nextZone(items, from + 1)
    if (from !== null && to !== null && to > from + 1) items[from]!.unread = true
    // "gone from the foot, still in the calf"
    if (from !== null && to === null && items[at]!.cue === 'change' && goesOn(items, from))
      items[from]!.unread = true
  }
}

const goesOn = (items: readonly Item[], from: number): boolean =>
  items.some(({ cue, unread }, at) => at > from && cue === 'zone' && !unread)

/** "moved up to the knee from the foot": where it came from stands last. */
function leaveBehind(items: readonly Item[], at: number): void {
  const from = nextZone(items, at + 1)
  if (from === null || items[at - 1]?.cue !== 'zone') return
  let start = at
  while (start > 0 && !isBreak(items[start - 1])) start -= 1
  if (items.slice(start, at).some(({ cue }) => TURNS.has(cue))) items[from]!.unread = true
}

function nextZone(items: readonly Item[], from: number): number | null {
  let at = from
  while (BETWEEN_ZONES.has(items[at]?.cue ?? 'mark')) at += 1
  return items[at]?.cue === 'zone' ? at : null
}
