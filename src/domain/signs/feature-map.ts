import type { Token } from '../reply/tokens.ts'
import type { ClassSet } from './class-set.ts'
import type { Book, Features } from './features.ts'
import type { Reading } from './match.ts'
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
  take(from: number, to: number, take: (feature: T) => void): void {
    const end = this.ends[to]!
    for (let i = this.ends[from]!; i < end; i++) take(this.features[i]!)
  }
}

/** Features of two entries near each other, taken once a window: what is said often costs no more than its words. */
interface Pair<T> {
  readonly features: T[]
  /** The last window that took them. */
  taken: number
}

const START = '^'

/** The features of a message in their places, looked up once: every window takes its part of them. */
export class FeatureMap<T> {
  /** The words by token; null for what is none. */
  private readonly spoken: (string | null)[] = []
  /** Two places a token: by itself, and with the words before it. */
  private readonly words = new Places<T>()
  /** A place a unit: its meanings and, where a clause begins, what is told in it. */
  private readonly meanings = new Places<T>()
  /** The same of whole clauses, and the clause of each unit. */
  private readonly clauses = new Places<T>()
  private readonly clause: number[] = []
  /** Units of the second layer by themselves, and each with those after it. */
  private readonly net = new Places<T>()
  private readonly near: (Pair<T> | null)[] = []
  /** How many were taken, the present one with them. */
  private window = 0

  constructor(
    private readonly features: Features,
    private readonly book: Book<T>,
  ) {
    this.addWords()
    this.addMeanings()
    this.addNet()
  }

  /** All features of a window, some of them more than once. */
  within(window: Window, take: (feature: T) => void): void {
    this.wordsWithin(window, take)
    this.meaningsWithin(window, take)
    this.netWithin(window, take)
  }

  private addWords(): void {
    const { words, book } = this
    const { tokens, words: said } = this.features.said
    let [before, first] = [START, START]
    for (let i = 0; i < tokens.length; i++) {
      const written = said[i]
      const word = written == null || written.isCourtesy ? null : wordAt(tokens, i, written)
      this.spoken.push(word)
      if (tokens[i]!.text === '?') words.add(book.word('?'))
      if (word !== null) {
        words.add(book.word(word))
        words.add(book.stem(word))
      }
      words.close()
      if (word !== null) {
        words.add(book.pair(before, word))
        words.add(book.skip(first, word))
        first = before
        before = word
      }
      words.close()
    }
  }

  /** The first two words have none before them in the window. */
  private wordsWithin({ start, end }: Window, take: (feature: T) => void): void {
    const { tokens } = this.features.said
    let [before, first] = [START, START]
    let i = firstFrom(tokens, start)
    const to = firstFrom(tokens, end)
    for (; i < to && first === START; i++) {
      this.words.take(2 * i, 2 * i + 1, take)
      const word = this.spoken[i]
      if (word == null) continue
      const [pair, skip] = [this.book.pair(before, word), this.book.skip(first, word)]
      if (pair !== undefined) take(pair)
      if (skip !== undefined) take(skip)
      first = before
      before = word
    }
    this.words.take(2 * i, 2 * to, take)
  }

  private addMeanings(): void {
    const { meanings, clauses, book } = this
    const { reading } = this.features
    let told: ClassSet | null = null
    reading.units.forEach(({ entry }, i) => {
      const kind = kindOf(reading, i)
      for (const id of entry.classes) meanings.add(book.meaning(kind, id))
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
    })
  }

  private meaningsWithin({ start, end }: Window, take: (feature: T) => void): void {
    const { units } = this.features.reading
    const [from, to] = [firstFrom(units, start), firstFrom(units, end)]
    if (from >= to) return
    const clause = this.clause[from]!
    this.meanings.take(from, from + 1, take)
    this.clauses.take(clause, clause + 1, take)
    this.meanings.take(from + 1, to, take)
  }

  private addNet(): void {
    const units = this.features.net
    const pairs = new Map<Entry, Map<Entry, Pair<T>>>()
    for (let i = 0; i < units.length; i++) {
      const { entry } = units[i]!
      for (const id of entry.classes) this.net.add(this.book.meaning(NET, id))
      this.net.close()
      const known = pairs.get(entry) ?? new Map<Entry, Pair<T>>()
      pairs.set(entry, known)
      for (let j = i + 1; j <= i + NEAR; j++)
        this.near.push(j < units.length ? this.pairOf(entry, units[j]!.entry, known) : null)
    }
  }

  private pairOf(first: Entry, second: Entry, known: Map<Entry, Pair<T>>): Pair<T> | null {
    if (first.classes.length === 0 || second.classes.length === 0) return null
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

  private netWithin({ start, end }: Window, take: (feature: T) => void): void {
    const units = this.features.net
    const to = firstFrom(units, end)
    const window = ++this.window
    for (let i = firstFrom(units, start); i < to; i++) {
      this.net.take(i, i + 1, take)
      for (let k = 0; k < NEAR && i + k + 1 < to; k++) {
        const pair = this.near[i * NEAR + k]
        if (pair == null || pair.taken === window) continue
        pair.taken = window
        for (const feature of pair.features) take(feature)
      }
    }
  }
}

function wordAt(tokens: readonly Token[], i: number, { plain }: Word): string {
  return tokens[i]!.kind === 'number' ? numberWord(valueAt(tokens, i)) : plain
}

function kindOf({ polarity, context }: Reading, i: number): number {
  if (polarity.negated[i] === 1) return DENIED
  if (polarity.fine[i] === 1) return FINE
  if (context.other[i] === 2) return OF_OTHER
  return context.supposed[i] === 2 ? SUPPOSED : IS
}
