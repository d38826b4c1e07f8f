import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isSignId } from '../../../src/domain/signs/catalogue.ts'
import { screen } from '../../../src/domain/signs/screen.ts'

interface Row {
  readonly text: string
  readonly signs: readonly string[]
  readonly part: string
  readonly care: string
}
const rows = readFileSync(new URL('corpus/en.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((line): Row => JSON.parse(line))
const anyText = fc.oneof(
  fc.string({ maxLength: 2500, unit: 'binary' }),
  fc
    .array(fc.constantFrom(...rows.flatMap(({ text }) => text.split(' '))), { maxLength: 60 })
    .map((words) => words.join(' ')),
)
const anyRow = fc.constantFrom(...rows)
const plain = ({ signs, denied, care, unsure }: ReturnType<typeof screen>) => ({
  signs,
  denied,
  care,
  unsure,
})

describe('laws of the screen', () => {
  it('is total and keeps to the catalogue', () => {
    fc.assert(
      fc.property(anyText, fc.string(), (text, locale) => {
        const { signs, denied, unsure, evidence } = screen(text, locale)
        for (const sign of [...signs, ...unsure]) expect(isSignId(sign)).toBe(true)
        for (const sign of denied) expect(sign === 'all' || !signs.includes(sign)).toBe(true)
        for (const { words } of evidence) expect(text).toContain(words)
      }),
      { numRuns: 300 },
    )
  })

  it('is deterministic', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(screen(text, 'en')).toEqual(screen(text, 'en'))
      }),
    )
  })

  it('minds neither case nor spaces nor closing marks', () => {
    fc.assert(
      fc.property(anyRow, fc.constantFrom('.', '!', '...', ' .', ' 🙏'), ({ text }, end) => {
        const bare = text.replace(/[.!?\s]+$/u, '')
        const asked = /\?\s*$/u.test(text) ? '?' : ''
        const changed = `  ${bare.toUpperCase().replaceAll(' ', '   ')}${asked || end} `
        expect(plain(screen(changed, 'en'))).toEqual(plain(screen(`${bare}${asked}`, 'en')))
      }),
      { numRuns: 600 },
    )
  })

  it.each([
    ['no fever', 'fever-unwell'],
    ['no night sweats', 'night-sweats'],
    ['no chest pain', 'chest-breath'],
    ['bowels fine', 'bowel-change'],
    ['no calf swelling', 'calf-swelling'],
  ])('keeps a sign when a different one is denied: %s', (denial, denied) => {
    for (const { text, signs } of rows.filter((row) => row.signs.length > 0 && !row.signs.includes(denied))) {
      const joined = `${text.replace(/[.!?]+$/u, '')}. ${denial[0]!.toUpperCase()}${denial.slice(1)}`
      const alone = screen(text, 'en').signs
      for (const sign of signs.filter((one) => alone.some((other) => other === one)))
        expect(screen(joined, 'en').signs, joined).toContain(sign)
      for (const sign of signs.filter((one) => alone.some((other) => other === one)))
        expect(screen(`${denial}, but ${text}`, 'en').signs, `${denial}, but ${text}`).toContain(sign)
    }
  })

  it.each(['and the knee is fine', 'and pain is ok', 'but my back is ok', ', knee fine'])(
    'keeps what is told where another part of the body is fine: %s',
    (end) => {
      for (const { text } of rows.filter(({ signs }) => signs.length > 0)) {
        const bare = text.replace(/[.!?\s]+$/u, '')
        if (screen(bare, 'en').signs.length === 0) continue
        const joined = `${bare}${end.startsWith(',') ? '' : ' '}${end}`
        expect(screen(joined, 'en').signs, joined).not.toEqual([])
      }
    },
  )

  it.each([
    'pain 3, …',
    '2 calf 4. …',
    'no problems with the exercises, …',
    'exercises no problem and …',
    'last year I broke my arm, …',
    'my mum had the same and …',
    '… and the other leg is good',
    'the other leg is good and …',
    'feeling great today, …',
    'yesterday was fine, today …',
    '…, everything else is normal',
    'did both, …',
    '… and I can still walk',
    'no signs apart from …',
  ])('an emergency stays one beside what has nothing to do with it: %s', (frame) => {
    for (const { text, part, care } of rows) {
      if (part !== 'tuned' || care !== 'emergency' || text.includes('?')) continue
      const bare = text.replace(/[.!…\s]+$/u, '')
      const own = frame.startsWith('…') || /^(?:I\b|[A-Z]{2})/u.test(bare)
      const framed = frame.replace('…', () => (own ? bare : `${bare[0]!.toLowerCase()}${bare.slice(1)}`))
      expect(screen(framed, 'en').care, framed).toBe('emergency')
    }
  })

  it('leaves a list of denials alone, however it is joined', () => {
    const things = [
      ...['numbness', 'tingling', 'weakness', 'bladder trouble', 'fever', 'chest pain', 'night pain'],
      ...['weight loss', 'pins and needles', 'foot drop', 'calf swelling', 'problems peeing'],
    ]
    const lists = ['no A no B no C', 'no A, no B, no C', 'no A, B or C', 'no A, B, C', 'no A and no B']
    const more = ['without A or B', 'A no, B no', 'A? no. B? no.', 'denies A, B and C', '2 calf 4 no A no B']
    for (const list of [...lists, ...more])
      for (let i = 0; i < things.length; i++) {
        const at = (k: number): string => things[(i + k) % things.length]!
        const text = list.replace(/\b[ABC]\b/gu, (letter) => at({ A: 0, B: 2, C: 5 }[letter]!))
        expect(screen(text, 'en').signs, text).toEqual([])
      }
  })

  it('a lesser sign does not hide one that stands beside what is fine', () => {
    const { signs, care } = screen(
      'I have a fever since Monday. I pooed in my sleep and the knee is fine',
      'en',
    )
    expect(signs).toEqual(expect.arrayContaining(['bowel-change', 'fever-unwell']))
    expect(care).toBe('emergency')
  })

  it('says the same of a text said twice', () => {
    for (const { text } of rows) {
      const once = screen(text, 'en').signs
      const twice = screen(`${text}\n${text}`, 'en').signs
      for (const sign of once) expect(twice, text).toContain(sign)
    }
  })

  it('stays under 5 ms on hostile strings of 2,000 characters', () => {
    const hostile = [
      'numb ',
      'between my ',
      "can't ",
      'no ',
      'not not, ',
      'no numbness or ',
      'what if i ',
      'my dad ',
      'both legs ',
      'a',
      ')(',
      '?',
      'zqxvbladerrnesk ',
      'pee but ',
      'it is not that i do not ',
      'fine ',
      'leg foot arm ',
    ].map((piece) => piece.repeat(2000).slice(0, 2000))
    for (const text of hostile) {
      screen(text, 'en')
      const times = Array.from({ length: 25 }, () => {
        const start = performance.now()
        screen(text, 'en')
        return performance.now() - start
      })
      expect(Math.min(...times), text.slice(0, 20)).toBeLessThan(5)
    }
  })
})
