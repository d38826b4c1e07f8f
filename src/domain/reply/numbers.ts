import type { Amount } from './amounts.ts'
import { type BareFound, placeBare } from './bare.ts'
import { isHour } from './hours.ts'
import type { Item } from './items.ts'
import { type Labelled, namesSessions } from './labels.ts'
import type { Numbers } from './nothing.ts'
import type { ReadingContext } from './reading.ts'
import { restated } from './restated.ts'
import { EXTRA_SESSIONS } from './taken.ts'

/** The numbers of one day by the names that stand beside them. */
export function sortNumbers(items: readonly Item[], pairs: readonly Labelled[]): Numbers {
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

/** What was told of one day beside the numbers that no name stands beside. */
export interface Beside {
  readonly numbers: Numbers
  /** Zones and limbs, in order of the message. */
  readonly places: readonly Item[]
  /** Sessions and pain told in words. */
  readonly inWords: Amount
  readonly painWords: Amount
}

/** Where the numbers of one day belong. */
export interface PlacedNumbers {
  readonly sessions: readonly Item[]
  readonly pains: readonly Item[]
  /** May be sessions or pain; a value that is told otherwise stands. */
  readonly open: readonly ('sessions' | 'pain')[]
  /** To be asked back, whatever else was told. */
  readonly unsure: BareFound['unsure']
  /** Those without a name, an hour or a count in words that they repeat. */
  readonly bare: readonly Item[]
  /** Pain has a number by its name or hour. */
  readonly isPainNamed: boolean
  /** Sessions and pain are both told without the bare ones. */
  readonly isAllKnown: boolean
}

/** Numbers by name, then by hour, then by their place among what else was told. */
export function placeNumbers(items: readonly Item[], beside: Beside, context: ReadingContext): PlacedNumbers {
  const { numbers, places, inWords, painWords } = beside
  const { planned, asked } = context
  const most = planned + EXTRA_SESSIONS
  const knowsSessions = numbers.sessions.length > 0 || (inWords !== null && inWords.value !== null)
  const hours = hoursOfPain(items, numbers, knowsSessions, most)
  const byHour = hours === 'ask' ? [] : hours
  const named = [...numbers.pains, ...byHour]
  const unplaced = hours === 'ask' ? [] : numbers.bare.filter((n) => !byHour.includes(n))
  const again = restated(items, unplaced, inWords)
  const bare = again ? unplaced.filter((n) => n !== again) : unplaced
  const known = { sessions: knowsSessions, pain: named.length > 0 || (painWords?.value ?? null) !== null }
  const field = { items, zones: places, most, planned, asked, vague: painWords !== null }
  const placed = placeBare(bare, field, known)
  return {
    sessions: [...numbers.sessions, ...(placed.sessions ? [placed.sessions] : [])],
    pains: [...named, ...placed.pains],
    open: hours === 'ask' ? ['sessions', 'pain'] : [],
    unsure: placed.unsure,
    bare,
    isPainNamed: named.length > 0,
    isAllKnown: known.sessions && known.pain,
  }
}
