import type { Side } from '../checkin.ts'
import type { Reach } from '../reach.ts'
import { type Amount, painInWords, sessionsInWords } from './amounts.ts'
import { placeBare } from './bare.ts'
import { type Item, isBreak } from './items.ts'
import { type Labelled, namesSessions, pairLabels } from './labels.ts'
import type { Language } from './lexicon/compile.ts'
import type { Evidence, ReadingContext, Slot } from './reading.ts'
import { findReach, findSide } from './zones.ts'

/** The slots of one day, each null or a value of its scale, with what must be asked back. */
export interface SlotsFound {
  sessions: number | null
  reach: Reach | null
  pain: number | null
  side: Side | null
  unsure: Set<Slot | 'side'>
  /** Items behind each slot, for the quote. */
  evidence: { slot: Evidence['slot']; item: Item }[]
}

const TOP_OF_PAIN = 10
/** Done beyond the plan: up to two more. */
const EXTRA_SESSIONS = 2

interface Numbers {
  readonly sessions: Item[]
  readonly pains: Item[]
  readonly bare: Item[]
}

function sortNumbers(items: readonly Item[], pairs: readonly Labelled[]): Numbers {
  const named = new Map(pairs.map((pair) => [pair.number, pair]))
  const numbers: Numbers = { sessions: [], pains: [], bare: [] }
  for (const item of items) {
    if (item.cue !== 'num' || item.unread || item.denied) continue
    const pair = named.get(item)
    const slot = item.slot ?? (pair ? (namesSessions(pair) ? 'sessions' : 'pain') : null)
    if (slot === 'sessions') numbers.sessions.push(item)
    else if (slot === 'pain') numbers.pains.push(item)
    else numbers.bare.push(item)
  }
  return numbers
}

/** Pain was told by name, in words or after the zone: a "none" at the end can only be sessions. */
function painTold(items: readonly Item[], numbers: Numbers, zones: readonly Item[]): boolean {
  if (numbers.pains.length > 0 || items.some((i) => i.cue === 'painVague' && !i.unread)) return true
  return numbers.bare.length === 1 && numbers.bare[0]!.start > zones[0]!.start
}

/** "none" is sessions, reach or pain by its place: beside a name, as the zone between numbers, or before a zone. */
function placeNothing(
  items: readonly Item[],
  found: SlotsFound,
  numbers: Numbers,
  context: ReadingContext,
): boolean {
  let any = false
  for (const [at, item] of items.entries()) {
    if (item.cue !== 'nothing' || item.unread || item.denied) continue
    any = true
    const near = [items[at - 1]?.cue === 'mark' ? items[at - 2] : items[at - 1], items[at + 1]]
    const cues = near.map((i) => i?.cue)
    const zones = items.filter((i) => i.cue === 'zone' && !i.unread && !i.denied)
    if (cues[0] === 'pain' || cues[0] === 'painLetter') item.cue = 'painFree'
    else if (cues.some((c) => c === 'session' || c === 'did' || c === 'done')) item.cue = 'noSession'
    else if (cues[0] === 'place') item.cue = 'zone'
    else if (zones.some((z) => z.start > item.start)) item.cue = 'noSession'
    else if (zones.length === 0 && numbers.bare.length + numbers.pains.length > 0 && cues[1] !== undefined)
      item.cue = 'zone'
    else if (zones.length > 0 && painTold(items, numbers, zones)) item.cue = 'noSession'
    else if (zones.length > 0) for (const slot of ['sessions', 'pain'] as const) found.unsure.add(slot)
    else if (context.asked === 'sessions') item.cue = 'noSession'
    else if (context.asked === 'pain') item.cue = 'painFree'
    else if (context.asked === 'reach') item.cue = 'zone'
    else found.unsure.add('sessions')
  }
  return any
}

const fits = (sessions: number, planned: number): boolean =>
  Number.isInteger(sessions) && sessions >= 0 && sessions <= planned + EXTRA_SESSIONS

function takeSessions(found: SlotsFound, list: readonly Item[], inWords: Amount, planned: number): void {
  const right = (n: Item): boolean =>
    Number.isInteger(n.value) && n.value >= 0 && n.value <= planned + EXTRA_SESSIONS && !n.range && !n.unsure
  const values = new Set(list.map((n) => n.value))
  const from = list[0] ?? inWords?.from
  if (!from) return
  found.evidence.push({ slot: 'sessions', item: from })
  const inNumber =
    list.length === 0
      ? null
      : values.size === 1 && list.every(right) && list.length === 1
        ? list[0]!.value
        : undefined
  const worded = inWords === null ? null : (inWords.value ?? undefined)
  const value =
    inNumber === null
      ? worded
      : worded === null || worded === inNumber
        ? inNumber
        : inWords?.value === null
          ? inNumber
          : undefined
  if (value === undefined || value === null || !fits(value, planned)) found.unsure.add('sessions')
  else found.sessions = value
}

/** Where a value was corrected in the same message, the corrected one alone counts. */
const latest = (list: readonly Item[]): readonly Item[] => {
  const corrected = list.filter((n) => n.corrects)
  return corrected.length > 0 ? corrected : list
}

function takePain(found: SlotsFound, list: readonly Item[], inWords: Amount): void {
  if (list.length === 0) {
    if (!inWords) return
    found.evidence.push({ slot: 'pain', item: inWords.from })
    if (inWords.value === null) found.unsure.add('pain')
    else found.pain = inWords.value
    return
  }
  const worst = list.reduce((a, b) => (b.value > a.value ? b : a))
  found.evidence.push({ slot: 'pain', item: worst })
  const value = Math.ceil(worst.value)
  const before = list.some((n) => n.was) && worst.was && list.some((n) => !n.was)
  if (list.some((n) => n.unsure || n.value > TOP_OF_PAIN) || before) found.unsure.add('pain')
  else found.pain = value
}

