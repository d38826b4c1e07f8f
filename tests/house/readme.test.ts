import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { named } from './developers.ts'

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')
const README = read('README.md')

it('the README has a row for every verb of the command line, and no other', () => {
  const verbs = [...read('src/cli/index.ts').matchAll(/^ {2}(\w+): \{\s*about:/gm)].map(([, verb]) => verb!)
  const table = README.split('| verb | does |')[1]!.split('\n\n')[0]!
  const told = table.split('\n').flatMap((row) => named(row.split('|')[1] ?? ''))
  expect(verbs.length).toBeGreaterThan(10)
  expect(told.toSorted()).toEqual(verbs.toSorted())
})

it('the page for operating it gives the figures of workers that the README measured', () => {
  const measured = /(\d+) messages a second by one, (\d+) by two, (\d+) by four/.exec(README)!.slice(1)
  const told = /(\d+) messages a second by one worker, (\d+) by two, (\d+) by four/.exec(
    read('.github/operating.md'),
  )
  expect(told?.slice(1)).toEqual(measured)
})
