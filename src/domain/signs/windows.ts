import type { Reading } from './match.ts'
import { BREAK } from './units.ts'

/** Part of a message, by positions in the folded text. */
export interface Window {
  readonly start: number
  readonly end: number
}

/** A message of more sentences than people write is read by several sentences at once. */
const MOST_SENTENCES = 40
/** Phrases of a sentence that are looked at by themselves. */
const MOST_PHRASES = 12

interface Sentence {
  readonly start: number
  end: number
  contrast: number
  readonly phrases: Window[]
}

/**
 * Every sentence, alone and with the one after it, what stands after the last contrast of a sentence, and its phrases
 * between commas, contrasts, "and" and "except", alone and with the one after: what is told in one of them must not be lost among the others.
 */
export function windowsOf({ units, lexicon }: Reading): Window[] {
  const sentences: Sentence[] = []
  const ends = units.filter(({ gap }) => gap === BREAK.sentence).length
  const together = Math.ceil((ends + 1) / MOST_SENTENCES)
  let sentence = 0
  const { and, except } = lexicon.cue
  for (const { entry, gap, start, end } of units) {
    const last = sentences.at(-1)
    if (gap === BREAK.sentence) sentence += 1
    if (last === undefined || sentence >= sentences.length * together)
      sentences.push({ start, end, contrast: -1, phrases: [{ start, end }] })
    else {
      last.end = end
      if (gap === BREAK.contrast) last.contrast = end
      const parts = gap !== BREAK.none || entry.has(and) || entry.has(except)
      if (parts && last.phrases.length < MOST_PHRASES) last.phrases.push({ start, end })
      else last.phrases[last.phrases.length - 1] = { start: last.phrases.at(-1)!.start, end }
    }
  }
  return sentences.flatMap(({ start, end, contrast, phrases }, i) => {
    const next = sentences[i + 1]
    return [
      { start, end },
      ...(next === undefined ? [] : [{ start, end: next.end }]),
      ...(contrast >= 0 && contrast < end ? [{ start: contrast, end }] : []),
      ...(phrases.length > 1 ? phrases : []),
      ...(phrases.length > 2
        ? phrases.slice(1).map((phrase, k) => ({ start: phrases[k]!.start, end: phrase.end }))
        : []),
    ]
  })
}
