import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { en } from '../../../src/domain/signs/lexicon/en.ts'
import { es } from '../../../src/domain/signs/lexicon/es/es.ts'
import { lexiconFor } from '../../../src/domain/signs/lexicon/languages.ts'
import { lexiconShape } from '../../../src/domain/signs/lexicon/shape.ts'

interface Kept {
  version: string
  words: string
}
const kept: Record<string, Kept> = JSON.parse(readFileSync(new URL('versions.json', import.meta.url), 'utf8'))

/** Of words, patterns and weights alone: layout and comments are no change. */
const words = (data: unknown): string => {
  const { version: _, ...rest } = lexiconShape.parse(data)
  return createHash('sha256').update(JSON.stringify(rest)).digest('hex').slice(0, 16)
}

describe('the version of the sign lexicon', () => {
  it.each([
    ['en', en],
    ['es', es],
  ])('changes with the words and weights of %s', (language, data) => {
    const now: Kept = { version: lexiconFor(language).version, words: words(data) }
    const before = kept[language]
    const raised = now.version !== before?.version
    expect(
      now.words === before?.words || raised,
      `The signs of ${language} have changed: raise its number in src/domain/signs/lexicon/version.ts, then run this test again.`,
    ).toBe(true)
    expect(now, `Write into tests/domain/signs/versions.json: "${language}": ${JSON.stringify(now)}`).toEqual(
      before,
    )
  })
})
