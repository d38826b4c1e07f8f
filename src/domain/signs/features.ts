import type { Reading } from './match.ts'
import type { Said, Unit } from './units.ts'
import type { Word } from './words.ts'

/** How a meaning of the first layer is told in a message; `net` are those of the second layer. */
export const KINDS = ['is', 'denied', 'fine', 'of-other', 'supposed', 'told', 'net'] as const

/** The features of a word: by itself, its stem, and with the word that follows or the one after that. */
export interface BookWord<T> {
  readonly written: string
  readonly number: number
  readonly word: T | undefined
  readonly stem: T | undefined
  pair(next: BookWord<T>): T | undefined
  skip(next: BookWord<T>): T | undefined
}

/** What is known of a feature: to learn by, its name; to weigh it, what was learned. Undefined where nothing is. */
export interface Book<T> {
  /** "^" is what stands before the first word. */
  word(word: string): BookWord<T>
  of(word: Word): BookWord<T>
  meaning(kind: number, id: number): T | undefined
  /** Meanings of the second layer near each other. */
  near(first: number, second: number): T | undefined
}

/** A message as the third layer reads it. */
export interface Features {
  readonly said: Said
  readonly reading: Reading
  readonly net: readonly Unit[]
}

/** The endings that English and Spanish words lose, so that "leaked" and "leaking" are one. */
const ENDING = /(?:ing|ed|es|s|ly|y|e|ando|iendo|ado|ada|ido|ida|as|os|an|en|a|o)$/

export const stemOf = (word: string): string => (word.length > 4 ? word.replace(ENDING, '') : word)
