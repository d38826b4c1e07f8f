import type { ClassSet } from './class-set.ts'
import type { Compiled, Rule } from './compile.ts'
import type { Context } from './context.ts'
import type { Polarity } from './polarity.ts'
import { BREAK, NOWHERE, type Unit } from './units.ts'

/** A rule found in the message, by the units that stand for its parts. */
export interface Match {
  readonly rule: Rule
  readonly at: readonly number[]
}

/** What the message as a whole offers to the matcher. */
export interface Reading {
  readonly units: readonly Unit[]
  readonly polarity: Polarity
  readonly context: Context
  readonly lexicon: Compiled
  /** A contrast whose clause has no subject of its own goes on about the one before ("can pee but slowly"). */
  readonly carries: Uint8Array
}

/** Marks the contrasts that carry the subject of the clause before them. */
export function carriesOf(units: readonly Unit[], { cue }: Compiled, anywhere: ClassSet): Uint8Array {
  const { place, topic, contrast } = cue
  if (!anywhere.has(contrast)) return NOWHERE
  const carries = new Uint8Array(units.length)
  let hasSubject = false
  for (let i = units.length - 1; i >= 0; i--) {
    const { entry } = units[i]!
    if (entry.has(place) || entry.has(topic)) hasSubject = true
    if (units[i]!.gap === BREAK.contrast && !hasSubject) carries[i] = 1
    if (units[i]!.gap >= BREAK.contrast) hasSubject = false
  }
  return carries
}

const isOf = (reading: Reading, i: number, classes: readonly number[]): boolean => {
  const { entry } = reading.units[i]!
  if (reading.polarity.denying[i] === 1) return false
  for (const id of classes)
    if (entry.has(id) || (id === reading.lexicon.cue.odd && reading.polarity.turnedOdd[i] === 1)) return true
  return false
}

/** Words of no weight between two parts are not counted, up to this many in all. */
const MOST_LIGHT = 6

function isLight(reading: Reading, i: number): boolean {
  const { entry } = reading.units[i]!
  const { filler, own, me } = reading.lexicon.cue
  return entry.has(filler) || entry.has(own) || entry.has(me)
}

/** The nearest unit after `from` that fits the part, or `from` itself if it is a phrase that holds both; else -1. */
function nextPart(reading: Reading, rule: Rule, part: readonly number[], from: number): number {
  if (reading.units[from]!.entry.isComposed && isOf(reading, from, part)) return from
  const { cue } = reading.lexicon
  let passedPlace = false
  let passedBreak = false
  let passedFine = false
  let weight = 0
  for (let i = from + 1; i < reading.units.length && i - from <= rule.within + 1 + MOST_LIGHT; i++) {
    const unit = reading.units[i]!
    const isCarried = unit.gap === BREAK.contrast && reading.carries[i] === 1
    if (isCarried) passedFine = false
    else if (unit.gap > rule.across) return -1
    if (unit.gap > BREAK.none && !isCarried) passedBreak = true
    if (passedFine || (passedBreak && passedPlace)) return -1
    if (isOf(reading, i, part)) return i
    if (unit.entry.has(cue.place)) passedPlace = true
    if (unit.entry.has(cue.fine) && reading.polarity.turnedOdd[i] === 0) passedFine = true
    if (!isLight(reading, i)) weight += 1
    if (weight > rule.within) return -1
  }
  return -1
}

/** A rule whose further parts stand nowhere in the message need not be tried at every word. */
function canHold({ context: { anywhere } }: Reading, { parts }: Rule): boolean {
  for (let k = 1; k < parts.length; k++) if (!anywhere.hasAny(parts[k]!)) return false
  return true
}

function tryRule(reading: Reading, rule: Rule, start: number): Match | null {
  const at = [start]
  for (let k = 1; k < rule.parts.length; k++) {
    const next = nextPart(reading, rule, rule.parts[k]!, at[k - 1]!)
    if (next < 0) return null
    at.push(next)
  }
  return { rule, at }
}

/** A number of the scale is told somewhere, in digits or words. */
const isScored = ({ units, context, lexicon }: Reading): boolean =>
  units.some(({ value }) => value !== null) || context.anywhere.has(lexicon.cue.score)

function holds(reading: Reading, match: Match): boolean {
  const { context } = reading
  const { needs, unless, wide, anywhere } = match.rule
  if (match.rule.unscored && isScored(reading)) return false
  if (needs !== null && !context.told(match.at[0]!).has(needs)) return false
  if (unless !== null) {
    const near = wide ? context.told(match.at[0]!) : context.toldInPhrase(match.at.at(-1)!)
    if (near.has(unless)) return false
  }
  return anywhere === null || context.anywhere.has(anywhere)
}

/**
 * "2 calf 4 btw numb when I wipe": the reach of a check-in, told with its number, is not where the numbness is
 * once the numbness has a place of its own.
 */
function withoutReach({ units }: Reading, found: readonly Match[]): Match[] {
  const placed = new Set(found.filter(({ rule }) => rule.sign === 'saddle-numbness').flatMap(({ at }) => at))
  return found.filter(({ rule, at }) => {
    if (rule.sign !== 'new-numbness' || at.length < 2 || !at.some((i) => placed.has(i))) return true
    return !units.slice(at[0]!, at.at(-1)!).some(({ value }) => value !== null)
  })
}

/** Adds what the rules find that the class opens at this unit. */
function tryAll(reading: Reading, id: number, at: number, found: Match[]): void {
  for (const rule of reading.lexicon.opening[id]!) {
    if (!canHold(reading, rule)) continue
    const match = tryRule(reading, rule, at)
    if (match !== null && holds(reading, match)) found.push(match)
  }
}

/** All rules found. */
export function matchesOf(reading: Reading): Match[] {
  const found: Match[] = []
  const { cue } = reading.lexicon
  for (let i = 0; i < reading.units.length; i++) {
    if (reading.polarity.denying[i] === 1) continue
    for (const id of reading.units[i]!.entry.classes) tryAll(reading, id, i, found)
    if (reading.polarity.turnedOdd[i] === 1) tryAll(reading, cue.odd, i, found)
  }
  if (found.length === 0) return found
  return withoutShared(reading, withoutReach(reading, found))
}

/** The unit behind the last contrast that a match reaches across, or -1. */
export function contrastWithin({ units }: Reading, { at }: Match): number {
  for (let i = at.at(-1)!; i > at[0]!; i--) if (units[i]!.gap === BREAK.contrast) return i
  return -1
}

const isFine = ({ polarity }: Reading, i: number): boolean => polarity.fine[i] === 1

/** "don't feel weak but now it's bilateral": what is denied takes nothing from what is told beside it. */
function ownOf({ polarity }: Reading, { at }: Match): readonly number[] {
  const denied = at.filter((i) => polarity.negated[i] === 1)
  return denied.length > 0 ? denied : at
}

/** A word on its own counts only where no other rule of the same clause uses the word, nor of a part that is fine. */
function withoutShared(reading: Reading, found: readonly Match[]): Match[] {
  const used = new Uint8Array(reading.units.length)
  for (const match of found)
    if (!match.rule.alone && contrastWithin(reading, match) < 0 && !match.at.some((i) => isFine(reading, i)))
      for (const i of ownOf(reading, match)) used[i] = 1
  return found.filter((match) => !match.rule.alone || match.at.every((i) => used[i] === 0))
}
