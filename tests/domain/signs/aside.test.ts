import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Expectation, score } from '../../../src/domain/signs/score.ts'
import { screen } from '../../../src/domain/signs/screen.ts'

/** Plain texts that nothing is learned from; at first sight see the corpus's README. */
describe('the lot of sign texts set aside', () => {
  it.each(['en', 'es'])('reaches the goals: %s', (locale) => {
    const rows = readFileSync(new URL(`corpus/${locale}-aside.jsonl`, import.meta.url), 'utf8')
      .trim()
      .split('\n')
      .map((line): Expectation => JSON.parse(line))
    const { emergency, otherSigns, signless, denials } = score(rows, (text) => screen(text, locale))
    console.log(
      `signs, ${locale}, set aside: emergency ${emergency.caught}/${emergency.of}, others ${otherSigns.caught}/${otherSigns.of}, ` +
        `signless left alone ${signless.alone}/${signless.of}, denials seen ${denials.found}/${denials.of}`,
    )
    expect(emergency.caught).toBe(emergency.of)
    expect(otherSigns.caught / otherSigns.of).toBeGreaterThanOrEqual(0.99)
    expect(signless.alone / signless.of).toBeGreaterThanOrEqual(0.95)
  })
})
