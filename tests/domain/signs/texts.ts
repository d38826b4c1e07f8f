import { readFileSync } from 'node:fs'
import type { SignId } from '../../../src/domain/signs/catalogue.ts'

/** A text to learn from, and the signs it tells. */
export interface Row {
  readonly text: string
  readonly signs: readonly SignId[]
  readonly part?: string
}

export const rowsIn = (path: string | URL): Row[] => jsonIn<Row>(path)

interface Reply {
  readonly text: string
  readonly part?: string
  readonly expect: { readonly signs?: readonly SignId[] }
}

/** What is written every day: the replies that the reader is tried with. */
export const repliesIn = (locale: string): Row[] =>
  jsonIn<Reply>(new URL(`../reply/corpus/${locale}.jsonl`, import.meta.url)).map(
    ({ text, part, expect }) => ({ text, signs: expect.signs ?? [], ...(part ? { part } : {}) }),
  )

const jsonIn = <T>(path: string | URL): T[] =>
  readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .map((line): T => JSON.parse(line))
