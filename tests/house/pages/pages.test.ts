import { readFileSync } from 'node:fs'
import { basename, dirname } from 'node:path'
import { expect, it } from 'vitest'
import { PAGES } from './pages.ts'

it.each(PAGES.map((page) => [basename(dirname(page.path)), page] as const))(
  'the page of %s says what the code says (else: npm run pages)',
  (_, { path, text }) => {
    expect(readFileSync(path, 'utf8')).toBe(text)
  },
)
