import type { ClassSet } from './class-set.ts'
import type { Compiled } from './compile.ts'
import { type Aside, BREAK, type Unit } from './units.ts'

/** "hi, this is Anna Maria's husband": units from the beginning in which somebody says who they are. */
const MOST_BEFORE = 6
/** Phrases at the beginning among which somebody says who they are. */
const OPENING = 3

/** Whether somebody else writes for the client ("this is her husband typing", "it's Mark, her brother"). */
export function isWrittenFor(
  units: readonly Unit[],
  asides: readonly Aside[],
  { cue }: Compiled,
  anywhere: ClassSet,
): boolean {
  if (anywhere.has(cue.proxy) || isSigned(units, cue, anywhere) || isHere(units, asides, cue)) return true
  if (!anywhere.has(cue.presents) || !anywhere.has(cue.person)) return false
  const opening = asides.find(({ entry }) => entry.has(cue.presents))!.unit
  for (let i = opening + 1; i < units.length && i <= opening + MOST_BEFORE; i++) {
    const { entry, gap } = units[i]!
    if (gap > BREAK.comma || entry.has(cue.me) || entry.has(cue.finding)) return false
    if (entry.has(cue.person)) return gap === BREAK.comma || endsPhrase(units, i)
  }
  return false
}

/** The first phrases of a message, a greeting among them, and the last. */
function endsOf(units: readonly Unit[]): (readonly Unit[])[] {
  const starts = units.flatMap(({ gap }, i) => (i === 0 || gap !== BREAK.none ? [i] : []))
  const phrases = starts.map((start, n) => units.slice(start, starts[n + 1]))
  return phrases.length < 2 ? [] : [...phrases.slice(0, OPENING), phrases.at(-1)!]
}

/** "His girlfriend. He can't ...", "she can't ... (her son)": who writes, as a phrase of its own at one of the ends. */
function isSigned(
  units: readonly Unit[],
  { person, third, me }: Compiled['cue'],
  anywhere: ClassSet,
): boolean {
  if (!anywhere.has(person) || !anywhere.has(third)) return false
  return endsOf(units).some((phrase) => {
    const [one, two] = [phrase.at(0)!.entry, phrase.at(-1)!.entry]
    return phrase.length <= 2 && two.has(person) && (phrase.length === 1 ? !one.has(me) : one.has(third))
  })
}

/** "Hi, partner of Mark here: ..." */
function isHere(
  units: readonly Unit[],
  asides: readonly Aside[],
  { presents, person, me, finding }: Compiled['cue'],
): boolean {
  return endsOf(units)
    .slice(0, -1)
    .some((phrase) => {
      if (phrase.length > MOST_BEFORE || !phrase[0]!.entry.has(person)) return false
      if (phrase.some(({ entry }) => entry.has(me) || entry.has(finding))) return false
      return asides.some(({ entry, unit }) => entry.has(presents) && phrase.includes(units[unit]!))
    })
}

const endsPhrase = (units: readonly Unit[], i: number): boolean =>
  units[i + 1] === undefined || units[i + 1]!.gap !== BREAK.none

/**
 * "She can't pee since noon", "my partner dropped to the floor, what should I do": who begins with another without a name,
 * speaks of nobody else, or asks what to do now, may write for the client.
 */
export function mayBeWrittenFor(
  units: readonly Unit[],
  { cue: { me, person, third, plea, old, past } }: Compiled,
  anywhere: ClassSet,
): boolean {
  if (!anywhere.has(person) && !anywhere.has(third)) return false
  if (anywhere.has(old) || anywhere.has(past)) return false
  if (anywhere.has(plea) || units[0]!.entry.has(third)) return true
  if (anywhere.has(person) || units.some(({ value }) => value !== null)) return false
  return units.every(({ entry }) => !entry.has(me))
}
