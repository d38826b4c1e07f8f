import type { Token } from '../reply/tokens.ts'
import type { Reading } from './match.ts'
import { BREAK, type Said, type Unit } from './units.ts'

/** How a meaning of the first layer is told in a message; `net` are those of the second layer. */
export const KINDS = ['is', 'denied', 'fine', 'of-other', 'supposed', 'told', 'net'] as const
const TOLD = KINDS.indexOf('told')
const NET = KINDS.indexOf('net')

/** Takes the features of a window: words, word pairs, meanings, and meanings of the second layer near each other. */
export interface Sink {
  word(word: string): void
  stem(word: string): void
  /** Two words in a row, and two with one between them; "^" stands before the first. */
  pair(before: string, word: string): void
  skip(first: string, word: string): void
  meaning(kind: number, id: number): void
  /** Whether anything is kept of a meaning with another after it. */
  opens(first: number): boolean
  near(first: number, second: number): void
}

/** A message as the third layer reads it. */
export interface Features {
  readonly said: Said
  readonly reading: Reading
  readonly net: readonly Unit[]
  /** The classes told in a clause, listed once. */
  readonly told: Map<Uint8Array, readonly number[]>
}

/** Part of a message, by positions in the folded text. */
export interface Window {
  readonly start: number
  readonly end: number
}

/** Units of the second layer up to so many places apart are taken together. */
const NEAR = 5

/** The endings that English and Spanish words lose, so that "leaked" and "leaking" are one. */
const ENDING = /(?:ing|ed|es|s|ly|y|e|ando|iendo|ado|ada|ido|ida|as|os|an|en|a|o)$/

export const stemOf = (word: string): string => (word.length > 4 ? word.replace(ENDING, '') : word)

/** The first of the items, in order, that starts at the position or after it. */
function firstFrom(items: readonly Window[], position: number): number {
  let [low, high] = [0, items.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (items[middle]!.start < position) low = middle + 1
    else high = middle
  }
  return low
}

/** The items within the window, from and to: looked up, so that the cost stays in line with the length. */
const within = (items: readonly Window[], { start, end }: Window): [number, number] => [
  firstFrom(items, start),
  firstFrom(items, end),
]

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
      const parts = gap !== BREAK.none || entry.has[and] === 1 || entry.has[except] === 1
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

/** Numbers differ only where they tell a sign: a pain of 9 or 10, a temperature in °C or °F. */
function numberWord(value: number): string {
  if (value === 9 || value === 10) return '#pain'
  if ((value >= 37.8 && value <= 42.5) || (value >= 100.4 && value <= 107)) return '#fever'
  return '#'
}

/** "38,4" with the comma that many write for a decimal point. */
function valueAt(tokens: readonly Token[], i: number): number {
  const [token, mark, decimals] = [tokens[i]!, tokens[i + 1], tokens[i + 2]]
  const whole = token.value ?? 0
  if (mark?.text !== ',' || mark.start !== token.end || decimals?.start !== mark.end) return whole
  return decimals.kind === 'number' && decimals.end - decimals.start === 1
    ? whole + (decimals.value ?? 0) / 10
    : whole
}

function wordsIn({ said: { tokens, words } }: Features, window: Window, sink: Sink): void {
  let [before, first] = ['^', '^']
  const [from, to] = within(tokens, window)
  for (let i = from; i < to; i++) {
    const word = words[i]
    if (word == null) {
      if (tokens[i]!.text === '?') sink.word('?')
      continue
    }
    if (word.isCourtesy) continue
    const plain = tokens[i]!.kind === 'number' ? numberWord(valueAt(tokens, i)) : word.plain
    sink.word(plain)
    sink.stem(plain)
    sink.pair(before, plain)
    sink.skip(first, plain)
    first = before
    before = plain
  }
}

function toldIn({ told }: Features, clause: Uint8Array): readonly number[] {
  const known = told.get(clause)
  if (known !== undefined) return known
  const ids: number[] = []
  for (let id = 0; id < clause.length; id++) if (clause[id] === 1) ids.push(id)
  told.set(clause, ids)
  return ids
}

function meaningsIn(features: Features, window: Window, sink: Sink): void {
  const { reading } = features
  const { units, context } = reading
  let clause: Uint8Array | null = null
  const [from, to] = within(units, window)
  for (let i = from; i < to; i++) {
    const kind = kindOf(reading, i)
    for (const id of units[i]!.entry.classes) sink.meaning(kind, id)
    const told = context.toldInClause(i)
    if (told === clause) continue
    clause = told
    for (const id of toldIn(features, told)) sink.meaning(TOLD, id)
  }
}

function kindOf({ polarity, context }: Reading, i: number): number {
  if (polarity.negated[i] === 1) return KINDS.indexOf('denied')
  if (polarity.fine[i] === 1) return KINDS.indexOf('fine')
  if (context.other[i] === 2) return KINDS.indexOf('of-other')
  return context.supposed[i] === 2 ? KINDS.indexOf('supposed') : KINDS.indexOf('is')
}

/** Two entries are paired once, so that a message of few words said often costs no more than its words. */
function nearIn({ net }: Features, window: Window, sink: Sink): void {
  const seen = new Map<Unit['entry'], Set<Unit['entry']>>()
  const [from, to] = within(net, window)
  for (let i = from; i < to; i++) {
    const { entry } = net[i]!
    if (entry.classes.length === 0) continue
    let partners = seen.get(entry)
    if (partners === undefined) {
      for (const id of entry.classes) sink.meaning(NET, id)
      partners = new Set()
      seen.set(entry, partners)
    }
    for (let j = i + 1; j <= i + NEAR && j < to; j++) {
      const other = net[j]!
      if (partners.has(other.entry)) continue
      partners.add(other.entry)
      for (const first of entry.classes)
        if (sink.opens(first)) for (const second of other.entry.classes) sink.near(first, second)
    }
  }
}

/** All features of a window, some of them more than once. */
export function featuresIn(features: Features, window: Window, sink: Sink): void {
  wordsIn(features, window, sink)
  meaningsIn(features, window, sink)
  nearIn(features, window, sink)
}
