import { Locale } from 'discord.js'
import { describe, expect, it } from 'vitest'
import { RULE_IDS } from '../../src/domain/rules/assessment.ts'
import { SIGN_IDS } from '../../src/domain/signs/catalogue.ts'
import { DRILLS as DRILLS_EN } from '../../src/text/en/drills.ts'
import { DRILLS as DRILLS_ES } from '../../src/text/es/drill-prose.ts'
import { byLocale, LANGUAGE_CODES, PLATFORM_LOCALES, type Texts, textsFor } from '../../src/text/index.ts'
import { argumentsOf, leaves, marksIn, OF_FACTS, tells } from './samples.ts'

type Sentence = (...args: readonly unknown[]) => unknown

const en = textsFor('en')
const others = LANGUAGE_CODES.filter((code) => code !== 'en')
const inEnglish = leaves(en)
/** Said the same in both languages. */
const ALIKE = /^(words\.no|screening\.(seen|earlier)\.no|course\.languageWords\..*|coach\.outcome\.hospital)$/

const at = (texts: Texts, path: string): unknown =>
  path.split('.').reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], texts)
const said = (value: unknown): string =>
  typeof value === 'string'
    ? value
    : Array.isArray(value)
      ? value.map(said).join('\n')
      : JSON.stringify(value)

describe('the languages on the platform', () => {
  it('are all but English, each by a locale that the platform knows', () => {
    expect(new Set(Object.values(PLATFORM_LOCALES))).toEqual(new Set(others))
    expect(Object.values(Locale)).toEqual(expect.arrayContaining(Object.keys(PLATFORM_LOCALES)))
    expect(byLocale(({ language }) => language)).toEqual(PLATFORM_LOCALES)
  })
})

describe.each(others)('the language %s', (code) => {
  const texts = textsFor(code)

  it('has its own words for all there is in English, and no more', () => {
    expect(texts.language).toBe(code)
    expect(
      leaves(texts)
        .map(({ path }) => path)
        .toSorted(),
    ).toEqual(inEnglish.map(({ path }) => path).toSorted())
  })

  it('leaves nothing empty and nothing in English', () => {
    const strings = inEnglish.filter(
      ({ path, value }) =>
        typeof value === 'string' && value !== '' && path !== 'language' && !ALIKE.test(path),
    )
    const same = strings.filter(({ path, value }) => at(texts, path) === value).map(({ path }) => path)
    const empty = strings.filter(({ path }) => String(at(texts, path)).trim() === '').map(({ path }) => path)
    expect(empty).toEqual([])
    expect(same.filter((path) => !isName(String(at(texts, path))))).toEqual([])
  })

  const sentences = inEnglish.filter(({ path, value }) => typeof value === 'function' && !OF_FACTS.test(path))
  it.each(sentences.map(({ path, value }) => [path, value as Sentence] as const))(
    'tells the same of what it is given: %s',
    (path, english) => {
      const args = argumentsOf(path, english)
      const ours = said((at(texts, path) as Sentence)(...args))
      const theirs = said(english(...args))
      const told = (text: string, of: Texts) => marksIn(args).filter((mark) => tells(text, mark, of))
      expect(told(ours, texts)).toEqual(told(theirs, en))
      if (theirs !== '' && !/[a-z]{4}/.test(theirs)) return
      expect(ours).not.toBe('')
    },
  )

  it('gives every rule the same figures', () => {
    const figures = Object.fromEntries(
      'pain usual rise days done planned percent low high replies sessions before checkIns worstPain answers n'
        .split(' ')
        .map((name, index) => [name, 41 + index]),
    )
    const rest = {
      sign: 'night-pain',
      care: 'soon',
      latest: '2026-03-11',
      dayBefore: '2026-03-10',
      flareDay: '2026-03-09',
      firstDay: '2026-03-08',
      began: '2026-03-02',
      start: '2026-03-01',
      reach: 5,
      reachFrom: 5,
      reachTo: 2,
      reachNow: 'calf',
      reachBegan: 'thigh',
      painFrom: 8,
      painTo: 3,
      slopePerWeek: -3,
      p: 0.012,
      word: 'improving',
      ladder: 'glide',
      rung: 1,
      next: 2,
    }
    const numbers = (text: string): string[] => (text.match(/\d+/g) ?? []).toSorted()
    for (const rule of RULE_IDS) {
      const flag = { rule, figures: { ...figures, ...rest } }
      expect(numbers(texts.rules.why(flag)), rule).toEqual(numbers(en.rules.why(flag)))
    }
  })
})

/** A code or a name of the platform, the same in every language. */
const isName = (text: string): boolean => /^[A-Z_]+$|^[\d\s×x.-]+$/.test(text)

describe('drills in Spanish', () => {
  it('are those in English, each with all its parts', () => {
    expect(Object.keys(DRILLS_ES).toSorted()).toEqual(Object.keys(DRILLS_EN).toSorted())
    for (const [id, prose] of Object.entries(DRILLS_ES))
      for (const part of ['name', 'how', 'cautions', 'stopIf'] as const)
        expect(prose[part].trim(), `${id} ${part}`).not.toBe('')
  })

  it('warn of the same: pregnancy, an artificial hip, the band, the light pull', () => {
    const warnings: [RegExp, RegExp][] = [
      [/pregnant/i, /embarazo/i],
      [/artificial hip/i, /prótesis de cadera/i],
      [/on cloth/i, /sobre tela/i],
      [/first light pull only/i, /solo hasta el primer tirón leve/i],
      [/never hold the pull/i, /no aguantes nunca el tirón/i],
      [/to get out, go slowly back the same way/i, /para salir, vuelve despacio por el mismo camino/i],
      [/hips .*heavy/i, /cadera .*pesada/i],
      [/\bhalf of the last load/i, /\bmitad de la última carga/i],
      [/ask your doctor/i, /pregunta (antes )?a tu médico/i],
    ]
    for (const [id, prose] of Object.entries(DRILLS_EN))
      for (const [english, spanish] of warnings) {
        const all = (one: typeof prose) => Object.values(one).join(' ')
        expect(spanish.test(all(DRILLS_ES[id]!)), `${id} ${spanish}`).toBe(english.test(all(prose)))
      }
  })

  it('have words for every sign, short enough for an option of a list', () => {
    for (const id of SIGN_IDS) expect(textsFor('es').signs[id].label.length, id).toBeLessThanOrEqual(90)
  })
})
