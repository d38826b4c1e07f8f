import { endOfChunk, endOfSentence, startOfChunk } from './clauses.ts'
import { type Item, isBreak, isMark, isStrong } from './items.ts'
import type { Cue, Language } from './lexicon/compile.ts'
import { setMoved } from './moved.ts'
import { setThings } from './of-things.ts'
import { hasValue, setAside } from './set-aside.ts'
import { isZeroOfZone } from './zones.ts'

/** Furthest that a denial carries; further on people have changed the subject. */
const DENIAL_REACH = 9

const DENIABLE = new Set<Item['cue']>(['zone', 'leg', 'legs', 'left', 'right', 'arm', 'sideNoun'])
const CARRIES = new Set<Item['cue']>([
  ...([
    'article',
    'be',
    'soft',
    'inside',
    'partOf',
    'above',
    'below',
    'just',
    'beyond',
    'pain',
    'painVague',
    'moved',
    'better',
  ] as const),
  ...([
    'or',
    'and',
    'word',
    'left',
    'right',
    'sideNoun',
    'zone',
    'leg',
    'legs',
    'arm',
    'times',
    'to',
    'did',
    'both',
    'place',
    'atMost',
  ] as const),
])
const LISTS = new Set<Item['cue']>(['or', 'and', 'article', 'inside', 'partOf', 'left', 'right'])

/** "was in the foot, now the calf": the first may lie before today; an hour of the day named settles it. */
function setBefore(items: readonly Item[]): void {
  for (let at = 0; at < items.length; at++) {
    if (items[at]!.cue !== 'was') continue
    let end = at + 1
    while (!isStrong(items[end]) && items[end]!.cue !== 'now' && items[end]!.date === null) end += 1
    const turns = items[end]?.cue === 'now' || (items[end]?.date !== null && items[end] !== undefined)
    const between = items.slice(startOfChunk(items, at), end)
    const after = items.slice(end, endOfSentence(items, end))
    if (!turns || items[end]!.cue !== 'now' || between.some((i) => i.cue === 'dayPart')) continue
    if (hasValue(between) && hasValue(after)) for (const item of between) item.was = true
  }
}

/** Whether a list of denied zones goes on over this comma: "not in the foot, calf or thigh". */
function listGoesOn(items: readonly Item[], comma: number): boolean {
  let at = comma + 1
  let zones = 0
  while (!isStrong(items[at])) {
    const { cue } = items[at]!
    if (cue === 'zone') zones += 1
    else if (cue === 'or') return zones > 0
    else if (!LISTS.has(cue) && !isMark(items[at], ',')) return false
    at += 1
  }
  return false
}

/** Marks what a denial at `from` covers; answers whether anything was. */
function denyForward(items: readonly Item[], from: number): boolean {
  let hit = false
  for (let at = from + 1; at < items.length && at <= from + DENIAL_REACH; at++) {
    const item = items[at]!
    if (isMark(item, ',') && hit && listGoesOn(items, at)) continue
    if (isMark(item, '/') && hit) continue
    if (item.cue === 'num' && !hit && at === from + 1 + Number(items[from + 1]?.cue === 'article'))
      item.denied = true
    if (!CARRIES.has(item.cue)) return hit
    // after the denied zone only more of a list is denied
    if (hit && !DENIABLE.has(item.cue) && !LISTS.has(item.cue) && item.cue !== 'pain') return hit
    if (DENIABLE.has(item.cue) || item.cue === 'beyond' || (item.cue === 'pain' && hit)) item.denied = true
    if (item.cue === 'zone' || item.cue === 'leg' || item.cue === 'legs') hit = true
  }
  return hit
}

/** "no sessions", "no ... pain" without a zone: the denial itself is the value. */
function denyNoun(items: readonly Item[], from: number): void {
  for (let at = from + 1; at <= from + 3 && !isBreak(items[at]); at++) {
    const item = items[at]!
    if (item.cue === 'session') item.cue = 'noSession'
    if (item.cue === 'all' || item.cue === 'both' || item.cue === 'done') item.cue = 'vagueCount'
    if (item.cue === 'pain' && !item.denied) item.cue = 'painFree'
    const passes: readonly Item['cue'][] = ['article', 'be', 'did', 'soft', 'or', 'word', 'painVague']
    if (!passes.includes(item.cue)) return
  }
}

