import type { Token } from '../reply/tokens.ts'
import type { Reading } from './match.ts'
import { BREAK } from './units.ts'

/**
 * "I pooed in my sleep and the knee is fine": what stands before and behind a clause in which nothing but another part
 * of the body, or the pain, is said to be fine, each to be looked at by itself; none where there is no such clause.
 */
export function besideFineElsewhere(words: readonly Token[], { units, lexicon }: Reading): Token[][] {
  const { fine, place, finding, score, topic, and, or, contrast } = lexicon.cue
  const is = (i: number, ...cues: readonly number[]): boolean => cues.some((cue) => units[i]!.entry.has(cue))
  const begins = (i: number): boolean => units[i]!.gap !== BREAK.none || is(i, and, or, contrast)
  const last = units.findLastIndex((_, i) => is(i, fine))
  if (last < 0) return []
  let from = last
  while (from > 0 && !begins(from)) from -= 1
  let to = last + 1
  while (to < units.length && !begins(to)) to += 1
  const clause = Array.from({ length: to - from }, (_, n) => from + n)
  if (!clause.some((i) => is(i, place, finding, score)) || clause.some((i) => is(i, topic))) return []
  const [start, end] = [units[from]!.start, units[to - 1]!.end]
  const sides = [words.filter((word) => word.start < start), words.filter((word) => word.start >= end)]
  return sides.filter((side) => side.length > 0)
}
