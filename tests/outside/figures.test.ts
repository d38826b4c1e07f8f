import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'

const here = new URL('./', import.meta.url)

it('every file of figures is read by a check', () => {
  const checks = readdirSync(here)
    .filter((name) => name.endsWith('.ts') && name !== 'figures.test.ts')
    .map((name) => readFileSync(new URL(name, here), 'utf8'))
    .join('\n')
  const unread = readdirSync(new URL('figures/', here)).filter((name) => !checks.includes(`'${name}'`))
  expect(unread).toEqual([])
})
