import type { ClassSet } from './class-set.ts'
import type { Book, BookWord, Features } from './features.ts'
import type { Reading } from './match.ts'
import { numberWord } from './number-words.ts'
import type { Entry } from './phrases.ts'
import type { Window } from './windows.ts'
import type { Word } from './words.ts'

/** Places in `KINDS`. */
const [IS, DENIED, FINE, OF_OTHER, SUPPOSED, TOLD, NET] = [0, 1, 2, 3, 4, 5, 6]

/** Units of the second layer up to so many places apart are taken together. */
const NEAR = 5

/** The first of the items that starts at the position or after it: looked up, so that cost stays in line with length. */
function firstFrom(items: readonly Window[], position: number): number {
  let [low, high] = [0, items.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (items[middle]!.start < position) low = middle + 1
    else high = middle
  }
  return low
}

/** Features by place, in a row, so that those of places side by side are taken at one go. */
class Places<T> {
  private readonly features: T[] = []
  private readonly ends: number[] = [0]

  add(feature: T | undefined): void {
    if (feature !== undefined) this.features.push(feature)
  }

  close(): void {
    this.ends.push(this.features.length)
  }

  /** Those of the places from one up to another. */
  take(from: number, to: number, taker: Taker<T>): void {
    const end = this.ends[to]!
    for (let i = this.ends[from]!; i < end; i++) taker.add(this.features[i]!)
  }
}

/** Whoever counts the features of a window; some are told more than once. */
export interface Taker<T> {
  add(feature: T): void
}

/** Features of two entries near each other, taken once a window: what is said often costs no more than its words. */
interface Pair<T> {
  readonly features: T[]
  /** The last beginning from which they were taken. */
  taken: number
}

const START = '^'

/** The features of a message in their places, looked up once: every window takes its part of them. */
export class FeatureMap<T> {
  /** The words by token; null for what is none. */
  readonly spoken: (BookWord<T> | null)[] = []
  /** Two places a token: by itself, and with the words before it. */
  readonly words = new Places<T>()
  /** A place a unit: its meanings and, where a clause begins, what is told in it. */
  readonly meanings = new Places<T>()
  /** The same of whole clauses, and the clause of each unit. */
  readonly clauses = new Places<T>()
  readonly clause: number[] = []
  /** Units of the second layer by themselves, and each with those before it, nearest first. */
  readonly net = new Places<T>()
  readonly near: (Pair<T> | null)[] = []
  readonly start: BookWord<T>
  private begun = 0

  constructor(
    readonly features: Features,
    private readonly book: Book<T>,
  ) {
    this.start = book.word(START)
    this.addWords()
    this.addMeanings()
    this.addNet()
  }

  /** The windows that begin at a position, to be taken from the shortest to the longest. */
  from(position: number): Windows<T> {
    return new Windows(this, position, ++this.begun)
  }

  private addWords(): void {
    const { words, book } = this
    const { tokens, words: said } = this.features.said
    let [before, first] = [this.start, this.start]
    for (let i = 0; i < tokens.length; i++) {
      const written = said[i]
      const word = written == null || written.isCourtesy ? null : this.wordAt(i, written)
      this.spoken.push(word)
      if (tokens[i]!.text === '?') words.add(book.word('?').word)
      words.add(word?.word)
      words.add(word?.stem)
      words.close()
      if (word !== null) {
        words.add(before.pair(word))
        words.add(first.skip(word))
        first = before
        before = word
      }
      words.close()
    }
  }

  private wordAt(i: number, word: Word): BookWord<T> {
    const { tokens } = this.features.said
    return tokens[i]!.kind === 'number' ? this.book.word(numberWord(tokens, i)) : this.book.of(word)
  }

  private addMeanings(): void {
    const { meanings, clauses, book } = this
    const { reading } = this.features
    let told: ClassSet | null = null
    for (let i = 0; i < reading.units.length; i++) {
      const kind = kindOf(reading, i)
      for (const id of reading.units[i]!.entry.classes) meanings.add(book.meaning(kind, id))
      const here = reading.context.toldInClause(i)
      if (here !== told) {
        for (const id of here.ids()) {
          const feature = book.meaning(TOLD, id)
          meanings.add(feature)
          clauses.add(feature)
        }
        clauses.close()
      }
      this.clause.push((this.clause.at(-1) ?? -1) + (here === told ? 0 : 1))
      told = here
      meanings.close()
    }
  }

