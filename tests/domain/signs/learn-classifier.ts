import { existsSync, writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { type Random, randomOf } from '../../../src/domain/diaries/random.ts'
import { SIGN_IDS, type SignId } from '../../../src/domain/signs/catalogue.ts'
import { type ClassifierSource, MOST_WORDS, piecesOf } from '../../../src/domain/signs/classifier.ts'
import { saidPartsOf } from '../../../src/domain/signs/said-parts.ts'
import { readingOf } from '../../../src/domain/signs/screen.ts'
import { type Example, Learner } from './learner.ts'
import { type Row, repliesIn, rowsIn } from './texts.ts'

/**
 * Learns the fourth layer: `npx tsx tests/domain/signs/learn-classifier.ts --locale en`, some ten minutes. Stochastic
 * gradients by batches (Adam, Kingma and Ba 2015) with dropout (Srivastava 2014); the same texts give the same tables.
 */

const ROUNDS = 8
const BATCH = 64
const RATE = 2e-3
/** A word counts where so many texts have it. */
const LEAST_TEXTS = 3
const PIECES = 6000

/** See `classifier.ts`; chosen by the totals of the lots set aside. */
const AT: Readonly<Record<string, Pick<ClassifierSource, 'still' | 'stillOther' | 'agrees' | 'ask'>>> = {
  en: { still: 0.02, stillOther: 0.05, agrees: 0.1, ask: 0.7 },
  es: { still: 0.005, stillOther: 0.05, agrees: 0.1, ask: 0.65 },
}
/** The corpora of both languages, after the language; those that are not there are passed over. */
const FILES = [
  '',
  '-more',
  '-unseen',
  '-learned',
  '-pairs',
  '-ordinary',
  '-chat',
  '-threes',
  '-soon',
  '-denials',
  '-tried',
]

/** Only what is learned from; texts set aside (`kept`) are left out. */
function rowsOf(locale: string): Row[] {
  const files = FILES.map((name) => new URL(`corpus/${locale}${name}.jsonl`, import.meta.url))
  const texts = files.filter((file) => existsSync(file)).flatMap(rowsIn)
  return [...texts, ...repliesIn(locale)].filter(({ part }) => part !== 'kept')
}

/** The words of a text and of its parts. */
interface Text {
  readonly whole: readonly string[]
  readonly parts: readonly (readonly string[])[]
  readonly signs: readonly SignId[]
}

function textOf({ text, signs }: Row, locale: string): Text {
  const { whole, parts } = saidPartsOf(readingOf(text, locale))
  return { whole, parts: parts.map(({ words }) => words), signs }
}

/** How often a text without a sign is heard only in part, and any text with one of those, or a part of it, beside it. */
const [IN_PART, BESIDE] = [0.5, 0.35]
/** What stands between two that are told together, more often a full stop than not. */
const BETWEEN: Readonly<Record<string, readonly string[]>> = {
  en: ['.', '.', ',', ',', 'but', 'and'],
  es: ['.', '.', ',', ',', 'pero', 'y'],
}

/** A text as it is heard this time: what tells nothing tells nothing in part, and beside it a sign stays one. */
function heard(
  { whole, parts, signs }: Text,
  { without, between }: { without: readonly Text[]; between: readonly string[] },
  random: Random,
): readonly string[] {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random.uniform() * list.length)]!
  const words = signs.length === 0 && random.uniform() < IN_PART ? pick(parts) : whole
  if (random.uniform() >= BESIDE) return words
  const text = pick(without)
  const other = random.uniform() < 0.5 ? text.whole : pick(text.parts)
  const both = random.uniform() < 0.5 ? [words, other] : [other, words]
  const joined = [...both[0]!, pick(between), ...both[1]!]
  return joined.length <= MOST_WORDS ? joined : words
}

function shuffle<T>(list: T[], random: Random): T[] {
  for (let i = list.length - 1; i > 0; i--) {
    const k = Math.floor(random.uniform() * (i + 1))
    ;[list[i], list[k]] = [list[k]!, list[i]!]
  }
  return list
}

/** How fast it learns: from nothing up to `RATE` in a tenth of the time, then down again to nothing. */
const rateAt = (done: number): number => RATE * Math.min(done / 0.1, (1 - done) / 0.9)

function learned(texts: Text[], locale: string, random: Random): ClassifierSource {
  const counts = new Map<string, number>()
  for (const { whole } of texts)
    for (const word of new Set(whole)) counts.set(word, (counts.get(word) ?? 0) + 1)
  const words = [...counts].filter(([, count]) => count >= LEAST_TEXTS).map(([word]) => word)
  const known = new Map<string, Example['message'][number]>()
  const messageOf = (word: string) => {
    if (!known.has(word)) known.set(word, { id: words.indexOf(word) + 1, pieces: piecesOf(word, PIECES) })
    return known.get(word)!
  }
  const signs = SIGN_IDS.filter((sign) => texts.some((text) => text.signs.includes(sign)))
  const beside = { without: texts.filter((text) => text.signs.length === 0), between: BETWEEN[locale]! }
  const exampleOf = (text: Text): Example => ({
    message: heard(text, beside, random).map(messageOf),
    isThere: signs.map((sign) => text.signs.includes(sign)),
  })
  const learner = new Learner(random, words.length, PIECES, signs.length)
  const batches = Math.ceil(texts.length / BATCH)
  for (let round = 0; round < ROUNDS; round++) {
    shuffle(texts, random)
    let loss = 0
    for (let n = 0; n < batches; n++) {
      const done = (round * batches + n) / (ROUNDS * batches)
      loss += learner.learn(texts.slice(n * BATCH, (n + 1) * BATCH).map(exampleOf), rateAt(done))
    }
    console.log(`round ${round + 1}: ${(loss / batches).toFixed(4)}`)
  }
  return {
    ...AT[locale]!,
    signs,
    words: words.join(' '),
    pieces: PIECES,
    tables: learner.tables(),
  }
}

const { locale } = parseArgs({ options: { locale: { type: 'string', default: 'en' } } }).values
const texts = rowsOf(locale)
  .map((row) => textOf(row, locale))
  .filter(({ whole, parts }) => parts.length > 0 && whole.length <= MOST_WORDS)
const source = learned(texts, locale, randomOf(1, 0))
const place = new URL(`../../../src/domain/signs/lexicon/${locale}/classifier.json`, import.meta.url)
writeFileSync(place, `${JSON.stringify(source)}\n`)
