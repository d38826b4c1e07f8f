import { describe, expect, it } from 'vitest'
import type { Judged, Verdict } from '../../../src/domain/signs/judge.ts'
import { asks } from '../../../src/domain/signs/net.ts'
import { saidPartsOf } from '../../../src/domain/signs/said-parts.ts'
import { readingOf, screen } from '../../../src/domain/signs/screen.ts'
import { lookedAtAgain } from '../../../src/domain/signs/second-look.ts'

const ORDINARY = 'Did two sessions after work, calf, about a 3, then watched the rain from the boathouse.'

const found = (sign: Parameters<typeof asks>[0], verdict: Verdict, isPicture = false): Judged => ({
  match: { rule: { ...asks(sign), isPicture }, at: [0] },
  verdict,
})
const verdicts = (text: string, ...judged: Judged[]): string[] =>
  lookedAtAgain(readingOf(text, 'en'), judged).map(({ match, verdict }) => `${match.rule.sign} ${verdict}`)

describe('the fourth layer', () => {
  it('lets a hint be in a message that tells nothing', () => {
    expect(verdicts(ORDINARY, found('bowel-change', 'unsure'), found('calf-swelling', 'unsure'))).toEqual([
      'bowel-change dropped',
      'calf-swelling dropped',
    ])
  })

  it('lets be neither what is told, nor thoughts of self-harm, nor what was told by a picture', () => {
    expect(verdicts(ORDINARY, found('calf-swelling', 'sure'))).toEqual(['calf-swelling sure'])
    expect(verdicts(ORDINARY, found('bowel-change', 'sure'), found('night-pain', 'unsure'))).toEqual([
      'bowel-change sure',
      'night-pain unsure',
    ])
    expect(verdicts(ORDINARY, found('self-harm', 'unsure'))).toEqual(['self-harm unsure'])
    expect(verdicts(ORDINARY, found('leg-weakness', 'unsure', true))).toEqual(['leg-weakness unsure'])
  })

  it('is not heard in a few words', () => {
    expect(verdicts('did my two sessions', found('bowel-change', 'unsure'))).toEqual(['bowel-change unsure'])
  })

  it('is not heard of a message longer than people write', () => {
    const text = Array.from({ length: 12 }, (_, i) => ORDINARY.replace('two', `${i}`)).join(' ')
    expect(verdicts(text, found('bowel-change', 'unsure'))).toEqual(['bowel-change unsure'])
  })

  it.each([
    [
      'en',
      'Not a pain, more a feeling that the leg is not taking orders, gone from under me three times',
      'leg-weakness',
    ],
    [
      'es',
      'una hecha, la otra no porque me puse a pensar en cómo sería no estar, y pienso en eso bastante',
      'self-harm',
    ],
  ])('asks about what no other has heard: %s', (locale, text, sign) => {
    const { signs, unsure, evidence } = screen(text, locale)
    expect(signs).toContain(sign)
    expect(unsure).toContain(sign)
    expect(text).toContain(evidence.find((one) => one.sign === sign)?.words)
  })
})

describe('a message as the fourth layer reads it', () => {
  const wholeOf = (text: string): string => saidPartsOf(readingOf(text, 'en')).whole.join(' ')

  it('holds what is said twice once, and neither thanks nor smileys nor closing marks', () => {
    expect(wholeOf('Two done. Calf 4. Two done!')).toBe('two done . calf 4')
    expect(wholeOf('two done, calf 4 🙏 thanks...')).toBe('two done , calf 4')
    expect(wholeOf('is it normal?! thanks')).toBe('is it normal ?')
  })

  it('has the sentences and their parts', () => {
    const { parts } = saidPartsOf(readingOf('Two done, calf 4. Knee is fine', 'en'))
    expect(parts.map(({ words }) => words.join(' '))).toEqual([
      'two done , calf 4',
      'two done',
      'calf 4',
      'knee is fine',
    ])
  })
})
