import { z } from 'zod'
import { SIGN_IDS } from './catalogue.ts'
import { type Book, type BookWord, KINDS, stemOf } from './features.ts'
import type { ClassIds } from './phrase-source.ts'
import type { Word } from './words.ts'

/** What was learned from the texts of `tests/domain/signs/corpus`, by `tests/domain/signs/learn.ts`. */
export const weightsShape = z.strictObject({
  /** From this likelihood on a sign is asked about. */
  ask: z.number().min(0).max(1),
  /** The same where the first layer found the sign and took it back: denied, supposed, of another, long ago. */
  insist: z.number().min(0).max(1),
  /** Below this likelihood a sign that the other layers tell is only asked about. */
  doubt: z.number().min(0).max(1),
  /** Below this one what they ask about is let be. */
  still: z.number().min(0).max(1),
  /** Its weight before any word is read, per sign of `signs`. */
  bias: z.array(z.number()),
  signs: z.array(z.enum(SIGN_IDS)),
  /** "feature|sign weight sign weight", signs by their place in `signs`, weights in tenths. */
  features: z.custom<readonly string[]>(
    (list) => Array.isArray(list) && list.every((one) => typeof one === 'string'),
  ),
})
export type WeightsSource = z.input<typeof weightsShape>

/** The weight of a sign that nothing was learned of. */
const NEVER = -99

/** What was learned of one feature: the number of its row in the table. */
type Row = number

/** What was learned of a word, by itself and before others. */
export class WordRows implements BookWord<Row> {
  word: Row | undefined = undefined
  stem: Row | undefined = undefined
  /** By the number of the other word. */
  readonly pairs = new Map<number, Row>()
  readonly skips = new Map<number, Row>()

  constructor(
    readonly written: string,
    readonly number: number,
  ) {}

  pair({ number }: BookWord<Row>): Row | undefined {
    return number === UNKNOWN || this.pairs.size === 0 ? undefined : this.pairs.get(number)
  }

  skip({ number }: BookWord<Row>): Row | undefined {
    return number === UNKNOWN || this.skips.size === 0 ? undefined : this.skips.get(number)
  }
}

/** Few features are little to go by: they count as if they were so many. */
const FEW = 40
export const scaleOf = (features: number): number => 1 / Math.sqrt(Math.max(FEW, features))

export const likelihood = (evidence: number): number => 1 / (1 + Math.exp(-evidence))

/** How a feature is written in the data: a word as it is, a meaning as "[is pee]", two of them as "[pee + wet-bad]". */
export const writtenMeaning = (kind: number, name: string): string => `[${KINDS[kind]} ${name}]`
export const writtenNear = (first: string, second: string): string => `[${first} + ${second}]`

const STEM = '~'
const SKIP = ' _ '
/** The number of all words that nothing was learned of with others. */
const UNKNOWN = -1
/** Words kept at hand beside those that were learned, so that memory stays bounded whatever people write. */
const REMEMBERED = 8192

/** The weights made ready; throws where they name a class that the lexicon does not have. */
export class Weights implements Book<Row> {
  readonly ask: number
  readonly insist: number
  readonly doubt: number
  readonly still: number
  /** By the place of the sign in the catalogue. */
  readonly bias: readonly number[]
  /** Signs and weights in turn, in tenths, so that sums are of whole numbers: row after row. */
  readonly table: Int16Array
  /** Where each row begins; the next begins where it ends. */
  readonly begins: Int32Array
  /** By the row: the last sum that took it. */
  readonly taken: Float64Array
  private readonly words = new Map<string, WordRows>()
  private readonly stems = new Map<string, Row>()
  private readonly others = new Map<string, WordRows>()
  /** By kind, then by class. */
  private readonly meanings: (Row | undefined)[][] = KINDS.map(() => [])
  /** Rows of two classes near each other, counted from 1: by the first, then by the second. */
  private readonly nears: Int32Array

