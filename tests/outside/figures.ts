import { readFileSync } from 'node:fs'

const folder = new URL('./figures/', import.meta.url)

export const textOf = (file: string): string => readFileSync(new URL(file, folder), 'utf8')

/** Figures as they were published, with the field `source` that says where. */
// biome-ignore lint/suspicious/noExplicitAny: the files differ in shape, and a wrong field fails its check
export const figuresOf = (file: string): any => JSON.parse(textOf(file))

/** The values put in order of x, so that a rank correlation of pairs reads as a trend. */
export function inOrderOf(x: readonly number[], y: readonly number[]): number[] {
  return x
    .map((_, n) => n)
    .sort((a, b) => x[a]! - x[b]!)
    .map((n) => y[n]!)
}

interface ReferenceSeries {
  readonly day: number[]
  readonly y: number[]
  readonly n: number
  readonly S: number
  readonly var: number
  readonly z: number
  readonly p: number
  readonly tau_b: number | null
  readonly p_exact?: number
  readonly slope: number
  readonly low: number
  readonly high: number
  readonly median_y: number
}

/** Short, tied, gapped and constant series with what scipy 1.10.1 and numpy 1.24 make of them, by name. */
export const referenceSeries = (): [string, ReferenceSeries][] =>
  Object.entries(figuresOf('reference_trend.json').series)
