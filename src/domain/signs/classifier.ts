import { z } from 'zod'
import { SIGN_IDS } from './catalogue.ts'

const likelihood = z.number().min(0).max(1)

/** What `tests/domain/signs/learn-classifier.ts` wrote down: numbers as bytes, coded in base64. */
export const classifierShape = z.strictObject({
  limits: z.strictObject({
    /** Below this likelihood of every sign an emergency that the other layers only ask about is let be. */
    still: likelihood,
    /** Below this one any other sign. */
    stillOther: likelihood,
    /** Below this one what nothing but the third layer asks about. */
    agrees: likelihood,
    /** From this likelihood on a sign is asked about. */
    ask: likelihood,
  }),
  signs: z.array(z.enum(SIGN_IDS)),
  /** The words that it knows, parted by spaces. */
  words: z.string(),
  /** How many kinds of pieces of words it tells apart. */
  pieces: z.number().int().positive(),
  /** By the name of the table: what a byte of it is worth, and its bytes. */
  tables: z.record(z.string(), z.strictObject({ step: z.number().positive(), bytes: z.string() })),
})
export type ClassifierSource = z.input<typeof classifierShape>

/** Numbers a word is told by. */
export const DIMENSIONS = 96
/** How many words in a row a filter looks at. */
export const WIDTHS = [1, 2, 3, 4, 5] as const
/** Filters of each width. */
export const FILTERS = 160
export const POOLED = FILTERS * WIDTHS.length
export const HIDDEN = 128
/** Few people write longer messages, and of those nothing is said. */
export const MOST_WORDS = 96

/** Pieces of a word ("<pee>": "<pe", "pee", "ee>", "<pee", "pee>"), so that a slip of it or one never met is like it. */
export function piecesOf(word: string, kinds: number): number[] {
  const whole = `<${word}>`
  const pieces: number[] = []
  for (const length of [3, 4])
    for (let i = 0; i + length <= whole.length && pieces.length < MOST_PIECES; i++)
      pieces.push(hashOf(whole, i, i + length) % kinds)
  return pieces
}
const MOST_PIECES = 20

/** FNV-1a (Fowler, Noll, Vo; public domain). */
function hashOf(text: string, from: number, to: number): number {
  let hash = 0x811c9dc5
  for (let i = from; i < to; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193)
  return hash >>> 0
}

/** Numbers above this say no more than "many". */
const MANY = 12
/** How a token is written for it: a number by its whole part. */
export const writtenFor = (text: string, value?: number): string =>
  value === undefined ? text : String(Math.min(MANY, Math.floor(value)))

/** The tables it is made of. */
interface Tables {
  /** A row of `DIMENSIONS` for each word, first of all for those not known. */
  readonly words: Float32Array
  readonly pieces: Float32Array
  /** By the width: `FILTERS` rows of width times `DIMENSIONS`, and what each filter adds. */
  readonly filters: readonly Float32Array[]
  readonly filterBias: readonly Float64Array[]
  readonly hidden: Float32Array
  readonly hiddenBias: Float32Array
  readonly out: Float32Array
  readonly outBias: Float32Array
}

/** The numbers of a word: its own and the mean of its pieces'. */
function rowOf(
  { words, pieces }: Pick<Tables, 'words' | 'pieces'>,
  word: { readonly id: number; readonly pieces: readonly number[] },
): Float32Array {
  const from = word.id * DIMENSIONS
  const row = words.slice(from, from + DIMENSIONS)
  const share = 1 / Math.max(1, word.pieces.length)
  for (const piece of word.pieces)
    for (let d = 0; d < DIMENSIONS; d++) row[d]! += pieces[piece * DIMENSIONS + d]! * share
  return row
}

/** In four sums, which a processor makes at once; `size` is a multiple of four. */
function dot(a: Float32Array, fromA: number, b: Float32Array, fromB: number, size: number): number {
  let first = 0
  let second = 0
  let third = 0
  let fourth = 0
  for (let i = 0; i < size; i += 4) {
    first += a[fromA + i]! * b[fromB + i]!
    second += a[fromA + i + 1]! * b[fromB + i + 1]!
    third += a[fromA + i + 2]! * b[fromB + i + 2]!
    fourth += a[fromA + i + 3]! * b[fromB + i + 3]!
  }
  return first + second + third + fourth
}

/** A column of the table for each input, times the input, and the bias; four at once, most inputs are nothing. */
function layer(columns: Float32Array, bias: Float32Array, inputs: Float64Array): Float64Array {
  const sums = Float64Array.from(bias)
  const size = sums.length
  const told: number[] = []
  for (let i = 0; i < inputs.length; i++) if (inputs[i] !== 0) told.push(i)
  // any that tells nothing fills up the last four
  const nothing = inputs.indexOf(0)
  while (told.length % 4 !== 0) told.push(nothing)
  for (let k = 0; k < told.length; k += 4) {
    const [a, b, c, d] = [told[k]!, told[k + 1]!, told[k + 2]!, told[k + 3]!]
    const [byA, byB, byC, byD] = [inputs[a]!, inputs[b]!, inputs[c]!, inputs[d]!]
    const [atA, atB, atC, atD] = [a * size, b * size, c * size, d * size]
    for (let j = 0; j < size; j++)
      sums[j]! +=
        byA * columns[atA + j]! + byB * columns[atB + j]! + byC * columns[atC + j]! + byD * columns[atD + j]!
  }
  return sums
}

