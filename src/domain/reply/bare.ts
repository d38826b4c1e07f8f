import { isHour } from './hours.ts'
import { type Item, isMark } from './items.ts'
import type { Ask } from './reading.ts'

/** What numbers without a name beside them come out as. */
export interface BareFound {
  readonly sessions: Item | null
  readonly pains: readonly Item[]
  readonly unsure: readonly ('sessions' | 'pain')[]
}

interface Known {
  readonly sessions: boolean
  readonly pain: boolean
}

const NONE: BareFound = { sessions: null, pains: [], unsure: [] }
const ask = (...unsure: ('sessions' | 'pain')[]): BareFound => ({ ...NONE, unsure })
const TOP_OF_PAIN = 10
/** "12" may have been meant for a pain; further up nothing can. */
const FAR_OFF_SCALE = 20

interface Field {
  readonly items: readonly Item[]
  readonly zones: readonly Item[]
  /** More sessions than this cannot have been done. */
  readonly most: number
  readonly planned: number
  readonly asked: Ask | null
  /** Pain was told in words: a number may then be something else. */
  readonly vague: boolean
}

/** A number that can only be pain, whatever its place. */
const onlyPain = (n: Item, most: number): boolean => n.value > most && n.value <= TOP_OF_PAIN

const isBefore = (n: Item, zones: readonly Item[]): boolean => n.start < zones[0]!.start

/** Right after a zone, with nothing but small words between. */
function followsZone(n: Item, { items }: Field): boolean {
  for (let at = items.indexOf(n) - 1; at >= 0; at--) {
    const { cue } = items[at]!
    if (cue === 'zone' || cue === 'leg') return true
    if (!['article', 'be', 'was', 'soft', 'left', 'right', 'now'].includes(cue) && !isMark(items[at], ':=-'))
      return false
  }
  return false
}

/** "5 foot" or "foot 5" where all else is told: how the zone felt. */
const besideZone = (n: Item, field: Field): boolean =>
  field.zones.includes(field.items[field.items.indexOf(n) + 1]!) || followsZone(n, field)

/** "4 in the calf" */
const atZone = (n: Item, { items }: Field): boolean => {
  const at = items.indexOf(n)
  if (items[at + 1]?.cue !== 'inside') return false
  let next = at + 2
  while (['article', 'left', 'right', 'partOf'].includes(items[next]?.cue ?? '')) next += 1
  return items[next]?.cue === 'zone' || items[next]?.cue === 'leg'
}

function one(n: Item, field: Field): BareFound {
  const { zones, most, asked } = field
  const alone = zones.length === 0
  if (asked === 'pain' && (alone || !n.range)) return { ...NONE, pains: [n] }
  if (asked === 'sessions' && alone) return { ...NONE, sessions: n }
  if (asked === 'sessions' && !isBefore(n, zones)) return ask('sessions', 'pain')
  if (onlyPain(n, most)) return !alone || n.range ? { ...NONE, pains: [n] } : ask('pain')
  if (zones.length === 0) return n.value > most ? ask('pain') : ask('sessions', 'pain')
  if (!isBefore(n, zones) && field.vague) return ask('sessions', 'pain')
  if (!isBefore(n, zones)) return { ...NONE, pains: [n] }
  if (!Number.isInteger(n.value) || n.range) return ask('sessions', 'pain')
  return { ...NONE, sessions: n }
}

function two(a: Item, b: Item, field: Field): BareFound {
  const { zones, most } = field
  const [big, bigger] = [onlyPain(a, most), onlyPain(b, most)]
  if (big && bigger) return ask('pain')
  // "7 foot 11": what no scale holds makes the other one doubtful as well
  if ((big && b.value > most) || (bigger && a.value > most)) return ask('sessions', 'pain')
  if (big) return { sessions: b, pains: [a], unsure: [] }
  if (bigger) return { sessions: a, pains: [b], unsure: [] }
  if (zones.length === 0) return ask('sessions', 'pain')
  return { sessions: a, pains: [b], unsure: [] }
}

/** "back 3, calf 5": a number after each zone; the worst counts. A first number before all zones is sessions. */
function byZone(numbers: readonly Item[], field: Field): BareFound | null {
  const { zones } = field
  if (zones.length < 2) return null
  const [first, ...rest] = numbers
  const leads = isBefore(first!, zones)
  const pains = leads ? rest : numbers
  const inTurn =
    pains.length === zones.length &&
    pains.every((n, i) => n.start > zones[i]!.start && n.start < (zones[i + 1]?.start ?? Infinity))
  return inTurn ? { sessions: leads ? first! : null, pains, unsure: [] } : null
}

/**
 * Numbers without words: the order is sessions, reach, pain. One number, or two that could both be sessions and no
 * zone, are asked back.
 */
export function placeBare(bare: readonly Item[], field: Field, known: Known): BareFound {
  const inZones = bare.filter((n) => atZone(n, field))
  if (inZones.length > 0) {
    const rest = placeBare(
      bare.filter((n) => !inZones.includes(n)),
      field,
      { ...known, pain: true },
    )
    return { ...rest, pains: [...inZones, ...rest.pains] }
  }
  if (bare.length === 0) return NONE
  if (known.sessions && known.pain) return { ...NONE, pains: bare.filter((n) => besideZone(n, field)) }
  if (known.sessions && bare.length > 1) return besideSessions(bare, field)
  if (known.sessions) return { ...NONE, pains: bare }
  if (known.pain) return besidePain(bare, field)
  const pairs = byZone(bare, field)
  if (pairs) return pairs
  if (bare.length === 1) return one(bare[0]!, field)
  return bare.length === 2 ? two(bare[0]!, bare[1]!, field) : ask('sessions', 'pain')
}

function besidePain(bare: readonly Item[], field: Field): BareFound {
  const [n] = bare
  if (bare.length > 1 || !n) return ask('sessions')
  if (onlyPain(n, field.most)) return ask('pain')
  return n.value > field.planned && followsZone(n, field) ? ask('sessions', 'pain') : { ...NONE, sessions: n }
}

function besideHour(n: Item, { items }: Field): boolean {
  const [before, after] = [items[items.indexOf(n) - 1], items[items.indexOf(n) + 1]]
  return isHour(after) || isHour(before) || before?.cue === 'to'
}

/** Of several numbers beside told sessions, those after a zone are pain. */
function besideSessions(bare: readonly Item[], field: Field): BareFound {
  // "woke with 6 but 3 by lunch": one time of day each
  if (bare.some((n) => besideHour(n, field)) && bare.every((n) => n.value <= TOP_OF_PAIN))
    return { ...NONE, pains: bare }
  // "54 years young": what no scale could hold is something else
  const onScale = bare.filter((n) => n.value <= FAR_OFF_SCALE)
  if (onScale.length === 1) return { ...NONE, pains: onScale }
  const afterZone = bare.filter((n) => followsZone(n, field))
  return afterZone.length > 0 ? { ...NONE, pains: afterZone } : ask('pain')
}
