import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fold, MOST_CHARACTERS } from '../../../src/domain/reply/fold.ts'
import { tokenise } from '../../../src/domain/reply/tokens.ts'

const words = (text: string): string[] => tokenise(fold(text)).map((t) => t.text)

describe('fold', () => {
  it.each([
    ['CALF', 'calf'],
    ['２　ｃａｌｆ　４', '2 calf 4'],
    ['𝐜𝐚𝐥𝐟 𝟒', 'calf 4'],
    ['ca\u200blf\u202e', 'calf'],
    ['cálf', 'calf'],
    ['ca\u0301lf', 'calf'],
    ['I can’t', "i can't"],
    ['2️⃣ calf 4️⃣', '2  calf 4 '],
    ['1️⃣0️⃣', '10 '],
    ['❷ 🔟 ④ ٤ ४', '2 10 4 4 4'],
    ['4–5', '4-5'],
    ['2½', '2½'],
    ['ᴄᴀʟꜰ', 'calf'],
    ['a\tb\r\nc\u0000', 'a b\n\nc '],
  ])('%s', (text, plain) => expect(fold(text).text).toBe(plain))

  it('quotes the very words', () => {
    const folded = fold('Çan’t 𝐟𝐞𝐞𝐥 it 2️⃣')
    const at = folded.text.indexOf('feel')
    expect(folded.quote(at, at + 4)).toBe('𝐟𝐞𝐞𝐥')
    expect(folded.quote(0, 5)).toBe('Çan’t')
  })

  it('reads 2,000 characters', () => expect(fold('É'.repeat(5000)).text).toHaveLength(MOST_CHARACTERS))

  it('is total, and quotes lie in the original', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (text) => {
        const folded = fold(text)
        const tokens = tokenise(folded)
        expect(tokens.every((t) => t.end > t.start && text.includes(folded.quote(t.start, t.end)))).toBe(true)
      }),
    )
  })
})

describe('tokens', () => {
  it('keeps contractions, numbers and marks', () => {
    expect(words("I can't, don't  4.5 x2!!! \n 2½ 👍👍")).toEqual([
      'i',
      "can't",
      ',',
      "don't",
      '4.5',
      'x',
      '2',
      '!',
      '\n',
      '2½',
      '👍',
    ])
  })
  it('gives numbers their value', () => {
    expect(tokenise(fold('½ 2½ 3.25 .5 calf.4 07')).flatMap((t) => t.value ?? [])).toEqual([
      0.5, 2.5, 3.25, 0.5, 4, 7,
    ])
  })
  it('takes links and mentions as one mark', () => {
    const tokens = tokenise(fold('<@12345678> 4 <:calf:99887766> https://example.org/7/calf ok'))
    expect(tokens.filter((t) => t.kind !== 'mark').map((t) => t.text)).toEqual(['4', 'ok'])
  })
})
