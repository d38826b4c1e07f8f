import { careOf, type SignId } from './catalogue.ts'
import type { Judged } from './judge.ts'
import type { Reading } from './match.ts'
import { asks } from './net.ts'
import { BREAK } from './units.ts'

/** Words that may stand between what ought to work and the word for its working. */
const BESIDE = 4

/**
 * "ni orinar puedo", "feeling when I wipe: none": what is denied there is that something works, so it is asked about
 * where it reads like a denial of the sign. "No pain when I wipe" names a trouble and stays denied.
 */
export function workingDenied(reading: Reading): readonly Judged[] {
  const { units, lexicon, context, polarity } = reading
  if (!context.anywhere.hasAny([lexicon.cue.works, lexicon.cue.unfelt])) return NONE
  const found = new Map<SignId, Judged>()
  units.forEach(({ entry }, i) => {
    if (polarity.negated[i] !== 1 || context.other[i] === 2 || context.supposed[i] === 2) return
    for (const id of entry.classes) {
      const sign = lexicon.subjects[id]
      if (sign === undefined || careOf(sign) !== 'emergency' || found.has(sign)) continue
      const works = workBeside(reading, i)
      if (works === null) continue
      const at = [Math.min(i, works), Math.max(i, works)]
      found.set(sign, { match: { rule: asks(sign), at }, verdict: 'unsure' })
    }
  })
  return [...found.values()]
}
const NONE: readonly Judged[] = []

/** The word for working in the same phrase, where no trouble stands in its part of the phrase or in that of the place. */
function workBeside(reading: Reading, place: number): number | null {
  const { units, lexicon } = reading
  const starts = (i: number): boolean => units[i]!.gap !== BREAK.none
  let from = place
  while (from > 0 && !starts(from)) from -= 1
  let to = place
  while (to + 1 < units.length && !starts(to + 1)) to += 1
  const { works, unfelt } = lexicon.cue
  for (let i = Math.max(from, place - BESIDE); i <= Math.min(to, place + BESIDE); i++)
    if (units[i]!.entry.has(works) || units[i]!.entry.has(unfelt))
      return isTroubled(reading, i, from, to) || isTroubled(reading, place, from, to) ? null : i
  return null
}

/** Whether a trouble is named within the same "neither ... nor". */
function isTroubled({ units, lexicon: { cue } }: Reading, at: number, from: number, to: number): boolean {
  const isJoint = (i: number): boolean => units[i]!.entry.has(cue.or)
  let first = at
  while (first > from && !isJoint(first)) first -= 1
  let last = at
  while (last < to && !isJoint(last + 1)) last += 1
  return units.slice(first, last + 1).some(({ entry }) => {
    if (entry.has(cue.well)) return true
    if ([cue.works, cue.unfelt, cue.no, cue.nil, cue.cant].some((one) => entry.has(one))) return false
    return [cue.finding, cue.thing, cue.symptom, cue.odd, cue.fine].some((one) => entry.has(one))
  })
}
