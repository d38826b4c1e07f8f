import type { Side } from '../checkin.ts'
import type { Reach } from '../reach.ts'
import type { Amount } from './amounts.ts'
import type { Item } from './items.ts'
import type { Evidence, Slot } from './reading.ts'

/** The slots of one day, each null or a value of its scale, with what must be asked back. */
export interface SlotsFound {
  sessions: number | null
  reach: Reach | null
  pain: number | null
  side: Side | null
  unsure: Set<Slot | 'side'>
  /** Told to be as before, and asked back. */
  same: Slot[]
  /** Items behind each slot, for the quote. */
  evidence: { slot: Evidence['slot']; item: Item }[]
}

export const TOP_OF_PAIN = 10
/** Done beyond the plan: up to two more. */
export const EXTRA_SESSIONS = 2

const fits = (sessions: number, planned: number): boolean =>
  Number.isInteger(sessions) && sessions >= 0 && sessions <= planned + EXTRA_SESSIONS

/** One right number, or the words for one; anything else that was said is asked back. */
export function takeSessions(
  found: SlotsFound,
  list: readonly Item[],
  inWords: Amount,
  planned: number,
): void {
  const from = list[0] ?? inWords?.from
  if (!from) return
  found.evidence.push({ slot: 'sessions', item: from })
  const value = agreed(list, inWords)
  if (value === null || !fits(value, planned)) found.unsure.add('sessions')
  else found.sessions = value
}

/** The one count that was told; null where numbers and words differ, or none is plain. */
function agreed([first, second]: readonly Item[], inWords: Amount): number | null {
  if (!first) return inWords?.value ?? null
  if (second || first.range || first.unsure) return null
  const worded = inWords?.value ?? first.value
  return worded === first.value ? first.value : null
}

/** Where a value was corrected in the same message, the corrected one alone counts. */
export const latest = (list: readonly Item[]): readonly Item[] => {
  const corrected = list.filter((n) => n.corrects)
  return corrected.length > 0 ? corrected : list
}

/** The worst of the numbers, any decimal rounded up; words without a number are asked back. */
export function takePain(found: SlotsFound, list: readonly Item[], inWords: Amount): void {
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