/** Its rows as columns. */
function turned(table: Float32Array, columns: number): Float32Array {
  const rows = table.length / columns
  const turned = new Float32Array(table.length)
  for (let i = 0; i < rows; i++)
    for (let j = 0; j < columns; j++) turned[j * rows + i] = table[i * columns + j]!
  return turned
}

const sigmoid = (x: number): number => 1 / (1 + Math.exp(-x))

/** What a word adds to each filter, by its place among the words that the filter looks at. */
type Parts = Float32Array
const PLACES = WIDTHS.reduce((sum, width) => sum + width, 0)
/** Words whose parts are kept at hand, those met last: a language in daily use, at ten kilobytes each. */
const REMEMBERED = 4096

/**
 * The fourth layer: a convolutional classifier of sentences (Kim 2014, EMNLP 1746) learned from the corpus. It reads
 * the words in their order, which the third does not.
 */
export class Classifier {
  readonly limits: ClassifierSource['limits']
  private readonly tables: Tables
  private readonly ids: ReadonlyMap<string, number>
  private readonly known = new Map<string, Parts>()

  constructor(private readonly source: ClassifierSource) {
    this.limits = source.limits
    this.tables = tablesOf(source)
    this.ids = new Map(source.words.split(' ').map((word, i) => [word, i + 1]))
  }

  /** How likely each sign is told by these words, one at least, by its place in the catalogue; null where they are too many. */
  likelihoods(words: readonly string[]): readonly number[] | null {
    if (words.length > MOST_WORDS) return null
    const { hidden, hiddenBias, out, outBias } = this.tables
    const found = this.found(words.map((word) => this.partsOf(word)))
    const inner = layer(hidden, hiddenBias, found).map((x) => Math.max(0, x))
    const told = layer(out, outBias, inner)
    const { signs } = this.source
    return SIGN_IDS.map((sign) => (signs.includes(sign) ? sigmoid(told[signs.indexOf(sign)]!) : 0))
  }

  /** What each filter finds most of anywhere among the words, nothing where it finds less than that. */
  private found(parts: readonly Parts[]): Float64Array {
    const found = new Float64Array(POOLED)
    const sums = new Float64Array(FILTERS)
    let [first, place] = [0, 0]
    WIDTHS.forEach((width, k) => {
      const bias = this.tables.filterBias[k]!
      const before = width >> 1
      for (let start = -before; start <= parts.length - width + before; start++) {
        sums.set(bias)
        const [from, to] = [Math.max(0, start), Math.min(parts.length, start + width) - 1]
        for (let at = from; at < to; at++) addTo(sums, parts[at]!, (place + at - start) * FILTERS)
        raise(found, first, sums, parts[to]!, (place + to - start) * FILTERS)
      }
      first += FILTERS
      place += width
    })
    return found
  }

  private partsOf(word: string): Parts {
    const known = this.known.get(word)
    if (known !== undefined) {
      this.known.delete(word)
      this.known.set(word, known)
      return known
    }
    const [oldest] = this.known.keys()
    if (this.known.size >= REMEMBERED) this.known.delete(oldest!)
    const { pieces } = this.source
    const row = rowOf(this.tables, { id: this.ids.get(word) ?? 0, pieces: piecesOf(word, pieces) })
    const parts = new Float32Array(PLACES * FILTERS)
    let place = 0
    WIDTHS.forEach((width, k) => {
      for (let j = 0; j < width; j++, place++)
        for (let f = 0; f < FILTERS; f++)
          parts[place * FILTERS + f] = dot(
            this.tables.filters[k]!,
            (f * width + j) * DIMENSIONS,
            row,
            0,
            DIMENSIONS,
          )
    })
    this.known.set(word, parts)
    return parts
  }
}

function addTo(sums: Float64Array, parts: Parts, from: number): void {
  for (let f = 0; f < FILTERS; f++) sums[f]! += parts[from + f]!
}

/** What is found so far, or what the sums come to with the last part where that is more. */
function raise(found: Float64Array, first: number, sums: Float64Array, parts: Parts, from: number): void {
  for (let f = 0; f < FILTERS; f++) {
    const sum = sums[f]! + parts[from + f]!
    if (sum > found[first + f]!) found[first + f] = sum
  }
}

function tablesOf({ tables }: ClassifierSource): Tables {
  const table = (name: string): Float32Array => {
    const { step, bytes } = tables[name]!
    const text = atob(bytes)
    const numbers = new Float32Array(text.length)
    for (let i = 0; i < text.length; i++) numbers[i] = ((text.charCodeAt(i) << 24) >> 24) * step
    return numbers
  }
  return {
    words: table('words'),
    pieces: table('pieces'),
    filters: WIDTHS.map((width) => table(`filters ${width}`)),
    filterBias: WIDTHS.map((width) => Float64Array.from(table(`filter bias ${width}`))),
    hidden: turned(table('hidden'), POOLED),
    hiddenBias: table('hidden bias'),
    out: turned(table('out'), HIDDEN),
    outBias: table('out bias'),
  }
}
