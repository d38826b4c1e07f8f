import type { Random } from '../../../src/domain/diaries/random.ts'
import {
  type ClassifierSource,
  DIMENSIONS,
  dot,
  FILTERS,
  HIDDEN,
  layer,
  POOLED,
  rowOf,
  sigmoid,
  WIDTHS,
} from '../../../src/domain/signs/classifier.ts'

const DECAY = 1e-3
/** A sign missed weighs as much as so many asked for nothing. */
const POSITIVE = 3
const DROPPED = { word: 0.05, row: 0.3, pooled: 0.3, hidden: 0.3 }

export interface Message {
  readonly id: number
  readonly pieces: readonly number[]
}
export interface Example {
  readonly message: readonly Message[]
  readonly isThere: readonly boolean[]
}

/** Numbers that are learned, and what the next step needs to know of them. */
class Table {
  readonly slope: Float32Array
  private readonly mean: Float32Array
  private readonly spread: Float32Array

  constructor(readonly value: Float32Array) {
    this.slope = new Float32Array(value.length)
    this.mean = new Float32Array(value.length)
    this.spread = new Float32Array(value.length)
  }

  /** One step of Adam over a stretch of the table; its slopes begin anew. */
  step(rate: number, count: number, from = 0, to = this.value.length): void {
    const { value, slope, mean, spread } = this
    const [fade1, fade2] = [1 - 0.9 ** count, 1 - 0.999 ** count]
    for (let i = from; i < to; i++) {
      const s = slope[i]!
      mean[i] = 0.9 * mean[i]! + 0.1 * s
      spread[i] = 0.999 * spread[i]! + 0.001 * s * s
      value[i]! -= rate * (mean[i]! / fade1 / (Math.sqrt(spread[i]! / fade2) + 1e-8) + DECAY * value[i]!)
      slope[i] = 0
    }
  }
}

/** What stands before the first and after the last word. */
const MARGIN = 2

type Values = Readonly<Record<'words' | 'pieces', Float32Array>>

/** The words of a message as rows of numbers, with nothing in the margins. */
function embedded(values: Values, message: readonly Message[]): Float32Array {
  const rows = new Float32Array((message.length + 2 * MARGIN) * DIMENSIONS)
  message.forEach((word, i) => {
    rows.set(rowOf(values, word), (i + MARGIN) * DIMENSIONS)
  })
  return rows
}

/** What each filter finds most of anywhere in the message, nothing where it finds less than that, and where. */
function pooled(filters: readonly Table[], bias: readonly Table[], rows: Float32Array) {
  const most = new Float32Array(POOLED)
  const at = new Int32Array(POOLED).fill(-1)
  const end = rows.length / DIMENSIONS - MARGIN
  WIDTHS.forEach((width, k) => {
    const size = width * DIMENSIONS
    const before = width >> 1
    const table = filters[k]!.value
    for (let f = 0; f < FILTERS; f++) {
      const own = bias[k]!.value[f]!
      let [best, place] = [0, -1]
      for (let start = MARGIN - before; start <= end - width + before; start++) {
        const found = dot(table, f * size, rows, start * DIMENSIONS, size) + own
        if (found <= best) continue
        best = found
        place = start
      }
      most[k * FILTERS + f] = best
      at[k * FILTERS + f] = place
    }
  })
  return { most, at }
}

const normal = (random: Random, size: number, spread: number): Float32Array =>
  Float32Array.from({ length: size }, () => random.normal() * spread)
/** Even over +-1 / sqrt(inputs), so that no layer begins louder than the one before. */
const even = (random: Random, size: number, inputs: number): Float32Array =>
  Float32Array.from({ length: size }, () => (2 * random.uniform() - 1) / Math.sqrt(inputs))

/** 0 where something is left out, else what makes up for it. */
const dropout = (random: Random, size: number, share: number): Float32Array =>
  Float32Array.from({ length: size }, () => (random.uniform() < share ? 0 : 1 / (1 - share)))

const times = (a: Float32Array, b: Float32Array): Float32Array => a.map((x, i) => x * b[i]!)

/** Learns by example; see `learn-classifier.ts`. */
export class Learner {
  private readonly words: Table
  private readonly pieces: Table
  private readonly filters: readonly Table[]
  private readonly filterBias: readonly Table[]
  private readonly hidden: Table
  private readonly hiddenBias: Table
  private readonly out: Table
  private readonly outBias: Table
  private readonly touched = { words: new Set<number>(), pieces: new Set<number>() }
  private steps = 0

  constructor(
    private readonly random: Random,
    known: number,
    pieces: number,
    signs: number,
  ) {
    this.words = new Table(normal(random, (known + 1) * DIMENSIONS, 0.1))
    this.pieces = new Table(normal(random, pieces * DIMENSIONS, 0.1))
    const inputs = WIDTHS.map((width) => width * DIMENSIONS)
    this.filters = inputs.map((size) => new Table(even(random, FILTERS * size, size)))
    this.filterBias = inputs.map((size) => new Table(even(random, FILTERS, size)))
    this.hidden = new Table(even(random, HIDDEN * POOLED, POOLED))
    this.hiddenBias = new Table(even(random, HIDDEN, POOLED))
    this.out = new Table(even(random, signs * HIDDEN, HIDDEN))
    this.outBias = new Table(even(random, signs, HIDDEN))
  }

