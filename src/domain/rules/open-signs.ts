import type { Side } from '../checkin.ts'
import { type Day, daysBetween } from '../day.ts'
import type { SignId } from '../signs/catalogue.ts'
import { careOf } from '../signs/catalogue.ts'
import type { History, HistoryDay, OpenSign } from './assessment.ts'
import { onceOf, remembered } from './view.ts'

/** Two new `soon` signs no further apart than this count as one same-day matter. */
const PAIR_DAYS = 14

/** What is open so far, and the `soon` signs that no clinician has looked at, by which a pair is found. */
interface Ledger {
  readonly open: Map<SignId, OpenSign>
  soon: { readonly sign: SignId; readonly day: Day }[]
  /** The leg on record; symptoms that then come in both are a sign even where nobody calls it one. */
  side: Side | null
}

function begin(history: History): Ledger {
  const before = history.openBefore ?? []
  return {
    open: new Map(before.map((sign) => [sign.sign, sign])),
    soon: before.filter((sign) => careOf(sign.sign) === 'soon'),
    side: history.side,
  }
}

/** Symptoms of one leg on record that turn two-sided are `both-legs`. */
function turnedTwoSided(ledger: Ledger, side: Side | null): boolean {
  if (side === null) return false
  const turned = side === 'both' && ledger.side !== null && ledger.side !== 'both'
  if (ledger.side === null) ledger.side = side
  return turned
}

function addSign(ledger: Ledger, sign: SignId, day: Day): void {
  if (ledger.open.has(sign)) return
  ledger.open.set(sign, { sign, care: careOf(sign), day })
  if (careOf(sign) !== 'soon') return
  const partners = ledger.soon.filter((s) => s.sign !== sign && daysBetween(s.day, day) <= PAIR_DAYS)
  ledger.soon = [...ledger.soon, { sign, day }]
  if (partners.length === 0) return
  for (const raised of [sign, ...partners.map((s) => s.sign)]) {
    const open = ledger.open.get(raised)
    if (open) ledger.open.set(raised, { ...open, care: 'same-day' })
  }
}

/** A clinician's clearance ends any sign; the coach's note only one that is still `soon`. */
function endSigns(ledger: Ledger, { cleared, noted }: HistoryDay): void {
  for (const sign of cleared) {
    ledger.open.delete(sign)
    ledger.soon = ledger.soon.filter((s) => s.sign !== sign)
  }
  for (const sign of noted) {
    if (ledger.open.get(sign)?.care === 'soon') ledger.open.delete(sign)
  }
}

const concernsSigns = ({ checkIn, cleared, noted }: HistoryDay): boolean =>
  cleared.length + noted.length > 0 ||
  (checkIn !== null && (checkIn.signs.length > 0 || checkIn.side !== null))

const NONE: readonly OpenSign[] = []

/** What is open at the end of a day, by the days that concern signs. */
function openAfter(days: readonly HistoryDay[], history: History, on: Day): readonly OpenSign[] {
  if (days.length === 0 && history.openBefore === undefined) return NONE
  const ledger = begin(history)
  for (const day of days) {
    if (day.day > on) break
    const said = [...(day.checkIn?.signs ?? [])]
    if (turnedTwoSided(ledger, day.checkIn?.side ?? null)) said.push('both-legs')
    for (const sign of said) if (!history.known.includes(sign)) addSign(ledger, sign, day.day)
    endSigns(ledger, day)
  }
  return [...ledger.open.values()].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
}

const signDays = ({ days }: History): HistoryDay[] => days.filter(concernsSigns)

/**
 * The signs open at the end of a day. The one rule that looks at the whole history, since a sign stays open
 * however old it is. What is on the known list is left out; a sign and its end on one day: it has ended.
 */
export const openSigns = (history: History, on: Day): readonly OpenSign[] =>
  openAfter(signDays(history), history, on)

// gone through once, however long the history is
const signDaysOf = onceOf((whole) => signDays(whole.history))

/** The same for the last day of a view. */
export const signsOf = remembered((view) => openAfter(signDaysOf(view), view.history, view.on))
