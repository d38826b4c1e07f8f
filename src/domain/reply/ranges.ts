import { type Item, isMark } from './items.ts'
import { isNum, type Join, merged, skipped } from './rewrite.ts'

const joiner = (item: Item | undefined): boolean =>
  item?.cue === 'to' || item?.cue === 'or' || item?.cue === 'maybe' || isMark(item, '-~')

/** "pain 4 - 2 done", "1 - a 3 out of 10": a dash between two answers. */
function isParting(items: readonly Item[], a: number, dash: number): boolean {
  if (!isMark(items[dash], '-') || items[dash]!.tight) return false
  if (items[dash + 1]?.cue === 'article') return true
  const ofPain =
    items[a]!.slot === 'pain' || ['pain', 'painLetter', 'times'].includes(items[a - 1]?.cue ?? '')
  const [b, name] = [items[dash + 1], items[dash + 2]]
  return ofPain && (b?.slot === 'sessions' || ['session', 'done', 'clock'].includes(name?.cue ?? ''))
}

/** "4-5", "4 or 5", "between 4 and 5", "4, maybe 5": the worse end, known to be a range. */
export const range: Join = (items, at) => {
  const opened = items[at]?.cue === 'between' || items[at]?.cue === 'from' ? 1 : 0
  const a = items[at + opened]
  if (!isNum(a) || a.slot === 'sessions') return null
  let next = at + opened + 1
  if (isMark(items[next], ',') && items[next + 1]?.cue === 'maybe') next += 1
  const joins = joiner(items[next]) || (opened === 1 && items[next]?.cue === 'and')
  if (!joins) return null
  const descends = items[next]!.cue === 'to' && opened === 1
  if (isParting(items, at + opened, next)) return null
  next += 1
  while (items[next]?.cue === 'article') next += 1
  const b = items[next]
  if (!isNum(b)) return null
  const slot = b.slot ?? a.slot
  const falls = descends && b.value < a.value
  return [
    next - at + 1,
    [merged(items[at]!, b, Math.max(a.value, b.value), { slot, range: true, unsure: falls })],
  ]
}

/** "down from 6 to 4", "6 -> 4": a change, and its end is the value. */
export const change: Join = (items, at) => {
  const first = items[at]
  if (first?.cue === 'change' && isNum(items[at + 1])) {
    const a = items[at + 1]!
    const b = items[at + 3]
    if (items[at + 2]?.cue === 'to' && isNum(b))
      return [
        4,
        [
          merged(first, b, b.value, {
            slot: b.slot ?? a.slot ?? (items[at + 4]?.cue === 'session' ? null : 'pain'),
          }),
        ],
      ]
    return [2, [skipped(items, at, at + 1)]]
  }
  if (!isNum(first)) return null
  const arrow = isMark(items[at + 1], '→')
    ? 1
    : isMark(items[at + 1], '-') && isMark(items[at + 2], '>')
      ? 2
      : 0
  const b = items[at + 1 + arrow]
  return arrow > 0 && isNum(b) ? [2 + arrow, [merged(first, b, b.value, { slot: b.slot ?? 'pain' })]] : null
}

/** "down to 4 from 6" */
export const changeBack: Join = (items, at) => {
  const to = items[at]
  const b = items[at + 1]
  const from = items[at + 2]
  const a = items[at + 3]
  if (to?.cue !== 'to' || !isNum(b) || from?.cue !== 'from' || !isNum(a)) return null
  return [4, [merged(to, a, b.value, { slot: b.slot })]]
}

/** "no more than 4" is 4; "less than 4" and "over 4" are asked back. */
export const bound: Join = (items, at) => {
  const a = items[at]!
  const next = items[at + 1]?.cue === 'article' ? at + 2 : at + 1
  const b = items[next]
  if (!isNum(b)) return null
  const taken = next - at + 1
  if (a.cue === 'atMost') return [taken, [merged(a, b, b.value, { slot: b.slot ?? 'pain', range: b.range })]]
  const open = a.cue === 'limit' || a.cue === 'below' || a.cue === 'above'
  if (open || (a.cue === 'outOf' && !isNum(items[at - 1])))
    return [taken, [merged(a, b, b.value, { slot: b.slot, unsure: true })]]
  return null
}
