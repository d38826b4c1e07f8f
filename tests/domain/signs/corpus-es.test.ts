import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isSignId } from '../../../src/domain/signs/catalogue.ts'
import { type Expectation, type Score, score } from '../../../src/domain/signs/score.ts'
import { careFor, screen } from '../../../src/domain/signs/screen.ts'

type Row = Expectation & { readonly part: 'tuned' | 'kept' | 'later'; readonly care: string }

const rows = readFileSync(new URL('corpus/es.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((line): Row => JSON.parse(line))
const inSpanish = (text: string) => screen(text, 'es')
const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`

function report(part: string, { texts, emergency, otherSigns, signless, denials }: Score): string {
  return [
    `signs, Spanish, ${part} (${texts} texts):`,
    `emergency caught ${emergency.caught}/${emergency.of} (${percent(emergency.caught, emergency.of)}),`,
    `others ${otherSigns.caught}/${otherSigns.of} (${percent(otherSigns.caught, otherSigns.of)}),`,
    `signless left alone ${percent(signless.alone, signless.of)}, asked ${percent(signless.asked, signless.of)},`,
    `denials seen ${percent(denials.found, denials.of)}`,
  ].join(' ')
}

describe('the corpus of Spanish sign texts', () => {
  it('is large, and a third of it is set aside', () => {
    // `later`: written against the screen as it then stood, and tuned on since
    // 865 of them were kept because they were read rightly: they guard what is reached and measure nothing
    const first = rows.filter((row) => row.part !== 'later')
    expect(first.length).toBeGreaterThanOrEqual(160)
    expect(first.filter((row) => row.part === 'kept').length).toBeGreaterThanOrEqual(0.3 * first.length)
    for (const row of rows) expect(careFor(row.signs)).toBe(row.care)
  })

  it.each(['tuned', 'kept', 'later'] as const)('reaches the goals on the part %s', (part) => {
    const result = score(
      rows.filter((row) => row.part === part),
      inSpanish,
    )
    console.log(report(part, result))
    const { emergency, otherSigns, signless } = result
    // what is set aside stays unseen, so its texts are not named
    const named = part === 'kept' ? 'set aside' : JSON.stringify(result.wrong)
    expect(emergency.caught, named).toBe(emergency.of)
    expect(otherSigns.caught / otherSigns.of, named).toBeGreaterThanOrEqual(0.99)
    expect(signless.alone / signless.of, named).toBeGreaterThanOrEqual(0.95)
    expect(signless.asked / signless.of).toBeLessThanOrEqual(0.08)
  })

  it('quotes the very words', () => {
    for (const { text } of rows)
      for (const { words } of inSpanish(text).evidence) expect(text).toContain(words)
  })
})

const plain = ({ signs, denied, care, unsure }: ReturnType<typeof screen>) => ({
  signs,
  denied,
  care,
  unsure,
})

describe('laws of the screen in Spanish', () => {
  it('is total and keeps to the catalogue', () => {
    const words = fc.constantFrom(...rows.flatMap(({ text }) => text.split(' ')))
    const anyText = fc.array(words, { maxLength: 60 }).map((list) => list.join(' '))
    fc.assert(
      fc.property(anyText, (text) => {
        const { signs, denied, evidence } = inSpanish(text)
        for (const sign of signs) expect(isSignId(sign)).toBe(true)
        for (const sign of denied) expect(sign === 'all' || !signs.includes(sign)).toBe(true)
        for (const { words: quoted } of evidence) expect(text).toContain(quoted)
      }),
      { numRuns: 300 },
    )
  })

  it('minds neither case nor spaces nor closing marks nor missing accents', () => {
    for (const { text } of rows) {
      const bare = text.replace(/[.!?\s]+$/u, '')
      const asked = /\?\s*$/u.test(text) ? '?' : ''
      const once = plain(inSpanish(`${bare}${asked}`))
      expect(
        plain(inSpanish(`  ${bare.toUpperCase().replaceAll(' ', '   ')}${asked || '!'} `)),
        text,
      ).toEqual(once)
      expect(plain(inSpanish(`${bare}${asked}`.normalize('NFD').replace(/\p{M}/gu, ''))), text).toEqual(once)
    }
  })

  it.each([
    ['sin fiebre', 'fever-unwell'],
    ['no tengo sudores nocturnos', 'night-sweats'],
    ['no me duele el pecho', 'chest-breath'],
    ['intestino normal', 'bowel-change'],
    ['sin hinchazón en la pantorrilla', 'calf-swelling'],
  ])('keeps a sign when a different one is denied: %s', (denial, denied) => {
    for (const { text, signs } of rows.filter((row) => !row.signs.some((sign) => sign === denied))) {
      const alone = inSpanish(text).signs
      for (const sign of signs.filter((one) => alone.includes(one))) {
        const after = `${text.replace(/[.!?]+$/u, '')}. ${denial[0]!.toUpperCase()}${denial.slice(1)}`
        expect(inSpanish(after).signs, after).toContain(sign)
        expect(inSpanish(`${denial}, pero ${text}`).signs, `${denial}, pero ${text}`).toContain(sign)
      }
    }
  })

  it.each([
    'dolor 3, …',
    'no tengo fiebre pero …',
    'sin problemas con los ejercicios, …',
    'hice los ejercicios, …',
    'el año pasado me rompí el brazo, …',
    '… y la otra pierna está bien',
    'ayer estaba bien y hoy …',
    'todo lo demás bien, …',
    '…, todo lo demás normal',
    'todo bien excepto …',
    'nada de eso, pero …',
    '¿es normal que …?',
  ])('an emergency stays one beside what has nothing to do with it: %s', (frame) => {
    for (const { text, part, care } of rows) {
      if (part === 'kept' || care !== 'emergency' || text.includes('?')) continue
      const bare = text.replace(/[.!…\s]+$/u, '')
      const own = frame.startsWith('…') || /^[A-Z]{2}/u.test(bare)
      const framed = frame.replace('…', () => (own ? bare : `${bare[0]!.toLowerCase()}${bare.slice(1)}`))
      expect(inSpanish(framed).care, framed).toBe('emergency')
    }
  })

  it('stays under 5 ms on hostile strings of 2,000 characters', () => {
    const pieces = [
      'se me ',
      'no ',
      'ni ',
      'entre las ',
      'no me sale ',
      'mi padre ',
      'dormida ',
      'y si ',
      'la pierna ',
    ]
    for (const piece of pieces) {
      const text = piece.repeat(2000).slice(0, 2000)
      inSpanish(text)
      const times = Array.from({ length: 25 }, () => {
        const start = performance.now()
        inSpanish(text)
        return performance.now() - start
      })
      expect(Math.min(...times), piece).toBeLessThan(5)
    }
  })
})