/** "calf is fine", "foot: no": denies the zone it is said of. */
function denyBackward(items: readonly Item[], from: number): void {
  if (items[from + 1]?.cue === 'num') return
  for (let at = from - 1; at >= 0 && !isBreak(items[at]); at--) {
    const { cue } = items[at]!
    if (DENIABLE.has(cue)) items[at]!.denied = true
    const passes: readonly Item['cue'][] = [
      'pain',
      'be',
      'was',
      'soft',
      'now',
      'and',
      'or',
      'article',
      'inside',
      'partOf',
      'day',
      'all',
      'both',
      'dayPart',
      'clear',
    ]
    if (!DENIABLE.has(cue) && !passes.includes(cue) && !isMark(items[at], ':=-')) return
  }
}

const OF_BODY = new Set<Item['cue']>(['zone', 'left', 'right', 'arm', 'leg', 'legs'])
const BEFORE_NOTHING = new Set<Item['cue']>(['now', 'soft', 'be', 'was'])

/** "foot nothing, calf 4", "en el pie ya nada, muslo 3": said of the zone before it, where another clause names one too. */
function deniesItsZone(items: readonly Item[], at: number): boolean {
  let last = at - 1
  while (BEFORE_NOTHING.has(items[last]?.cue ?? 'mark')) last -= 1
  const follows = OF_BODY.has(items[last]?.cue ?? 'mark')
  if (!follows || !isBreak(items[at + 1])) return false
  const [start, end] = [startOfChunk(items, at), endOfChunk(items, at)]
  return items.some(
    (item, i) => item.cue === 'zone' && !item.unread && !item.denied && (i < start || i > end),
  )
}

function deny(items: readonly Item[]): void {
  for (let at = 0; at < items.length; at++) {
    const { cue, unread } = items[at]!
    if (unread) continue
    const before = items[at - 1]?.cue
    if (cue === 'no') {
      if (!denyForward(items, at)) denyNoun(items, at)
      if (
        isBreak(items[at + 1]) &&
        (OF_BODY.has(before ?? 'mark') || before === 'be' || isMark(items[at - 1], ':'))
      )
        denyBackward(items, at)
    }
    if (cue === 'num' && isZeroOfZone(items, at)) {
      denyBackward(items, at)
      items[at]!.unread = true
    }
    if (cue === 'nothing' && deniesItsZone(items, at)) {
      denyBackward(items, at)
      items[at]!.unread = true
    }
    if (cue === 'clear') {
      denyBackward(items, at)
      if (items[at + 1]?.cue === 'inside' || items[at + 1]?.cue === 'below') denyForward(items, at)
    }
    if (
      cue === 'painFree' &&
      ['zone', 'inside', 'left', 'right', 'partOf'].includes(items[at + 1]?.cue ?? '') &&
      denyForward(items, at)
    )
      items[at]!.cue = 'soft'
    if (cue === 'except') exempt(items, at)
  }
}

/** "no pain except in the calf": not free of pain, and how much was not said. */
function exempt(items: readonly Item[], at: number): void {
  const start = startOfChunk(items, at > 0 && isMark(items[at - 1], ',') ? at - 1 : at)
  for (let i = start; i < at; i++) {
    const free: readonly (Cue | 'word' | 'mark')[] = ['painFree', 'noSymptoms']
    if (free.includes(items[i]!.cue)) items[i]!.cue = 'painVague'
  }
}

/** Writes onto the items what is denied, set aside, or of another time. */
export function setScopes(items: readonly Item[], language: Language): void {
  setAside(items, language)
  setBefore(items)
  setMoved(items)
  setThings(items, language)
  deny(items)
}
