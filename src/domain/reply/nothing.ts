import { type Item, isBreak } from './items.ts'
import type { ReadingContext } from './reading.ts'
import { EXTRA_SESSIONS, type SlotsFound } from './taken.ts'

/** Numbers of one day by what they count; bare where no name stands beside them. */
export interface Numbers {
  readonly sessions: Item[]
  readonly pains: Item[]
  readonly bare: Item[]
}

/** Pain was told by name, in words, after the zone or by a number too high for sessions: a "none" at the end can only be sessions. */
function painTold(items: readonly Item[], numbers: Numbers, zones: readonly Item[], most: number): boolean {
  if (numbers.pains.length > 0 || items.some((i) => i.cue === 'painVague' && !i.unread)) return true
  const [n] = numbers.bare
  return numbers.bare.length === 1 && (n!.start > zones[0]!.start || n!.value > most)
}

/** "knee 4, none": after a clause that holds zone and pain together, "none" may as well speak of the signs. */
function answersSigns(items: readonly Item[], at: number): boolean {
  if (!isBreak(items[at - 1]) || at + 1 < items.length) return false
  let [zone, number] = [false, false]
  for (let i = at - 2; i >= 0 && !isBreak(items[i]); i--) {
    zone ||= items[i]!.cue === 'zone'
    number ||= items[i]!.cue === 'num'
  }
  return zone && number
}

/** "none" is sessions, reach or pain by its place: beside a name, as the zone between numbers, or before a zone. */
export function placeNothing(
  items: readonly Item[],
  found: SlotsFound,
  numbers: Numbers,
  context: ReadingContext,
): boolean {
  let any = false
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!
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
    else if (zones.length > 0 && painTold(items, numbers, zones, context.planned + EXTRA_SESSIONS)) {
      if (answersSigns(items, at)) found.unsure.add('sessions')
      else item.cue = 'noSession'
    } else if (zones.length > 0) for (const slot of ['sessions', 'pain'] as const) found.unsure.add(slot)
    else if (context.asked === 'sessions') item.cue = 'noSession'
    else if (context.asked === 'pain') item.cue = 'painFree'
    else if (context.asked === 'reach') item.cue = 'zone'
    else found.unsure.add('sessions')
  }
  return any
}
