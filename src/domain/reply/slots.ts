import type { Reach } from '../reach.ts'
import { type Amount, painInWords, sessionsInWords } from './amounts.ts'
import { placeBare } from './bare.ts'
import { addHours, isHour } from './hours.ts'
import { type Item, isBreak } from './items.ts'
import { type Labelled, namesSessions, pairLabels } from './labels.ts'
import type { Language } from './lexicon/compile.ts'
import { type Numbers, placeNothing } from './nothing.ts'
import type { ReadingContext } from './reading.ts'
import { restated } from './restated.ts'
import { takeSame } from './same.ts'
import { EXTRA_SESSIONS, latest, type SlotsFound, TOP_OF_PAIN, takePain, takeSessions } from './taken.ts'
import { findReach, findSide } from './zones.ts'

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

/** "5 now" and "3 this morning": pain where sessions are told otherwise, or where the number is too high for them. */
function hoursOfPain(
  items: readonly Item[],
  { bare, pains }: Numbers,
  sessionsKnown: boolean,
  most: number,
): Item[] | 'ask' {
  if (bare.length === 0) return []
  const hours = bare.filter((n) => isHour(items[items.indexOf(n) + 1]) || isHour(items[items.indexOf(n) - 1]))
  if (pains.length > 0) return hours
  if (hours.length < 2) return []
  return sessionsKnown || hours.some((n) => n.value > most) ? hours : 'ask'
}

function isUnplacedDone(items: readonly Item[], pairs: readonly Labelled[]): Item | undefined {
  return items.find((i) => i.cue === 'done' && !i.unread && !i.denied && !pairs.some((p) => p.label === i))
}

/** A rest day, or a session told by its place and no more: a number of sessions beside it says more. */
const yields = ({ from }: NonNullable<Amount>): boolean =>
  from.cue === 'dayOff' || from.cue === 'oneSession' || from.cue === 'aSession'

const LIMBS = new Set<Item['cue']>(['zone', 'leg', 'legs'])

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
    same: [],
    evidence: [],
  }
  addHours(items, planned)
  // "both" and nothing else, where the side was asked, is the side
  const isSide = context.asked === 'side' && items.every((i) => i.cue === 'both' || i.cue === 'mark')
  const missed = isSide ? null : sessionsInWords(items, planned, language)
  const pairs = pairLabels(items)
  const numbers = sortNumbers(items, pairs)
  const saysNone = placeNothing(items, found, numbers, context)
  const worded = missed ?? (saysNone ? sessionsInWords(items, planned, language) : null)
  const inWords = worded && numbers.sessions.length > 0 && yields(worded) ? null : worded
  const reach = findReach(items)
  const places = items.filter(
    (i) => LIMBS.has(i.cue) && !i.unread && (!i.denied || (i.cue === 'zone' && reach.zones.includes(i))),
  )
  const painWords = painInWords(items)
  const knowsSessions = numbers.sessions.length > 0 || (inWords !== null && inWords.value !== null)
  const hours = hoursOfPain(items, numbers, knowsSessions, most)
  const pains = [...numbers.pains, ...(hours === 'ask' ? [] : hours)]
  const unplaced = hours === 'ask' ? [] : numbers.bare.filter((n) => !hours.includes(n))
  const again = restated(items, unplaced, inWords)
  const bare = again ? unplaced.filter((n) => n !== again) : unplaced
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
  // what stands on no scale counts something else, once pain has its number
  const pain = found.pain ?? TOP_OF_PAIN
  const isWorse = bare.some((n) => n.value > pain && (n.value <= TOP_OF_PAIN || pains.length === 0))
  if (known.sessions && known.pain && isWorse) {
    found.pain = null
    found.unsure.add('pain')
  }
  for (const slot of placed.unsure) {
    found.unsure.add(slot)
    found[slot] = null
  }
  const nowhere = reach.reach === null && items.some((i) => i.cue === 'noSymptoms' && !i.unread && !i.denied)
  takeReach(found, nowhere ? 'none' : reach.reach, reach.unsure, reach.zones)
  if (found.sessions === 1 && leavesOther(items, planned)) {
    found.sessions = null
    found.unsure.add('sessions')
  }
  if (found.sessions === null && isUnplacedDone(items, pairs)) found.unsure.add('sessions')
  takeSame(items, found, context.asked)
  settle(found)
  return found
}

const UNDONE: readonly Item['cue'][] = ['missed', 'no', 'nope', 'later', 'notYet', 'zone', 'leg', 'sideNoun']

/** "at 7 did one, at 8 the other": whether the other session was done as well is asked. */
const leavesOther = (items: readonly Item[], planned: number): boolean =>
  planned > 1 &&
  items.some((item, at) => {
    if (item.cue !== 'otherSide' || item.unread || !isBreak(items[at + 1])) return false
    const clause = items.slice(items.findLastIndex((i, n) => n < at && isBreak(i)) + 1, at)
    return !clause.some(({ cue }) => UNDONE.includes(cue) || cue === 'word' || cue === 'be')
  })

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
