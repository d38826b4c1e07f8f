import type { Side } from '../checkin.ts'
import { type Reach, reachAt } from '../reach.ts'
import { type Item, isBreak, isMark } from './items.ts'
import type { Language } from './lexicon/compile.ts'

export interface ReachFound {
  readonly reach: Reach | null
  readonly unsure: boolean
  /** Zones that count, in order of the message. */
  readonly zones: readonly Item[]
}

const BUTTOCK = 2
const KNEE = 4
const FOOT = 6
const SMALL: readonly Item['cue'][] = ['article', 'inside', 'partOf', 'left', 'right']

/** The thing before, small words and sides left out. */
function before(items: readonly Item[], at: number): Item | undefined {
  let i = at - 1
  while (i >= 0 && SMALL.includes(items[i]!.cue)) i -= 1
  return items[i]
}

/** The zone meant by "just above the knee"; null where only a limb or a direction is named. */
function rankOf(items: readonly Item[], at: number): number | null {
  const zone = items[at]!
  const relation = before(items, at)?.cue
  if (relation === 'above') return Math.max(zone.value - 1, 1)
  if (relation === 'just') return Math.min(zone.value + 1, FOOT)
  if (relation === 'below') return zone.value === FOOT ? FOOT : null
  return relation === 'beyond' ? null : zone.value
}

const isRelated = (items: readonly Item[], at: number): boolean => {
  const cue = before(items, at)?.cue
  return cue === 'beyond' || cue === 'below'
}

/** What was named without a zone: a leg, "below the knee", "higher up". */
function hints(items: readonly Item[]): boolean {
  return items.some((item, at) => {
    if (item.unread) return false
    if (item.cue === 'zone') return isRelated(items, at) && rankOf(items, at) === null
    if (item.denied) return false
    if (item.cue === 'beyond') return items[at + 1]?.date != null
    if (item.cue === 'moved') return !items[at + 1] || items[at + 1]!.cue !== 'zone'
    if (item.cue === 'legs') return items[at - 1]?.cue !== 'both'
    return item.cue === 'leg'
  })
}

/** "doesn't go past the knee" with no other zone: the knee is the end of it. */
function boundOf(items: readonly Item[]): ReachFound | null {
  const bounds = items.filter(
    (item, at) => item.cue === 'zone' && item.denied && !item.unread && before(items, at)?.cue === 'beyond',
  )
  if (bounds.length === 0 || items.some(({ cue, denied, unread }) => cue === 'leg' && !denied && !unread))
    return null
  return { reach: reachAt(Math.min(...bounds.map(({ value }) => value))), unsure: false, zones: bounds }
}

/** The most distal zone that is neither denied nor of another time. */
export function findReach(items: readonly Item[]): ReachFound {
  const zones: Item[] = []
  const ranks: { rank: number; was: boolean }[] = []
  items.forEach((item, at) => {
    if (item.cue !== 'zone' || item.unread || item.denied) return
    if (items[at + 1]?.cue === 'exercise') {
      item.unread = true
      return
    }
    const rank = rankOf(items, at)
    if (rank === null) return
    zones.push(item)
    ranks.push({ rank, was: item.was })
  })
  if (ranks.length === 0) {
    const bound = boundOf(items)
    return bound ?? { reach: null, unsure: hints(items), zones }
  }
  const most = Math.max(...ranks.map((r) => r.rank))
  const now = ranks.filter((r) => !r.was)
  // "was the foot, now the calf": the foot may have been yesterday
  const unclear = now.length > 0 && Math.max(...now.map((r) => r.rank)) < most
  // "below the knee" beside a nearer zone leaves open how far it went; "past the buttock into the thigh" does not
  const limb = most <= BUTTOCK && items.some((item) => item.cue === 'leg' && !item.denied && !item.unread)
  const further =
    most <= KNEE &&
    items.some(
      (item, at) =>
        item.cue === 'zone' &&
        !item.denied &&
        !item.unread &&
        item.value >= most &&
        rankOf(items, at) === null,
    )
  return unclear || further || limb
    ? { reach: null, unsure: true, zones }
    : { reach: reachAt(most), unsure: false, zones }
}

const LIMBS: readonly Item['cue'][] = ['zone', 'leg', 'legs', 'sideNoun']

/** "pantorrilla de la izquierda": past the small words that join a side to its limb. */
function beforeSmall(items: readonly Item[], at: number): number {
  let last = at - 1
  while (items[last]?.cue === 'article') last -= 1
  return last
}

function sideAt(items: readonly Item[], at: number): boolean {
  let next = at + 1
  while (items[next]?.cue === 'article' || items[next]?.cue === 'partOf' || items[next]?.cue === 'moved')
    next += 1
  if (items[next]?.cue === 'arm' || items[next]?.unread) return false
  if (LIMBS.includes(items[next]?.cue ?? 'mark')) return true
  const last = items[beforeSmall(items, at)]
  const named = isMark(last, ',(') ? items[at - 2] : last
  if (named && LIMBS.includes(named.cue) && named.value !== 1 && !named.unread) return endsHere(items, at + 1)
  if (last?.cue === 'inside' && endsHere(items, at + 1)) return true
  // "left and right leg", "left/right calf"
  const joined = items[at + 1]
  const pairs = joined?.cue === 'and' || joined?.cue === 'or' || isMark(joined, '/&+')
  return pairs && (items[at + 2]?.cue === 'left' || items[at + 2]?.cue === 'right') && sideAt(items, at + 2)
}

const endsHere = (items: readonly Item[], at: number): boolean =>
  isBreak(items[at]) || items[at]!.cue !== 'word'

/** The leg named: left, right, both; null where none is. */
export function findSide(items: readonly Item[], language: Language): Side | null {
  let left = false
  let right = false
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!
    if (item.unread || item.denied) continue
    if (item.cue === 'both' && isBothSides(items, at, language) && !isDenied(items, at)) return 'both'
    if (item.cue !== 'left' && item.cue !== 'right') continue
    if (!sideAt(items, at)) continue
    if (item.cue === 'left') left = true
    else right = true
  }
  if (left && right) return 'both'
  return left ? 'left' : right ? 'right' : null
}

/** "both legs fine" */
function isDenied(items: readonly Item[], both: number): boolean {
  let next = both + 1
  while (items[next]?.cue === 'article' || items[next]?.cue === 'partOf') next += 1
  return items[next]?.denied ?? false
}

/** "both calves" names two sides; "both, calf" two sessions. */
export function isBothSides(items: readonly Item[], at: number, language: Language): boolean {
  let next = at + 1
  while (items[next]?.cue === 'article' || items[next]?.cue === 'partOf') next += 1
  const item = items[next]
  // "did both 👍 toes"
  if (item?.apart && (items[at - 1]?.cue === 'did' || items[at]!.text.includes(' '))) return false
  if (item?.cue === 'legs' || item?.cue === 'arm' || item?.cue === 'sideNoun') return true
  if (item?.cue === 'left' || item?.cue === 'right') return true
  return item?.cue === 'zone' && language.pairs.has(item.text.split(' ').at(-1) ?? '')
}

/** "foot 0, calf 3": felt in the calf alone. */
export function isZeroOfZone(items: readonly Item[], at: number): boolean {
  const [zone, zero] = [items[at - 1], items[at]!]
  if (zero.value !== 0 || zero.slot !== null || !(zone?.cue === 'zone' || zone?.cue === 'leg')) return false
  return items.some(
    (item, i) =>
      item.cue === 'zone' && !item.denied && items[i + 1]?.cue === 'num' && items[i + 1]!.value > 0,
  )
}
