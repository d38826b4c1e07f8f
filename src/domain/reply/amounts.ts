import { type Item, isBreak, isMark } from './items.ts'
import type { Language } from './lexicon/compile.ts'
import { toldByHour, toldOneByOne } from './one-by-one.ts'
import { isBothSides } from './zones.ts'

/** A value, or the word that there is one that must be asked back; null where nothing was said. */
export type Amount =
  | { readonly value: number; readonly from: Item }
  | { readonly value: null; readonly from: Item }
  | null

const asked = (from: Item): Amount => ({ value: null, from })
const EVERYDAY: readonly Item['cue'][] = [
  'did',
  'vagueCount',
  'done',
  'session',
  'zone',
  'num',
  'only',
  'article',
  'painFree',
  'pain',
  'soft',
  'day',
  'dayPart',
]

const isOpen = (item: Item | undefined): boolean =>
  isBreak(item) || isMark(item, '/-') || EVERYDAY.includes(item!.cue)

/** A small word counts as sessions only where it stands by itself or beside a word for doing. */
function stands(items: readonly Item[], at: number): boolean {
  const before = items[at - 1]
  const after = items[at + 1]
  // "do exercise one time"
  if (before?.cue === 'exercise' && items[at - 2]?.cue !== 'zone') return isOpen(after)
  return isOpen(before) && isOpen(after)
}

/** What "all" cannot be followed by where it means sessions ("all my legs", "everything hurts"). */
const NOT_AFTER_ALL: readonly Item['cue'][] = [
  'article',
  'inside',
  'leg',
  'legs',
  'word',
  'pain',
  'painVague',
  'be',
  'clear',
  'arm',
  'partOf',
]

function allAt(items: readonly Item[], at: number, planned: number): Amount {
  const item = items[at]!
  const bare = !item.text.includes(' ')
  if (bare && NOT_AFTER_ALL.includes(items[at + 1]?.cue ?? 'mark')) return null
  return planned > 0 ? { value: planned, from: item } : asked(item)
}

function bothAt(items: readonly Item[], at: number, language: Language): Amount {
  const item = items[at]!
  if (isBothSides(items, at, language)) return null
  const next = items[at + 1]?.cue
  if (item.text.includes(' ')) return { value: 2, from: item }
  return next === 'pain' || next === 'be' || next === 'painVague' ? null : { value: 2, from: item }
}

/** "missed one" of what was planned; "skipped" alone tells no number. */
function missedAt(items: readonly Item[], at: number, planned: number): Amount {
  let next = at + 1
  while (['article', 'inside', 'only'].includes(items[next]?.cue ?? 'mark')) next += 1
  const n = items[next]
  if (n?.cue === 'both' || n?.cue === 'all') {
    n.unread = true
    return { value: 0, from: items[at]! }
  }
  if (n?.cue === 'num' && n.slot !== 'pain' && n.value <= planned) {
    n.slot = 'sessions'
    n.unread = true
    return { value: planned - n.value, from: items[at]! }
  }
  return n?.cue === 'session' ||
    n?.cue === 'vagueCount' ||
    isBreak(n) ||
    n?.cue === 'word' ||
    n?.cue === 'dayPart'
    ? asked(items[at]!)
    : null
}

const BESIDE_HALF: readonly Item['cue'][] = ['article', 'inside', 'left', 'right', 'partOf', 'all']

/** Half of what was planned, "half of my four sessions"; half a zone is none. */
function halfAt(items: readonly Item[], at: number, planned: number): Amount {
  let next = at + 1
  while (BESIDE_HALF.includes(items[next]?.cue ?? 'mark')) next += 1
  const item = items[next]
  const ofOne = next > at + 1 || items[at]!.text.includes(' ')
  if (ofOne && (item?.cue === 'zone' || item?.cue === 'leg' || item?.cue === 'legs')) return null
  const counts = item?.cue === 'num' && items[next + 1]?.cue === 'session'
  if (counts) item.unread = true
  const whole = counts ? item.value : planned
  return Number.isInteger(whole / 2) && whole > 0 ? { value: whole / 2, from: items[at]! } : asked(items[at]!)
}

function amountAt(items: readonly Item[], at: number, planned: number, language: Language): Amount {
  const item = items[at]!
  switch (item.cue) {
    case 'all':
      return allAt(items, at, planned)
    case 'both':
      return bothAt(items, at, language)
    case 'half':
      return halfAt(items, at, planned)
    case 'noSession':
    case 'dayOff':
      return { value: 0, from: item }
    case 'missed':
      return missedAt(items, at, planned)
    case 'count':
      return stands(items, at) ? { value: item.value, from: item } : null
    case 'vagueCount':
      if ((items[at + 1]?.cue === 'zone' && NEARLY.test(item.text)) || leadsToZone(items, at)) return null
      return item.text.includes(' ') || stands(items, at) ? asked(item) : null
    case 'notYet':
      return item.text.includes(' ') || stands(items, at) ? asked(item) : null
    default:
      return null
  }
}

/** Doing said of what was named before; the words are those of the plain spelling. */
const POINTS_BACK = /^(?:did|done) (?:them|em|it)$/

/** "nearly all thigh" tells where. */
const NEARLY = /^(?:nearly|almost|casi) /

/** "half way down the thigh" */
function leadsToZone(items: readonly Item[], at: number): boolean {
  let next = at + 1
  if (items[next]?.cue !== 'inside') return false
  while (BESIDE_HALF.includes(items[next]?.cue ?? 'mark')) next += 1
  return items[next]?.cue === 'zone' || items[next]?.cue === 'leg'
}

/** Sessions told in words: "both", "all", "half", "none done", "missed one", "twice". */
export function sessionsInWords(items: readonly Item[], planned: number, language: Language): Amount {
  let found: Amount = null
  const byPlace = toldOneByOne(items, planned, language)
  const sumsUp =
    items.some((item) => item.cue === 'both' && !item.unread && !item.denied) &&
    !items.some(({ cue }) => cue === 'aSession')
  if (byPlace !== undefined && !sumsUp) {
    const from = items.find((item) => item.cue === 'oneSession' || item.cue === 'aSession')!
    return byPlace === null ? asked(from) : { value: byPlace, from }
  }
  const byHour = toldByHour(items)
  if (byHour) return byHour
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!
    if (item.unread || item.denied) continue
    const amount = amountAt(items, at, planned, language)
    if (amount === null) continue
    if (found === null || found.from.cue === 'dayOff') found = amount
    else if (item.cue === 'dayOff') continue
    // "both, mostly thigh, calf once": how often it reached there
    else if (item.cue === 'count' && items[at - 1]?.cue === 'zone') continue
    // two different counts: neither is taken on trust
    else if (item.cue === 'count') found = amount
    // "both done, calmer before I did them": "them" points back at what was told
    else if (found.value !== null && POINTS_BACK.test(item.text)) continue
    // "did my exercises both times"
    else if (items[at - 1] === found.from && found.value === null) found = amount
    else if (found.value !== amount.value) found = asked(amount.from)
  }
  return found
}

/** "free of pain", or pain told in words without a number. */
export function painInWords(items: readonly Item[]): Amount {
  let free: Item | null = null
  let vague: Item | null = null
  let changed: Item | null = null
  for (const item of items) {
    if (item.unread || item.denied) continue
    if (item.cue === 'painFree' || item.cue === 'noSymptoms') free ??= item
    if (item.cue === 'painVague') vague ??= item
    if (item.cue === 'better' || item.cue === 'limit') changed ??= item
  }
  if (free) return vague ? asked(vague) : { value: 0, from: free }
  return vague || changed ? asked((vague ?? changed)!) : null
}