/** "5 now" and "3 this morning": pain where sessions are told otherwise, or where the number is too high for them. */
function hoursOfPain(
  items: readonly Item[],
  { bare, pains }: Numbers,
  sessionsKnown: boolean,
  most: number,
): Item[] | 'ask' {
  const isHour = (item: Item | undefined): boolean => item?.cue === 'dayPart' || item?.cue === 'now'
  const hours = bare.filter((n) => isHour(items[items.indexOf(n) + 1]) || isHour(items[items.indexOf(n) - 1]))
  if (pains.length > 0) return hours
  if (hours.length < 2) return []
  return sessionsKnown || hours.some((n) => n.value > most) ? hours : 'ask'
}

/** "as yesterday", and nothing else in the clause. */
const isWholeComparison = (items: readonly Item[], at: number): boolean =>
  items[at]!.cue === 'compare' &&
  isBreak(items[at - 1]) &&
  items[at + 1]?.date != null &&
  isBreak(items[at + 2])

/** Same as before: what was not told otherwise is asked back, with the values of that day at hand. */
function takeSame(items: readonly Item[], found: SlotsFound): void {
  for (const [at, item] of items.entries()) {
    if (item.unread || item.denied || !(item.cue === 'same' || isWholeComparison(items, at))) continue
    const next = items[at + 1]?.cue
    if (next === 'leg' || next === 'legs' || next === 'sideNoun') {
      found.unsure.delete('reach')
      continue
    }
    if (next === 'zone') continue
    const slots: Slot[] =
      next === 'pain'
        ? ['pain']
        : next === 'place'
          ? ['reach']
          : next === 'session'
            ? ['sessions']
            : ['sessions', 'reach', 'pain']
    for (const slot of slots) if (found[slot] === null) found.unsure.add(slot)
  }
}

function isUnplacedDone(items: readonly Item[], pairs: readonly Labelled[]): Item | undefined {
  return items.find((i) => i.cue === 'done' && !i.unread && !i.denied && !pairs.some((p) => p.label === i))
}

/** Reads the slots out of what was said of one day. */
export function readSlots(items: readonly Item[], context: ReadingContext, language: Language): SlotsFound {
  const { planned } = context
  const most = planned + EXTRA_SESSIONS
  const found: SlotsFound = {
    sessions: null,
    reach: null,
    pain: null,
    side: findSide(items, language),
    unsure: new Set(),
    evidence: [],
  }
  const missed = sessionsInWords(items, planned, language)
  const pairs = pairLabels(items)
  const numbers = sortNumbers(items, pairs)
  const saysNone = placeNothing(items, found, numbers, context)
  const inWords = missed ?? (saysNone ? sessionsInWords(items, planned, language) : null)
  const reach = findReach(items)
  const limbs: readonly Item['cue'][] = ['zone', 'leg', 'legs']
  const places = items.filter(
    (i) => limbs.includes(i.cue) && !i.unread && (!i.denied || (i.cue === 'zone' && reach.zones.includes(i))),
  )
  const painWords = painInWords(items)
  const knowsSessions = numbers.sessions.length > 0 || (inWords !== null && inWords.value !== null)
  const hours = hoursOfPain(items, numbers, knowsSessions, most)
  const pains = [...numbers.pains, ...(hours === 'ask' ? [] : hours)]
  const bare = hours === 'ask' ? [] : numbers.bare.filter((n) => !hours.includes(n))
  const known = { sessions: knowsSessions, pain: pains.length > 0 || (painWords?.value ?? null) !== null }
  const placed = placeBare(
    bare,
    { items, zones: places, most, planned, asked: context.asked, vague: painWords !== null },
    known,
  )
  if (hours === 'ask') for (const slot of ['sessions', 'pain'] as const) found.unsure.add(slot)
  takeSessions(
    found,
    latest([...numbers.sessions, ...(placed.sessions ? [placed.sessions] : [])]),
    inWords,
    planned,
  )
  takePain(found, latest([...pains, ...placed.pains]), painWords)
  if (known.sessions && known.pain && bare.some((n) => n.value > (found.pain ?? TOP_OF_PAIN))) {
    found.pain = null
    found.unsure.add('pain')
  }
  for (const slot of placed.unsure) {
    found.unsure.add(slot)
    found[slot] = null
  }
  const nowhere = reach.reach === null && items.some((i) => i.cue === 'noSymptoms' && !i.unread && !i.denied)
  takeReach(found, nowhere ? 'none' : reach.reach, reach.unsure, reach.zones)
  if (found.sessions === null && isUnplacedDone(items, pairs)) found.unsure.add('sessions')
  takeSame(items, found)
  settle(found)
  return found
}

function takeReach(found: SlotsFound, reach: Reach | null, unsure: boolean, zones: readonly Item[]): void {
  found.reach = reach
  if (unsure) found.unsure.add('reach')
  for (const item of zones) found.evidence.push({ slot: 'reach', item })
}

/** A value that stands is not asked back; reach none beside pain is. */
function settle(found: SlotsFound): void {
  if (found.reach === 'none' && found.pain !== null && found.pain > 0) {
    found.reach = null
    found.unsure.add('reach')
  }
  for (const slot of ['sessions', 'reach', 'pain'] as const)
    if (found[slot] !== null) found.unsure.delete(slot)
}