  private addNet(): void {
    const units = this.features.net
    const pairs = new Map<Entry, Map<Entry, Pair<T>>>()
    for (let i = 0; i < units.length; i++) {
      const { entry } = units[i]!
      for (const id of entry.classes) this.net.add(this.book.meaning(NET, id))
      this.net.close()
      for (let j = i - 1; j >= i - NEAR; j--)
        this.near.push(j < 0 ? null : this.pairOf(units[j]!.entry, entry, pairs))
    }
  }

  private pairOf(first: Entry, second: Entry, pairs: Map<Entry, Map<Entry, Pair<T>>>): Pair<T> | null {
    if (first.classes.length === 0 || second.classes.length === 0) return null
    const known = pairs.get(first) ?? new Map<Entry, Pair<T>>()
    pairs.set(first, known)
    const before = known.get(second)
    if (before !== undefined) return before
    const pair: Pair<T> = { features: [], taken: 0 }
    known.set(second, pair)
    for (const one of first.classes)
      for (const other of second.classes) {
        const feature = this.book.near(one, other)
        if (feature !== undefined) pair.features.push(feature)
      }
    return pair
  }
}

/** Windows that begin at one position: each goes on where the one before has ended. */
class Windows<T> {
  /** Up to where the features were taken, in tokens, units and units of the second layer. */
  private token: number
  private unit: number
  private netUnit: number
  /** The first two words have none before them in the window. */
  private before: BookWord<T>
  private first: BookWord<T>
  private readonly firstNet: number
  private hasClause = false

  constructor(
    private readonly map: FeatureMap<T>,
    position: number,
    private readonly begun: number,
  ) {
    const { said, reading, net } = map.features
    this.token = firstFrom(said.tokens, position)
    this.unit = firstFrom(reading.units, position)
    this.firstNet = this.netUnit = firstFrom(net, position)
    this.before = this.first = map.start
  }

  /** The features up to a position, beside those that were taken before. */
  upTo(position: number, taker: Taker<T>): void {
    const { said, reading, net } = this.map.features
    this.takeWords(firstFrom(said.tokens, position), taker)
    this.takeMeanings(firstFrom(reading.units, position), taker)
    this.takeNet(firstFrom(net, position), taker)
  }

  private takeWords(to: number, taker: Taker<T>): void {
    const { words, spoken, start } = this.map
    for (; this.token < to && this.first === start; this.token++) {
      words.take(2 * this.token, 2 * this.token + 1, taker)
      const word = spoken[this.token]
      if (word == null) continue
      const [pair, skip] = [this.before.pair(word), this.first.skip(word)]
      if (pair !== undefined) taker.add(pair)
      if (skip !== undefined) taker.add(skip)
      this.first = this.before
      this.before = word
    }
    words.take(2 * this.token, 2 * to, taker)
    this.token = to
  }

  private takeMeanings(to: number, taker: Taker<T>): void {
    const { meanings, clauses, clause } = this.map
    if (this.unit >= to) return
    if (!this.hasClause) clauses.take(clause[this.unit]!, clause[this.unit]! + 1, taker)
    this.hasClause = true
    meanings.take(this.unit, to, taker)
    this.unit = to
  }

  private takeNet(to: number, taker: Taker<T>): void {
    const { net, near } = this.map
    net.take(this.netUnit, to, taker)
    for (let i = this.netUnit; i < to; i++)
      for (let k = 0; k < NEAR && i - k > this.firstNet; k++) {
        const pair = near[i * NEAR + k]
        if (pair == null || pair.taken === this.begun) continue
        pair.taken = this.begun
        for (const feature of pair.features) taker.add(feature)
      }
    this.netUnit = to
  }
}

function kindOf({ polarity, context }: Reading, i: number): number {
  if (polarity.negated[i] === 1) return DENIED
  if (polarity.fine[i] === 1) return FINE
  if (context.other[i] === 2) return OF_OTHER
  return context.supposed[i] === 2 ? SUPPOSED : IS
}
