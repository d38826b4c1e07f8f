import { readFileSync } from 'node:fs'

/** DEVELOPERS.md, which the tests of the house hold to the code. */
export const DEVELOPERS = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8')

/** The rows of the first table below these words, without its head, each by its cells. */
export function tableBelow(words: string): string[][] {
  const [, below = ''] = DEVELOPERS.split(words, 2)
  const table = /(?:^\|.*\|\n)+/m.exec(below)?.[0] ?? ''
  const rows = table.trim().split('\n').slice(2)
  return rows.map((row) => row.split('|').slice(1, -1))
}

/** What stands in backticks. */
export const named = (text: string): string[] => [...text.matchAll(/`([^`]+)`/g)].map(([, name]) => name!)
