import { z } from 'zod'
import { SIGN_IDS } from './catalogue.ts'
import { KINDS, type Sink } from './features.ts'
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

/** Signs and weights in turn. */
type Row = readonly number[]

/** The weights made ready. */
export interface Weights {
  readonly ask: number
  readonly insist: number
  readonly bias: readonly number[]
  readonly words: ReadonlyMap<string, Row>
  readonly meanings: ReadonlyMap<number, Row>
  readonly size: number
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

/** Checks the weights and makes them ready; throws where they name a class that the lexicon does not have. */
export function compileWeights(source: WeightsSource, classes: ClassIds, size: number): Weights {
  const { ask, insist, bias, signs, features } = weightsShape.parse(source)
  const words = new Map<string, Row>()
  const meanings = new Map<number, Row>()
  for (const line of features) {
    const [written, text] = line.split('|') as [string, string]
    const parts = text === '' ? [] : text.split(' ')
    const row = parts.map((part, i) =>
      i % 2 === 0 ? SIGN_IDS.indexOf(signs[Number(part)]!) : Number(part) / 10,
    )
    if (written.startsWith('[')) meanings.set(keyOf(written, classes, size), row)
    else words.set(written, row)
  }
  return {
    ask,
    insist,
    bias: SIGN_IDS.map((sign) => bias[signs.indexOf(sign)] ?? NEVER),
    words,
    meanings,
    size,
  }
}

/** Sums the weights of what it is given, each feature once. */
export class Sum implements Sink {
  private readonly seen = new Set<Row>()
  private readonly totals = new Float64Array(SIGN_IDS.length)

  constructor(private readonly weights: Weights) {}

  private add(row: Row | undefined): void {
    if (row === undefined || this.seen.has(row)) return
    this.seen.add(row)
    for (let i = 0; i < row.length; i += 2) this.totals[row[i]!]! += row[i + 1]!
  }

  word(key: string): void {
    this.add(this.weights.words.get(key))
  }

  meaning(kind: number, id: number): void {
    this.add(this.weights.meanings.get(meaningKey(this.weights.size, kind, id)))
  }

  near(first: number, second: number): void {
    this.add(this.weights.meanings.get(nearKey(this.weights.size, first, second)))
  }

  /** How much speaks for a sign, by its place in the catalogue; 0 is as likely as not. */
  evidenceFor(sign: number): number {
    return this.weights.bias[sign]! + this.totals[sign]! * scaleOf(this.seen.size)
  }
}
