import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { en } from '../../../src/domain/reply/lexicon/en/index.ts'
import { es } from '../../../src/domain/reply/lexicon/es/index.ts'
import { lexiconVersion } from '../../../src/domain/reply/lexicon/index.ts'
import { LexiconSchema } from '../../../src/domain/reply/lexicon/schema.ts'
import { versionOf } from '../../../src/domain/reply/lexicon/version.ts'
import { lexiconFor } from '../../../src/domain/signs/lexicon/languages.ts'

interface Kept {
  version: string
  words: string
}
const kept: Record<string, Kept> = JSON.parse(readFileSync(new URL('versions.json', import.meta.url), 'utf8'))

/** Of the words alone: layout and comments are no change. */
const words = (data: unknown): string =>
  createHash('sha256')
    .update(JSON.stringify(LexiconSchema.parse(data)))
    .digest('hex')
    .slice(0, 16)

describe('the version kept beside a reading', () => {
  it.each([
    ['en', en],
    ['es', es],
  ])('changes with the words of %s', (language, data) => {
    const now: Kept = { version: versionOf(language), words: words(data) }
    const before = kept[language]
    const raised = now.version !== before?.version
    expect(
      now.words === before?.words || raised,
      `The words of ${language} have changed: raise its number in src/domain/reply/lexicon/version.ts, then run this test again.`,
    ).toBe(true)
    expect(now, `Write into tests/domain/reply/versions.json: "${language}": ${JSON.stringify(now)}`).toEqual(
      before,
    )
  })

  it('names the screen for urgent signs as well', () => {
    for (const language of ['en', 'es'])
      expect(lexiconVersion(language)).toBe(
        `${versionOf(language)}/${lexiconFor(language).version.slice(language.length + 1)}`,
      )
  })

  it('tells the language apart, and follows the one a locale falls back on', () => {
    expect(lexiconVersion('es-MX')).toBe(lexiconVersion('es'))
    expect(lexiconVersion('pt')).toBe(lexiconVersion('en'))
    expect(lexiconVersion('en')).not.toBe(lexiconVersion('es'))
  })
})
