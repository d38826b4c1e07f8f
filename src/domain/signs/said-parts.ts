import type { Token } from '../reply/tokens.ts'
import { writtenFor } from './classifier.ts'
import type { Features } from './features.ts'
import { BREAK } from './units.ts'
import { type Window, windowsOf } from './windows.ts'

/** Marks that it reads; greetings, thanks and smileys change nothing. */
const MARKS = ['.', ',', ';', ':', '?', '!', '/', '-']

/** A message as the fourth layer reads it; what few messages need is made when it is asked for. */
export interface SaidParts {
  /** How many words and numbers it has. */
  readonly length: number
  /** All of it, a sentence said twice only once; the marks that close a sentence count where they ask. */
  readonly whole: readonly string[]
  /** The same without its figures of speech; null where it has none. */
  readonly literal: readonly string[] | null
  /** Each sentence and its parts, where it has some. */
  readonly parts: readonly { readonly window: Window; readonly words: readonly string[] }[]
}

export function saidPartsOf({ said, reading }: Features): SaidParts {
  const begins = reading.units
    .filter(({ gap }, i) => i > 0 && gap === BREAK.sentence)
    .map(({ start }) => start)
  const { chatter, cue } = reading.lexicon
  const isChatter = (text: string, i: number): boolean =>
    [text, `${said.tokens[i - 1]?.text} ${text}`, `${text} ${said.tokens[i + 1]?.text}`].some((one) =>
      chatter.has(one),
    )
  const read = said.tokens.filter(({ kind, text }, i) =>
    kind === 'mark' ? MARKS.includes(text) : !isChatter(text, i),
  )
  const within = (from: number, to: number): string[] =>
    wordsOf(read.filter(({ start }) => start >= from && start < to))
  const bounds = [0, ...begins, Number.POSITIVE_INFINITY]
  const sentences = bounds.slice(1).map((to, i) => within(bounds[i]!, to))
  const unlike = [...new Map(sentences.map((words) => [words.join(' '), words])).values()]
  const whole = unlike
    .filter((words) => words.length > 0)
    .flatMap((words, i) => (i === 0 ? words : ['.', ...words]))
  return {
    length: whole.filter((word) => !MARKS.includes(word)).length,
    whole,
    get literal() {
      const figures = reading.units.filter(({ entry }) => entry.has(cue.idiom))
      const isFigure = ({ start, end }: Token): boolean =>
        figures.some((one) => start >= one.start && end <= one.end)
      return figures.length === 0 ? null : wordsOf(read.filter((token) => !isFigure(token)))
    },
    get parts() {
      return windowsOf(reading)
        .filter(({ start, end }) => !begins.some((begin) => begin > start && begin < end))
        .map((window) => ({ window, words: within(window.start, window.end) }))
        .filter(({ words }) => words.length > 0)
    },
  }
}

/** Without the marks at both ends, but for a question. */
function wordsOf(tokens: readonly Token[]): string[] {
  const isWord = ({ kind }: Token): boolean => kind !== 'mark'
  const [first, last] = [tokens.findIndex(isWord), tokens.findLastIndex(isWord)]
  if (first < 0) return []
  const words = tokens.slice(first, last + 1).map(({ text, value }) => writtenFor(text, value))
  return tokens.slice(last + 1).some(({ text }) => text === '?') ? [...words, '?'] : words
}
