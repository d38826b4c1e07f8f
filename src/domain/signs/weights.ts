import { z } from 'zod'
import { SIGN_IDS } from './catalogue.ts'
import { KINDS, type Sink, stemOf } from './features.ts'
import type { ClassIds } from './phrase-source.ts'

/** What was learned from the texts of `tests/domain/signs/corpus`, by `tests/domain/signs/learn.ts`. */
export const weightsShape = z.strictObject({
  /** From this likelihood on a sign is asked about. */
  ask: z.number().min(0).max(1),
  /** The same where the first layer found the sign and took it back: denied, supposed, of another, long ago. */
  insist: z.number().min(0).max(1),
  /** Its weight before any word is read, per sign of `signs`. */
  bias: z.array(z.number()),
  signs: z.array(z.enum(SIGN_IDS)),
  /** "feature|sign weight sign weight", signs by their place in `signs`, weights in tenths. */
  features: z.array(z.string()),
})
export type WeightsSource = z.input<typeof weightsShape>

/** The weight of a sign that nothing was learned of. */
const NEVER = -99

/** What was learned of one feature: signs and weights in turn. */
interface Row {
  readonly parts: readonly number[]
  /** The last sum that took it. */
  taken: number
}
type Pairs = Map<string, Map<string, Row>>

/** The weights made ready. */
export interface Weights {
  readonly ask: number
  readonly insist: number
  readonly bias: readonly number[]
  readonly words: ReadonlyMap<string, Row>
  readonly stems: ReadonlyMap<string, Row>
  /** Of words in a row, and of words with one between them. */
  readonly pairs: Pairs
  readonly skips: Pairs
  readonly meanings: ReadonlyMap<number, Row>
  /** 1 for a class that opens a pair of meanings. */
  readonly opens: Uint8Array
  readonly size: number
  /** Stems of words met before, up to a bound. */
  readonly stemmed: Map<string, Row | null>
}

/** Few features are little to go by: they count as if they were so many. */
const FEW = 40
export const scaleOf = (features: number): number => 1 / Math.sqrt(Math.max(FEW, features))

export const likelihood = (evidence: number): number => 1 / (1 + Math.exp(-evidence))
export const meaningKey = (size: number, kind: number, id: number): number => kind * size + id
export const nearKey = (size: number, first: number, second: number): number =>
  (KINDS.length + first) * size + second

/** How a feature is written in the data: a word as it is, a meaning as "[is pee]", two of them as "[pee + wet-bad]". */
export const writtenMeaning = (kind: number, name: string): string => `[${KINDS[kind]} ${name}]`
export const writtenNear = (first: string, second: string): string => `[${first} + ${second}]`

function keyOf(written: string, classes: ClassIds, size: number): number {
  const [first, second, third] = written.slice(1, -1).split(' ') as [string, string, string?]
  if (third !== undefined) return nearKey(size, classes.of(first), classes.of(third))
  return meaningKey(size, KINDS.indexOf(first as (typeof KINDS)[number]), classes.of(second))
}

const STEM = '~'
const SKIP = ' _ '

function setPair(pairs: Pairs, [first, second]: readonly string[], row: Row): void {
  const seconds = pairs.get(first!) ?? new Map<string, Row>()
  seconds.set(second!, row)
  pairs.set(first!, seconds)
}

/** Checks the weights and makes them ready; throws where they name a class that the lexicon does not have. */
export function compileWeights(source: WeightsSource, classes: ClassIds, size: number): Weights {
  const { ask, insist, bias, signs, features } = weightsShape.parse(source)
  const [words, stems, meanings] = [new Map<string, Row>(), new Map<string, Row>(), new Map<number, Row>()]
  const [pairs, skips]: [Pairs, Pairs] = [new Map(), new Map()]
  const opens = new Uint8Array(size)
  for (const line of features) {
    const [written, text] = line.split('|') as [string, string]
    const parts = (text === '' ? [] : text.split(' ')).map((part, i) =>
      i % 2 === 0 ? SIGN_IDS.indexOf(signs[Number(part)]!) : Number(part) / 10,
    )
    const row: Row = { parts, taken: 0 }
    if (written.startsWith('[')) {
      const key = keyOf(written, classes, size)
      meanings.set(key, row)
      if (key >= KINDS.length * size) opens[Math.floor(key / size) - KINDS.length] = 1
    } else if (written.startsWith(STEM)) stems.set(written.slice(STEM.length), row)
    else if (written.includes(SKIP)) setPair(skips, written.split(SKIP), row)
    else if (written.includes(' ')) setPair(pairs, written.split(' '), row)
    else words.set(written, row)
  }
  return {
    ask,
    insist,
    bias: SIGN_IDS.map((sign) => bias[signs.indexOf(sign)] ?? NEVER),
    ...{ words, stems, pairs, skips, meanings, opens, size },
    stemmed: new Map(),
  }
}

const REMEMBERED = 8192
let sums = 0

/** Sums the weights of what it is given, each feature once; only the latest sum may still be added to. */
export class Sum implements Sink {
  private readonly own = ++sums
  private features = 0
  private readonly totals = new Float64Array(SIGN_IDS.length)

  constructor(private readonly weights: Weights) {}

  private add(row: Row | null | undefined): void {
    if (row == null || row.taken === this.own) return
    row.taken = this.own
    this.features += 1
    const { parts } = row
    for (let i = 0; i < parts.length; i += 2) this.totals[parts[i]!]! += parts[i + 1]!
  }

  word(word: string): void {
    this.add(this.weights.words.get(word))
  }

  stem(word: string): void {
    const { stems, stemmed } = this.weights
    let row = stemmed.get(word)
    if (row === undefined) {
      row = stems.get(stemOf(word)) ?? null
      if (stemmed.size < REMEMBERED) stemmed.set(word, row)
    }
    this.add(row)
  }

  pair(before: string, word: string): void {
    this.add(this.weights.pairs.get(before)?.get(word))
  }

  skip(first: string, word: string): void {
    this.add(this.weights.skips.get(first)?.get(word))
  }

  meaning(kind: number, id: number): void {
    this.add(this.weights.meanings.get(meaningKey(this.weights.size, kind, id)))
  }

  opens(first: number): boolean {
    return this.weights.opens[first] === 1
  }

  near(first: number, second: number): void {
    this.add(this.weights.meanings.get(nearKey(this.weights.size, first, second)))
  }

  /** How much speaks for a sign, by its place in the catalogue; 0 is as likely as not. */
  evidenceFor(sign: number): number {
    return this.weights.bias[sign]! + this.totals[sign]! * scaleOf(this.features)
  }
}
