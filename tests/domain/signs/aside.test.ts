import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Expectation, type Score, score } from '../../../src/domain/signs/score.ts'
import { screen } from '../../../src/domain/signs/screen.ts'

function scored(file: string, locale: string): Score {
  const rows = readFileSync(new URL(`corpus/${locale}-${file}.jsonl`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .map((line): Expectation => JSON.parse(line))
  const result = score(rows, (text) => screen(text, locale))
  const { emergency, otherSigns, signless, denials } = result
  console.log(
    `signs, ${locale}, ${file}: emergency ${emergency.caught}/${emergency.of}, others ${otherSigns.caught}/${otherSigns.of}, ` +
      `signless left alone ${signless.alone}/${signless.of}, denials seen ${denials.found}/${denials.of}`,
  )
  return result
}

type Lot = [lot: string, locale: string, emergencies: number, alone: number, othersMissed: number]

function holdsAtLeast(...[file, locale, emergencies, alone, missed]: Lot): void {
  const { emergency, otherSigns, signless } = scored(file, locale)
  expect(emergency.caught).toBeGreaterThanOrEqual(emergencies)
  expect(otherSigns.caught).toBeGreaterThanOrEqual(otherSigns.of - missed)
  expect(signless.alone).toBeGreaterThanOrEqual(alone)
}

/** Plain texts that nothing is learned from; at first sight see the corpus's README. */
describe('the lot of sign texts set aside', () => {
  it.each(['en', 'es'])('reaches the goals: %s', (locale) => {
    const { emergency, otherSigns, signless } = scored('aside', locale)
    expect(emergency.caught).toBe(emergency.of)
    expect(otherSigns.caught / otherSigns.of).toBeGreaterThanOrEqual(0.99)
    expect(signless.alone / signless.of).toBeGreaterThanOrEqual(0.95)
  })

  // look-alikes and pictures, by several writers, that nothing but missed emergencies was mended by: held to what they gave at first sight, short of the goals
  it.each<Lot>([
    ['last', 'en', 71, 74, 0],
    ['last', 'es', 28, 29, 0],
    ['other', 'en', 55, 86, 0],
    ['other', 'es', 20, 29, 0],
    ['blind', 'en', 78, 55, 0],
    ['blind', 'es', 36, 28, 0],
    ['fair', 'en', 101, 101, 0],
    ['fair', 'es', 65, 58, 0],
    ['plain', 'en', 100, 110, 1],
    ['plain', 'es', 101, 115, 3],
    ['natural', 'en', 109, 128, 5],
    ['natural', 'es', 116, 133, 2],
    // the limits of the fourth layer were chosen by the totals of `natural`, `fresh` and `oblique` (told in passing), by none of `afresh`, `anew`, `likely` and `week`
    ['fresh', 'en', 123, 138, 2],
    ['fresh', 'es', 128, 137, 2],
    ['afresh', 'en', 124, 142, 1],
    ['afresh', 'es', 128, 133, 1],
    ['oblique', 'en', 114, 97, 18],
    ['oblique', 'es', 118, 88, 14],
    ['anew', 'en', 112, 191, 10],
    ['anew', 'es', 108, 189, 13],
    ['likely', 'en', 109, 120, 3],
    ['likely', 'es', 107, 110, 4],
    ['week', 'en', 129, 162, 3],
    ['week', 'es', 134, 171, 1],
  ])('keeps what the %s lot gave: %s', holdsAtLeast)

  // written to mislead, in pairs of a look-alike and a sign with the same word, or with half their words taken from signs; mended by as kinds since
  it.each<Lot>([
    ['pairs', 'en', 735, 888, 75],
    ['pairs', 'es', 720, 610, 19],
    ['ordinary', 'en', 0, 1871, 0],
    ['ordinary', 'es', 0, 1848, 0],
  ])('holds what mending by the %s lot gave: %s', holdsAtLeast)
})
