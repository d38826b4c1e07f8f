import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge } from '../../../src/domain/signs/judge.ts'
import { lexiconFor } from '../../../src/domain/signs/lexicon/languages.ts'
import { matchesOf } from '../../../src/domain/signs/match.ts'
import { readingOf, screen } from '../../../src/domain/signs/screen.ts'

const NOTHING = { signs: [], denied: [], care: 'none', unsure: [], evidence: [] }

describe('plain check-ins', () => {
  it.each([
    ['en', '2 calf 4'],
    ['en', 'did 2, knee, pain 4/10'],
    ['en', 'Both done. Thigh 3. Thanks!'],
    ['es', 'las dos hechas, gemelo 4'],
  ])('%s: no layer looks at "%s"', (locale, text) => {
    expect(screen(text, locale)).toEqual(NOTHING)
  })

  it.each([
    ['en', 'pain 10, calf', 'severe-unrelenting'],
    ['en', 'pain in both feet', 'both-legs'],
    ['es', 'dolor en ambos pies', 'both-legs'],
  ])('%s: "%s" is looked at', (locale, text, sign) => {
    expect(screen(text, locale).signs).toContain(sign)
  })

  it.each(['en', 'es'])('%s: no pattern tells a sign in any row of such words', (locale) => {
    const { words, zones, pairs } = lexiconFor(locale).plain
    const plain = [...words, ...zones, '0', '2', '5', '8', ',', '.']
    const row = fc.array(fc.constantFrom(...plain), { minLength: 1, maxLength: 9 })
    fc.assert(
      fc.property(row, fc.constantFrom('', ...pairs), (told, pair) => {
        const { reading } = readingOf([pair, ',', ...told].join(' '), locale)
        const verdicts = matchesOf(reading).map((match) => judge(reading, match))
        expect(verdicts.filter((verdict) => verdict === 'sure' || verdict === 'unsure')).toEqual([])
      }),
      { numRuns: 1500 },
    )
  })
})
