import { type Amount, painInWords, sessionsInWords } from './amounts.ts'
import { addHours } from './hours.ts'
import { type Item, isBreak } from './items.ts'
import { type Labelled, pairLabels } from './labels.ts'
import type { Language } from './lexicon/compile.ts'
import { placeNothing } from './nothing.ts'
import { type Beside, type PlacedNumbers, placeNumbers, sortNumbers } from './numbers.ts'
import type { ReadingContext } from './reading.ts'
import { takeSame } from './same.ts'
import { latest, type SlotsFound, TOP_OF_PAIN, takePain, takeSessions } from './taken.ts'
import { findReach, findSide, type ReachFound } from './zones.ts'

function isUnplacedDone(items: readonly Item[], pairs: readonly Labelled[]): Item | undefined {
  return items.find((i) => i.cue === 'done' && !i.unread && !i.denied && !pairs.some((p) => p.label === i))
}

/** A rest day, or a session told by its place and no more: a number of sessions beside it says more. */
const yields = ({ from }: NonNullable<Amount>): boolean =>
  from.cue === 'dayOff' || from.cue === 'oneSession' || from.cue === 'aSession'

const LIMBS = new Set<Item['cue']>(['zone', 'leg', 'legs'])

/** Reads the slots out of what was said of one day. */
export function readSlots(items: readonly Item[], context: ReadingContext, language: Language): SlotsFound {
  const { planned, asked } = context
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
  const told = toldIn(items, found, context, language)
  const placed = placeNumbers(items, told, context)
  for (const slot of placed.open) found.unsure.add(slot)
  takeSessions(found, latest(placed.sessions), told.inWords, planned)
  takePain(found, latest(placed.pains), told.painWords)
  askNumbers(found, placed)
  takeReach(found, items, told.reach)
  askSessions(found, items, told.pairs, planned)
  takeSame(items, found, asked)
  settle(found)
  return found
}

interface Told extends Beside {
  readonly pairs: readonly Labelled[]
  readonly reach: ReachFound
}

/** Names, zones and words of one day, and the numbers by name; "none" is placed on the way. */
function toldIn(
  items: readonly Item[],
  found: SlotsFound,
  context: ReadingContext,
  language: Language,
): Told {
  const { planned, asked } = context
  // "both" and nothing else, where the side was asked, is the side
  const isSide = asked === 'side' && items.every((i) => i.cue === 'both' || i.cue === 'mark')
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
  return { pairs, numbers, inWords, reach, places, painWords: painInWords(items) }
}

/** Takes back what a number without a name makes doubtful. */
function askNumbers(found: SlotsFound, { bare, unsure, isPainNamed, isAllKnown }: PlacedNumbers): void {
  // what stands on no scale counts something else, once pain has its number
  const pain = found.pain ?? TOP_OF_PAIN
  if (isAllKnown && bare.some((n) => n.value > pain && (n.value <= TOP_OF_PAIN || !isPainNamed))) {
    found.pain = null
    found.unsure.add('pain')
  }
  for (const slot of unsure) {
    found.unsure.add(slot)
    found[slot] = null
  }
}

/** Asks back a count that leaves something open: the other session, or something done without a number. */
function askSessions(
  found: SlotsFound,
  items: readonly Item[],
  pairs: readonly Labelled[],
  planned: number,
): void {
  if (found.sessions === 1 && leavesOther(items, planned)) {
    found.sessions = null
    found.unsure.add('sessions')
  }
  if (found.sessions === null && isUnplacedDone(items, pairs)) found.unsure.add('sessions')
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

function takeReach(found: SlotsFound, items: readonly Item[], { reach, unsure, zones }: ReachFound): void {
  const nowhere = reach === null && items.some((i) => i.cue === 'noSymptoms' && !i.unread && !i.denied)
  found.reach = nowhere ? 'none' : reach
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
