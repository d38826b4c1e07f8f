import { type Item, isBreak, isMark, isStrong } from './items.ts'
import type { Language } from './lexicon/compile.ts'

/** Nobody corrects more often in one message; each costs a look at all of it. */
const MOST_CORRECTIONS = 8

const SMALL: readonly Item['cue'][] = [
  'article',
  'be',
  'was',
  'soft',
  'inside',
  'only',
  'left',
  'right',
  'partOf',
  'no',
  'mark',
]
const VALUES: readonly Item['cue'][] = [
  'num',
  'zone',
  'all',
  'both',
  'noSession',
  'painFree',
  'half',
  'day',
  'count',
]
const WORDED: readonly Item['cue'][] = ['all', 'both', 'half', 'noSession', 'count', 'vagueCount']
const NAMES: readonly Item['cue'][] = ['pain', 'session', 'did', 'place', 'painLetter', 'sessionLetter']

/** What may stand between a retraction and the number that takes the place of the other ("5, no, it was 6"). */
const AFTER_NO: readonly Item['cue'][] = ['article', 'be', 'was', 'soft', 'pain', 'painLetter', 'mark']
const MOST_AFTER_NO = 3

/** "5 no 6", "5, no, 6": the first number is taken back; "4, no 2 sessions" denies. */
export function settleNo(items: readonly Item[], { takesBack }: Language): void {
  items.forEach((item, at) => {
    if ((item.cue !== 'no' && item.cue !== 'nope') || !takesBack.words.has(item.text)) return
    if (!takesBack.always && !isMark(items[at + 1], ',-.')) return
    const before = isMark(items[at - 1], ',-.?') ? at - 2 : at - 1
    let next = at + 1
    while (next <= at + MOST_AFTER_NO && AFTER_NO.includes(items[next]?.cue ?? 'num')) next += 1
    const { cue } = items[before] ?? item
    const isValue = (cue === 'num' || WORDED.includes(cue)) && items[next]?.cue === 'num'
    if (!isValue || items[next + 1]?.cue === 'session') return
    item.cue = 'correction'
    item.corrects = true
  })
}

/** "sorry 4" corrects; "sorry for the delay" does not: a value must follow at once. */
function leadsToValue(items: readonly Item[], at: number): boolean {
  // "skipped it sorry, calf 5": the excuse ends its own clause
  const parted = items[at + 1]?.cue === 'mark' || items[at + 1]?.apart
  if (parted && !isBreak(items[at - 1]) && !items[at]!.corrects) return false
  for (let i = at + 1; i < items.length && i <= at + 6; i++) {
    const { cue } = items[i]!
    if (VALUES.includes(cue) || NAMES.includes(cue)) return cue !== 'day'
    if (!SMALL.includes(cue)) return false
  }
  return false
}

const isNumber = (item: Item): boolean => item.cue === 'num' && !item.unread && !item.denied
const isZone = (item: Item): boolean => item.cue === 'zone' && !item.unread && !item.denied

function isNamed(items: readonly Item[], n: Item): boolean {
  if (n.slot !== null) return true
  let at = items.indexOf(n) - 1
  while (at >= 0 && ['article', 'be', 'was'].includes(items[at]!.cue)) at -= 1
  const near = [items[at], items[items.indexOf(n) + 1]]
  return near.some((i) => i !== undefined && NAMES.includes(i.cue))
}

const namesSessions = (items: readonly Item[], n: Item): boolean =>
  n.slot === 'sessions' || ['session', 'done'].includes(items[items.indexOf(n) + 1]?.cue ?? 'mark')

/** "both, no sorry, one": a count in words right before the correction gives way to the number right after it. */
function replacesWorded(items: readonly Item[], at: number, first: Item, most: number): boolean {
  const worded = items[isMark(items[at - 1], ',-.') ? at - 2 : at - 1]
  if (!worded || !WORDED.includes(worded.cue) || first.value > most || first.slot === 'pain') return false
  if (!items.slice(at + 1, items.indexOf(first)).every(({ cue }) => SMALL.includes(cue))) return false
  worded.unread = true
  first.slot = 'sessions'
  return true
}

/** What follows the correction takes the place of what came before: a zone of zones, a number of the one before it. */
function replace(items: readonly Item[], at: number, most: number): void {
  const earlier = items.slice(0, at)
  const after = items.slice(at)
  if (after.some(isZone)) for (const zone of earlier.filter(isZone)) zone.unread = true
  const numbers = after.filter(isNumber)
  for (const n of numbers) n.corrects = true
  const [first] = numbers
  if (!first || replacesWorded(items, at, first, most)) return
  if (isNamed(items, first)) {
    // "1, no wait, 2 sessions": what stands right before is what is replaced
    const last = items[isMark(items[at - 1], ',-.') ? at - 2 : at - 1]
    if (last && isNumber(last) && !isNamed(items, last)) last.unread = true
    return
  }
  const before = earlier.filter(isNumber)
  if (numbers.length > 1) {
    for (const n of before) n.unread = true
    return
  }
  // "calf 4 2 done, make that a 5": too many for sessions, so it was the other number
  const last = before.findLast((n) => first.value <= most || !namesSessions(items, n)) ?? before.at(-1)
  if (!last) return
  last.value = first.value
  last.range = first.range
  last.unsure = first.unsure
  first.unread = true
}

/** An excuse is a correction only where it opens the message or has something of its kind before it. */
function replacesAny(items: readonly Item[], at: number): boolean {
  const [first] = items.slice(at + 1).filter((i) => isZone(i) || isNumber(i))
  const earlier = items.slice(0, at)
  if (!first || !earlier.some((i) => VALUES.includes(i.cue))) return true
  return isZone(first) ? earlier.some(isZone) : true
}

/** "I put 6 but it was 4": what was written before is denied, where another of its kind follows in the sentence. */
function denyWritten(items: readonly Item[], at: number): boolean {
  let next = at + 1
  while (items[next] && SMALL.includes(items[next]!.cue) && !isBreak(items[next])) next += 1
  const written = items[next]
  if (!written || !(isNumber(written) || isZone(written))) return false
  for (let i = next + 1; i < items.length && !isStrong(items[i]); i++) {
    if (items[i]!.cue !== written.cue || items[i]!.unread) continue
    written.denied = true
    return true
  }
  return false
}

/** Applies "sorry, 5" and the like; answers whether the message corrects something. */
export function applyCorrections(items: readonly Item[], most: number): boolean {
  let corrects = false
  let replaced = 0
  items.forEach((item, at) => {
    if (item.unread) return
    if (item.cue === 'wrote' && denyWritten(items, at)) corrects = true
    const cue = item.cue === 'correction' || item.cue === 'sorry'
    if (!cue || !leadsToValue(items, at)) return
    if (item.cue === 'sorry' && !replacesAny(items, at)) return
    corrects = true
    if (++replaced <= MOST_CORRECTIONS) replace(items, at, most)
  })
  return notButThat(items) || corrects
}

/** "4 not 6": the number denied goes; where it could only be pain, so is the one that stays. */
function notButThat(items: readonly Item[]): boolean {
  const denied = items.find((item) => item.cue === 'num' && item.denied)
  const kept = items.filter(isNumber)
  return denied !== undefined && kept.length > 0
}

/** The number denied beside the one that stays, or null. */
export const deniedNumber = (items: readonly Item[]): number | null =>
  items.find((item) => item.cue === 'num' && item.denied)?.value ?? null
