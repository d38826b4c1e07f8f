import { type Item, isBreak, isMark, makeItem } from './items.ts'
import { isNum, type Join } from './rewrite.ts'

const HUNDRED = 100
const TOP_OF_PAIN = 10

/** Where a share of the sessions can stand: alone in its clause, or beside a word for doing. */
function tellsDoing(items: readonly Item[], before: number, after: number): boolean {
  const [b, a] = [items[before], items[after]]
  const does = (item: Item | undefined): boolean => item?.cue === 'did' || item?.cue === 'done'
  if (does(b)) return isBreak(a) || a!.cue === 'session' || a!.cue === 'outOf' || a!.cue === 'dayPart'
  return isBreak(b) && (isBreak(a) || does(a))
}

/** "50%, calf", "100 % done": a share of what was planned. */
export const percentDone: Join = (items, at, planned) => {
  const [n, percent] = [items[at], items[at + 1]]
  if (!isNum(n) || !(percent?.cue === 'percent' || isMark(percent, '%'))) return null
  if (!tellsDoing(items, at - 1, at + 2)) return null
  const alone = isBreak(items[at - 1]) && isBreak(items[at + 2])
  if (alone && n.value !== HUNDRED && n.value !== HUNDRED / 2) return null
  const value = (planned * n.value) / HUNDRED
  const unsure = !Number.isInteger(value) || planned === 0
  const share = makeItem('num', value, n.text, n.start, percent!.end, n.tight)
  return [2, [Object.assign(share, { slot: 'sessions' as const, unsure })]]
}

/** "one missed": read as "missed one". */
export const missedAfter: Join = (items, at) => {
  const [n, missed, next] = [items[at], items[at + 1], items[at + 2]]
  if (!isNum(n) || missed?.cue !== 'missed' || !(isBreak(next) || next!.cue === 'and')) return null
  return [2, [missed, n]]
}

/** "on a scale of 0 to 10", "pain (0-10): 4": the scale itself, where the number stands elsewhere beside it. */
export const scaleItself: Join = (items, at) => {
  const opened =
    items[at]?.cue === 'from' || items[at]?.cue === 'between' || items[at]?.cue === 'outOf' ? 1 : 0
  const [a, to, b] = [items[at + opened], items[at + opened + 1], items[at + opened + 2]]
  const joins = to?.cue === 'to' || to?.cue === 'and' || isMark(to, '-')
  if (!isNum(a) || a.value > 1 || !joins || !isNum(b) || b.value !== TOP_OF_PAIN) return null
  const end = at + opened + 2
  const near = [...items.slice(Math.max(at - 4, 0), at), ...items.slice(end + 1, end + 5)]
  const scale = makeItem('soft', 0, '', items[at]!.start, items[end]!.end, items[at]!.tight)
  return near.some(isNum) ? [end - at + 1, [scale]] : null
}
