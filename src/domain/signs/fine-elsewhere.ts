import type { Token } from '../reply/tokens.ts'
import type { Compiled } from './compile.ts'
import type { Reading } from './match.ts'
import { BREAK, type Unit } from './units.ts'

/**
 * "I pooed in my sleep and the knee is fine": what stands before and behind a clause in which nothing but another part
 * of the body, or the pain, is said to be fine, each to be looked at by itself; none where there is no such clause.
 */
export function besideFineElsewhere(
  words: readonly Token[],
  { units, lexicon, context }: Reading,
): Token[][] {
  const { cue } = lexicon
  if (!context.anywhere.has(cue.fine)) return []
  const last = units.findLastIndex(({ entry }) => entry.has(cue.fine))
  if (last < 0) return []
  let from = last
  while (from > 0 && !begins(units[from]!, cue)) from -= 1
  let to = last + 1
  while (to < units.length && !begins(units[to]!, cue)) to += 1
  const clause = units.slice(from, to)
  const ofElsewhere = [cue.place, cue.finding, cue.score]
  if (!clause.some(({ entry }) => entry.hasAny(ofElsewhere))) return []
  if (clause.some(({ entry }) => entry.has(cue.topic))) return []
  const [start, end] = [units[from]!.start, units[to - 1]!.end]
  const sides = [words.filter((word) => word.start < start), words.filter((word) => word.start >= end)]
  return sides.filter((side) => side.length > 0)
}

const begins = ({ entry, gap }: Unit, { and, or, contrast }: Compiled['cue']): boolean =>
  gap !== BREAK.none || entry.has(and) || entry.has(or) || entry.has(contrast)