  /** @param size how many classes there are */
  constructor(
    source: WeightsSource,
    classes: ClassIds,
    private readonly size: number,
  ) {
    const { ask, insist, doubt, still, bias, signs, features } = source
    this.ask = ask
    this.insist = insist
    this.doubt = doubt
    this.still = still
    this.bias = SIGN_IDS.map((sign) => bias[signs.indexOf(sign)] ?? NEVER)
    this.nears = new Int32Array(size * size)
    const places = signs.map((sign) => SIGN_IDS.indexOf(sign))
    const table: number[] = []
    this.begins = new Int32Array(features.length + 1)
    features.forEach((line, row) => {
      const bar = line.indexOf('|')
      this.set(line.slice(0, bar), row, classes)
      addNumbers(table, line, bar + 1)
      this.begins[row + 1] = table.length
    })
    for (let i = 0; i < table.length; i += 2) table[i] = places[table[i]!]!
    this.table = new Int16Array(table)
    this.taken = new Float64Array(features.length)
    for (const [word, rows] of this.words) rows.stem = this.stems.get(stemOf(word))
  }

  private set(written: string, row: Row, classes: ClassIds): void {
    if (written.startsWith('[')) this.setMeaning(written.slice(1, -1).split(' '), row, classes)
    else if (written.startsWith(STEM)) this.stems.set(written.slice(STEM.length), row)
    else this.setWords(written, row)
  }

  private setWords(written: string, row: Row): void {
    const space = written.indexOf(' ')
    const first = this.learned(space < 0 ? written : written.slice(0, space))
    const isSkip = written.startsWith(SKIP, space)
    if (space < 0) first.word = row
    else if (isSkip) first.skips.set(this.learned(written.slice(space + SKIP.length)).number, row)
    else first.pairs.set(this.learned(written.slice(space + 1)).number, row)
  }

  private setMeaning([first, second, third]: readonly string[], row: Row, classes: ClassIds): void {
    if (third !== undefined) this.nears[classes.of(first!) * this.size + classes.of(third)] = row + 1
    else this.meanings[KINDS.indexOf(first as (typeof KINDS)[number])]![classes.of(second!)] = row
  }

  private learned(word: string): WordRows {
    const known = this.words.get(word)
    if (known !== undefined) return known
    const rows = new WordRows(word, this.words.size)
    this.words.set(word, rows)
    return rows
  }

  word(word: string): WordRows {
    const known = this.words.get(word) ?? this.others.get(word)
    if (known !== undefined) return known
    const rows = new WordRows(word, UNKNOWN)
    rows.stem = this.stems.get(stemOf(word))
    if (this.others.size < REMEMBERED) this.others.set(word, rows)
    return rows
  }

  of({ learned }: Word): WordRows {
    return learned!
  }

  meaning(kind: number, id: number): Row | undefined {
    return this.meanings[kind]![id]
  }

  near(first: number, second: number): Row | undefined {
    const row = this.nears[first * this.size + second]!
    return row === 0 ? undefined : row - 1
  }
}

const [SPACE, MINUS, ZERO] = [32, 45, 48]

/** Adds the whole numbers of a line from there on, parted by spaces: there are too many of them to be cut out. */
function addNumbers(numbers: number[], line: string, from: number): void {
  let [value, sign] = [0, 1]
  for (let i = from; i < line.length; i++) {
    const code = line.charCodeAt(i)
    if (code === MINUS) sign = -1
    else if (code !== SPACE) value = 10 * value + sign * (code - ZERO)
    else {
      numbers.push(value)
      ;[value, sign] = [0, 1]
    }
  }
  if (from < line.length) numbers.push(value)
}

let sums = 0

/** Sums the weights of a window, each feature of it once; only one sum is at work at a time. */
export class Sum {
  private own = ++sums
  private features = 0
  private readonly totals: number[] = SIGN_IDS.map(() => 0)
  private readonly told: number[] = SIGN_IDS.map(() => 0)

  constructor(private readonly weights: Weights) {}

  /** Begins anew. */
  clear(): void {
    this.own = ++sums
    this.features = 0
    this.totals.fill(0)
  }

  add(row: Row): void {
    const { table, begins, taken } = this.weights
    if (taken[row] === this.own) return
    taken[row] = this.own
    this.features += 1
    const { totals } = this
    const end = begins[row + 1]!
    for (let i = begins[row]!; i < end; i += 2) totals[table[i]!]! += table[i + 1]!
  }

  /** How much speaks for each sign by now, by its place in the catalogue; 0 is as likely as not. */
  evidence(): readonly number[] {
    const scale = scaleOf(this.features)
    const { bias } = this.weights
    for (let sign = 0; sign < bias.length; sign++)
      this.told[sign] = bias[sign]! + (this.totals[sign]! / 10) * scale
    return this.told
  }
}
