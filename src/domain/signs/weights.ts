import { z } from 'zod'
import { SIGN_IDS } from './catalogue.ts'
import type { FeatureMap } from './feature-map.ts'
import { type Book, KINDS, stemOf } from './features.ts'
import type { ClassIds } from './phrase-source.ts'
import type { Window } from './windows.ts'

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

/** What was learned of one feature: signs and weights in turn, in tenths, so that sums are of whole numbers. */
interface Row {
  readonly parts: readonly number[]
  /** The last sum that took it. */
  taken: number
}
type Pairs = Map<string, Map<string, Row>>

/** Few features are little to go by: they count as if they were so many. */
const FEW = 40
export const scaleOf = (features: number): number => 1 / Math.sqrt(Math.max(FEW, features))

export const likelihood = (evidence: number): number => 1 / (1 + Math.exp(-evidence))

/** How a feature is written in the data: a word as it is, a meaning as "[is pee]", two of them as "[pee + wet-bad]". */
export const writtenMeaning = (kind: number, name: string): string => `[${KINDS[kind]} ${name}]`
export const writtenNear = (first: string, second: string): string => `[${first} + ${second}]`

const STEM = '~'
const SKIP = ' _ '
/** Stems kept at hand, so that memory stays bounded whatever people write. */
const REMEMBERED = 8192

function setIn<K, L>(pairs: Map<K, Map<L, Row>>, first: K, second: L, row: Row): void {
  const seconds = pairs.get(first) ?? new Map<L, Row>()
  seconds.set(second, row)
  pairs.set(first, seconds)
}

/** The weights made ready; throws where they name a class that the lexicon does not have. */
export class Weights implements Book<Row> {
  readonly ask: number
  readonly insist: number
  /** By the place of the sign in the catalogue. */
  readonly bias: readonly number[]
  private readonly words = new Map<string, Row>()
  private readonly stems = new Map<string, Row>()
  /** Stems of words met before. */
  private readonly stemmed = new Map<string, Row | undefined>()
  private readonly pairs: Pairs = new Map()
  private readonly skips: Pairs = new Map()
  /** By kind, then by class. */
  private readonly meanings: (Row | undefined)[][] = KINDS.map(() => [])
  private readonly nears = new Map<number, Map<number, Row>>()

  constructor(source: WeightsSource, classes: ClassIds) {
    const { ask, insist, bias, signs, features } = weightsShape.parse(source)
    this.ask = ask
    this.insist = insist
    this.bias = SIGN_IDS.map((sign) => bias[signs.indexOf(sign)] ?? NEVER)
    for (const line of features) {
      const [written, text] = line.split('|') as [string, string]
      const parts = (text === '' ? [] : text.split(' ')).map((part, i) =>
        i % 2 === 0 ? SIGN_IDS.indexOf(signs[Number(part)]!) : Number(part),
      )
      this.set(written, { parts, taken: 0 }, classes)
    }
  }

  private set(written: string, row: Row, classes: ClassIds): void {
    if (written.startsWith('[')) this.setMeaning(written.slice(1, -1).split(' '), row, classes)
    else if (written.startsWith(STEM)) this.stems.set(written.slice(STEM.length), row)
    else if (written.includes(SKIP)) this.setPair(this.skips, written.split(SKIP), row)
    else if (written.includes(' ')) this.setPair(this.pairs, written.split(' '), row)
    else this.words.set(written, row)
  }

  private setPair(pairs: Pairs, [first, second]: readonly string[], row: Row): void {
    setIn(pairs, first!, second!, row)
  }

  private setMeaning([first, second, third]: readonly string[], row: Row, classes: ClassIds): void {
    if (third !== undefined) setIn(this.nears, classes.of(first!), classes.of(third), row)
    else this.meanings[KINDS.indexOf(first as (typeof KINDS)[number])]![classes.of(second!)] = row
  }

  word(word: string): Row | undefined {
    return this.words.get(word)
  }

  stem(word: string): Row | undefined {
    if (this.stemmed.has(word)) return this.stemmed.get(word)
    const row = this.stems.get(stemOf(word))
    if (this.stemmed.size < REMEMBERED) this.stemmed.set(word, row)
    return row
  }

  pair(before: string, word: string): Row | undefined {
    return this.pairs.get(before)?.get(word)
  }

  skip(first: string, word: string): Row | undefined {
    return this.skips.get(first)?.get(word)
  }

  meaning(kind: number, id: number): Row | undefined {
    return this.meanings[kind]![id]
  }

  near(first: number, second: number): Row | undefined {
    return this.nears.get(first)?.get(second)
  }
}

let sums = 0

/** Sums the weights of windows, each feature of a window once; only one sum is at work at a time. */
export class Sum {
  private own = 0
  private features = 0
  private scale = 0
  private readonly totals = new Int32Array(SIGN_IDS.length)

  constructor(private readonly weights: Weights) {}

  /** Begins anew with what the window tells. */
  over(told: FeatureMap<Row>, window: Window): void {
    this.own = ++sums
    this.features = 0
    this.totals.fill(0)
    told.within(window, this.add)
    this.scale = scaleOf(this.features)
  }

  private readonly add = (row: Row): void => {
    if (row.taken === this.own) return
    row.taken = this.own
    this.features += 1
    const { parts } = row
    for (let i = 0; i < parts.length; i += 2) this.totals[parts[i]!]! += parts[i + 1]!
  }

  /** How much speaks for a sign, by its place in the catalogue; 0 is as likely as not. */
  evidenceFor(sign: number): number {
    return this.weights.bias[sign]! + (this.totals[sign]! / 10) * this.scale
  }
}