  learn(batch: readonly Example[], rate: number): number {
    const loss = batch.reduce((sum, example) => sum + this.hear(example, 1 / batch.length), 0)
    this.steps += 1
    const { filters, filterBias, hidden, hiddenBias, out, outBias } = this
    for (const table of [...filters, ...filterBias, hidden, hiddenBias, out, outBias])
      table.step(rate, this.steps)
    for (const kind of ['words', 'pieces'] as const) {
      for (const row of this.touched[kind])
        this[kind].step(rate, this.steps, row * DIMENSIONS, (row + 1) * DIMENSIONS)
      this.touched[kind].clear()
    }
    return loss / batch.length
  }

  /** Reads one example and adds to the slopes what it teaches; its loss. */
  private hear({ message, isThere }: Example, share: number): number {
    const { random } = this
    const read = message.map((word) => (random.uniform() < DROPPED.word ? { ...word, id: 0 } : word))
    const plain = embedded({ words: this.words.value, pieces: this.pieces.value }, read)
    const keptRows = dropout(random, plain.length, DROPPED.row)
    const rows = times(plain, keptRows)
    const { most, at } = pooled(this.filters, this.filterBias, rows)
    const keptPooled = dropout(random, POOLED, DROPPED.pooled)
    const found = times(most, keptPooled)
    const sums = layer(this.hidden.value, this.hiddenBias.value, found)
    const keptHidden = dropout(random, HIDDEN, DROPPED.hidden).map((kept, i) => (sums[i]! > 0 ? kept : 0))
    const hidden = times(sums, keptHidden)
    const out = layer(this.out.value, this.outBias.value, hidden)
    let loss = 0
    const wrong = out.map((x, i) => {
      const likely = sigmoid(x)
      loss -= isThere[i] ? POSITIVE * Math.log(likely + 1e-9) : Math.log(1 - likely + 1e-9)
      return (isThere[i] ? POSITIVE * (likely - 1) : likely) * share
    })
    const hiddenSlope = times(back(this.out, this.outBias, wrong, hidden), keptHidden)
    const foundSlope = times(back(this.hidden, this.hiddenBias, hiddenSlope, found), keptPooled)
    const rowSlope = times(this.backThroughFilters(foundSlope, at, rows), keptRows)
    this.backThroughWords(rowSlope, read)
    return loss
  }

  /** Only the place where a filter found most has a part in it. */
  private backThroughFilters(slope: Float32Array, at: Int32Array, rows: Float32Array): Float32Array {
    const rowSlope = new Float32Array(rows.length)
    WIDTHS.forEach((width, k) => {
      const size = width * DIMENSIONS
      const { value, slope: own } = this.filters[k]!
      for (let f = 0; f < FILTERS; f++) {
        const place = k * FILTERS + f
        const s = slope[place]!
        if (at[place]! < 0 || s === 0) continue
        this.filterBias[k]!.slope[f]! += s
        const from = at[place]! * DIMENSIONS
        for (let i = 0; i < size; i++) {
          own[f * size + i]! += s * rows[from + i]!
          rowSlope[from + i]! += s * value[f * size + i]!
        }
      }
    })
    return rowSlope
  }

  private backThroughWords(rowSlope: Float32Array, read: readonly Message[]): void {
    const add = (kind: 'words' | 'pieces', row: number, from: number, share: number): void => {
      this.touched[kind].add(row)
      const { slope } = this[kind]
      for (let d = 0; d < DIMENSIONS; d++) slope[row * DIMENSIONS + d]! += rowSlope[from + d]! * share
    }
    read.forEach(({ id, pieces }, i) => {
      const from = (i + MARGIN) * DIMENSIONS
      add('words', id, from, 1)
      for (const piece of pieces) add('pieces', piece, from, 1 / pieces.length)
    })
  }

  tables(): ClassifierSource['tables'] {
    const { words, pieces, filters, filterBias, hidden, hiddenBias, out, outBias } = this
    const named: [string, Table][] = [
      ['words', words],
      ['pieces', pieces],
      ...WIDTHS.map((width, k): [string, Table] => [`filters ${width}`, filters[k]!]),
      ...WIDTHS.map((width, k): [string, Table] => [`filter bias ${width}`, filterBias[k]!]),
      ['hidden', hidden],
      ['hidden bias', hiddenBias],
      ['out', out],
      ['out bias', outBias],
    ]
    return Object.fromEntries(named.map(([name, { value }]) => [name, inBytes(value)]))
  }
}

/** The slopes of a layer, and those of what went into it. */
function back(table: Table, bias: Table, slope: Float32Array, inputs: Float32Array): Float32Array {
  const before = new Float32Array(inputs.length)
  slope.forEach((s, i) => {
    if (s === 0) return
    bias.slope[i]! += s
    const from = i * inputs.length
    for (let j = 0; j < inputs.length; j++) {
      table.slope[from + j]! += s * inputs[j]!
      before[j]! += s * table.value[from + j]!
    }
  })
  return before
}

/** Each number as one of 255 steps between the largest and its opposite. */
function inBytes(numbers: Float32Array): { step: number; bytes: string } {
  const step = numbers.reduce((most, x) => Math.max(most, Math.abs(x)), 1e-9) / 127
  const bytes = Int8Array.from(numbers, (x) => Math.round(x / step))
  return { step, bytes: Buffer.from(bytes.buffer).toString('base64') }
}
