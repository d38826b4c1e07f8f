import { careOf } from './catalogue.ts'
import { contrastWithin, type Match, type Reading } from './match.ts'
import { BREAK, FARTHEST } from './units.ts'

export type Verdict = 'sure' | 'unsure' | 'denied' | 'dropped'

export interface Judged {
  readonly match: Match
  readonly verdict: Verdict
  /** Nothing but the third layer asks about it. */
  readonly isGuess?: true
}

export const isTold = ({ verdict }: Judged): boolean => verdict === 'sure' || verdict === 'unsure'

/** Thoughts of self-harm are asked about where any other sign would be history, a worry or a denial. */
const NEVER_DROPPED = 'self-harm'
/** What was felt all along in one leg is how reach is felt, no sign. */
const FELT_ALL_ALONG = 'new-numbness'
/** A history is the very thing this sign tells. */
const HISTORY = 'cancer-history'
function highest(flags: Uint8Array, at: readonly number[]): number {
  let most = 0
  for (const i of at) most = Math.max(most, flags[i]!)
  return most
}

/** "no fever, calf swelling since yesterday": a further item of a list, or news; asked. */
function isNewsInList({ polarity, context, lexicon }: Reading, { at }: Match): boolean {
  const denied = at.filter((i) => polarity.negated[i] === 1)
  if (!denied.every((i) => polarity.listed[i] === 1)) return false
  return context.toldInPhrase(at.at(-1)!).has(lexicon.cue.spread)
}

function negation(reading: Reading, match: Match): Verdict | null {
  // "no pain there but numb": what stands before the contrast is only the place of what follows it
  const contrast = contrastWithin(reading, match)
  const level = highest(
    reading.polarity.negated,
    match.at.filter((i) => i >= contrast),
  )
  if (level === 0 || match.rule.isNegative) return null
  if (level > 1 || isNewsInList(reading, match)) return match.rule.denialOnly ? 'dropped' : 'unsure'
  const { thing } = reading.lexicon.cue
  const isNamed = match.at.some((i) => reading.units[i]!.entry.has(thing))
  return match.rule.sign === NEVER_DROPPED && !isNamed ? 'unsure' : 'denied'
}

/** The subject was said to be fine, and nothing between takes that back. */
function saidFine(reading: Reading, match: Match): boolean {
  const { place, topic } = reading.lexicon.cue
  const last = match.at.length - 1
  return match.at.some((i, k) => {
    if (reading.polarity.fine[i] !== 1) return false
    const { entry } = reading.units[i]!
    const nextIsFinding = k < last && match.at.slice(k + 1).some((j) => j > i)
    return (entry.has(place) || entry.has(topic)) && !nextIsFinding
  })
}

/** "the pain has gone, I have a fever": what is told to be gone stands with the finding or after it. */
function isGone({ units, context, lexicon }: Reading, { at }: Match): boolean {
  const last = at.at(-1)! + FARTHEST
  for (let i = at[0]!; i < units.length; i++) {
    if (i > last || context.toldInPhrase(i).has(lexicon.cue.gone)) return true
    if (i > at[0]! && units[i]!.gap >= BREAK.contrast) return false
  }
  return false
}

/** "last year I broke my arm, I can't pee": what is long ago stands in a sentence of its own, and is no mere date. */
function isDatedApart({ units, context, lexicon }: Reading, { at, rule }: Match): boolean {
  if (careOf(rule.sign) !== 'emergency') return false
  const { old, me, finding } = lexicon.cue
  if (at.some((i) => context.toldInPhrase(i).has(old))) return false
  const last = Math.min(units.length, at.at(-1)! + FARTHEST)
  for (let i = Math.max(0, at[0]! - FARTHEST); i < last; i++) {
    const told = context.toldInPhrase(i)
    if (told.has(old) && (told.has(me) || told.has(finding))) return true
  }
  return false
}

function time(reading: Reading, match: Match): Verdict | null {
  const { sign } = match.rule
  const { cue } = reading.lexicon
  const told = reading.context.toldInClause(match.at.at(-1)!)
  const isEmergency = careOf(sign) === 'emergency'
  if (told.has(cue.old) && !told.has(cue.ongoing))
    return sign === HISTORY || sign === NEVER_DROPPED || isDatedApart(reading, match) ? 'unsure' : 'dropped'
  if (told.has(cue.past) && !told.has(cue.ongoing)) return isEmergency ? 'unsure' : 'dropped'
  const isLoss = match.at.some((i) => reading.units[i]!.entry.has(cue.lost))
  if (told.has(cue.gone) && !isLoss) return isEmergency || !isGone(reading, match) ? 'unsure' : 'dropped'
  if (told.has(cue.ended) && !isLoss) return 'unsure'
  if (!told.has(cue.always)) return null
  if (sign === FELT_ALL_ALONG) return 'dropped'
  return isEmergency ? 'unsure' : null
}

/** "I read about numbness down there and I have that", "... numbness. I have it now": with word of what is. */
function isActual({ context, lexicon }: Reading, { at }: Match): boolean {
  const { admitted, actual } = lexicon.cue
  const told = context.told(at[0]!)
  return told.has(admitted) || told.has(actual) || context.toldNext(at[0]!)?.has(admitted) === true
}

function certainty(reading: Reading, match: Match): Verdict {
  const { rule, at } = match
  const { context, lexicon } = reading
  const supposed = highest(context.supposed, at)
  if (supposed === 2) return rule.sign === NEVER_DROPPED || isActual(reading, match) ? 'unsure' : 'dropped'
  const isDoubted = context.toldInClause(at[0]!).has(lexicon.cue.doubt)
  if (supposed === 1 || isDoubted || context.isQuestion(at[0]!)) return 'unsure'
  if (!rule.unsure) return 'sure'
  return rule.sure !== null && context.told(at[0]!).has(rule.sure) ? 'sure' : 'unsure'
}

/** "My husband's touch, I felt nothing": who is named with a finding is not always the one who has it. */
function whoseIt({ context, units, lexicon }: Reading, { at }: Match): number {
  const felt = at.filter((i) => !units[i]!.entry.has(lexicon.cue.person))
  return highest(context.other, felt.length > 0 ? felt : at)
}

/** "I read about it and have it", "this is her husband typing, she collapsed": another's in words, and theirs all the same. */
function isOfClient({ context, lexicon }: Reading, { at, rule }: Match): boolean {
  if (context.told(at[0]!).has(lexicon.cue.admitted) || context.isWrittenFor) return true
  return context.mayBeWrittenFor && careOf(rule.sign) === 'emergency'
}

/** What one match amounts to, given who, when and how it was said. When in doubt: unsure, never dropped. */
export function judge(reading: Reading, match: Match): Verdict {
  const other = whoseIt(reading, match)
  if (other === 2) return isOfClient(reading, match) ? 'unsure' : 'dropped'
  if (match.rule.isDenial) return 'denied'
  const negated = negation(reading, match)
  if (negated !== null) return highest(reading.context.supposed, match.at) === 2 ? 'dropped' : negated
  if (match.rule.denialOnly || saidFine(reading, match)) return 'dropped'
  const verdict = time(reading, match) ?? certainty(reading, match)
  return other === 1 && verdict === 'sure' ? 'unsure' : verdict
}
