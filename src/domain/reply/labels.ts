import { type Item, isMark, isStrong } from './items.ts'

/** A name ("pain", "sessions", "did") and the number that goes with it. */
export interface Labelled {
  readonly label: Item
  readonly number: Item
}

/** Weight of a pair that stands side by side; each thing in between takes some off, and nothing is left at 0. */
const BESIDE = 20
const LEAST = 8
const BLOCKED = 99

const LABELS = new Set<Item['cue']>([
  'session',
  'did',
  'done',
  'pain',
  'times',
  'sessionLetter',
  'painLetter',
])
const GLUED = 5
const ofSessions = (label: Item): boolean =>
  label.cue === 'session' || label.cue === 'did' || label.cue === 'done' || label.cue === 'sessionLetter'
const isLetter = (label: Item): boolean => label.cue === 'sessionLetter' || label.cue === 'painLetter'

/** What a thing between a name and its number costs; people write "pain in the calf is about a 4". */
function costOf(item: Item, label: Item, forward: boolean): number {
  const forPain = !ofSessions(label)
  switch (item.cue) {
    case 'article':
    case 'be':
    case 'soft':
    case 'was':
      return 0.5
    case 'maybe':
    case 'correction':
    case 'only':
    case 'session':
    case 'day':
    case 'now':
    case 'to':
      return 1
    case 'partOf':
    case 'inside':
    case 'left':
    case 'right':
    case 'sideNoun':
    case 'dayPart':
    case 'painVague':
    case 'better':
    case 'pain':
    case 'times':
      return forPain ? 1 : BLOCKED
    case 'zone':
    case 'leg':
      return forPain && forward ? 1.5 : BLOCKED
    case 'word':
      return forPain && forward ? 2 : BLOCKED
    case 'and':
      return 5
    case 'mark':
      return markCost(item, label, forward)
    default:
      return BLOCKED
  }
}

function markCost(item: Item, label: Item, forward: boolean): number {
  if (isMark(item, ':=-~>()/')) return 0.5
  if (!forward) return BLOCKED
  if (isMark(item, ',')) return label.cue === 'pain' ? 4 : BLOCKED
  return label.cue === 'pain' && isStrong(item) ? 9 : BLOCKED
}

/** Names of sessions mostly follow their number, names of pain mostly come before it. */
function habit(label: Item, forward: boolean): number {
  if (label.cue === 'pain') return forward ? 2 : 0
  if (label.cue === 'did') return forward ? 2 : BLOCKED * -1
  if (label.cue === 'times') return forward ? 0 : 3
  return forward ? 0 : 3
}

function weigh(items: readonly Item[], a: number, b: number): number {
  const forward = items[a]!.cue !== 'num'
  const label = forward ? items[a]! : items[b]!
  const number = forward ? items[b]! : items[a]!
  if (number.slot !== null && (number.slot === 'sessions') !== ofSessions(label)) return 0
  if (isLetter(label)) return letterWeight(items, a, b)
  // "knee: 5 sessions: 2": each name before its number
  const names = isMark(items[a - 1], ':=') && isMark(items[b + 1], ':=') && items[b + 2]?.cue === 'num'
  if (!forward && names) return 0
  // "calf4 sessions2": what is written together belongs together
  const glued = b === a + 1 && items[b]!.tight ? GLUED : 0
  let weight = BESIDE + habit(label, forward) + glued
  for (let at = a + 1; at < b && weight > LEAST; at++) weight -= costOf(items[at]!, label, forward)
  return weight > LEAST ? weight : 0
}

function letterWeight(items: readonly Item[], a: number, b: number): number {
  const beside = b === a + 1 && items[b]!.tight
  const named = b === a + 2 && isMark(items[a + 1], ':=')
  return beside || named ? BESIDE + GLUED : 0
}

const counts = (item: Item): boolean => !item.unread && !item.denied

/**
 * Pairs each name with the number before or after it so that the pairs together weigh most: a matching on a path,
 * found in one pass. So "pain 4 sessions 2" and "4 pain 2 sessions" both come out right.
 */
export function pairLabels(items: readonly Item[]): Labelled[] {
  const places: number[] = []
  items.forEach((item, at) => {
    if (counts(item) && (item.cue === 'num' || LABELS.has(item.cue))) places.push(at)
  })
  const best = [0, 0]
  for (let n = 1; n < places.length; n++) {
    const [a, b] = [places[n - 1]!, places[n]!]
    const mixed = (items[a]!.cue === 'num') !== (items[b]!.cue === 'num')
    const paired = mixed ? weigh(items, a, b) : 0
    best.push(paired > 0 ? Math.max(best[n]!, best[n - 1]! + paired) : best[n]!)
  }
  const pairs: Labelled[] = []
  for (let n = places.length; n > 1; ) {
    if (best[n] === best[n - 1]) {
      n -= 1
      continue
    }
    const [a, b] = [items[places[n - 2]!]!, items[places[n - 1]!]!]
    pairs.push(a.cue === 'num' ? { label: b, number: a } : { label: a, number: b })
    n -= 2
  }
  return pairs.reverse()
}

export const namesSessions = (pair: Labelled): boolean => ofSessions(pair.label)
