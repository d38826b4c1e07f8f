import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { SIGN_IDS, type SignId } from '../../../src/domain/signs/catalogue.ts'
import {
  type ClassifierSource,
  DIMENSIONS,
  FILTERS,
  HIDDEN,
  MOST_WORDS,
  piecesOf,
  WIDTHS,
} from '../../../src/domain/signs/classifier.ts'
import { saidPartsOf } from '../../../src/domain/signs/said-parts.ts'
import { readingOf } from '../../../src/domain/signs/screen.ts'
import { type Row, repliesIn, rowsIn } from './texts.ts'

/**
 * Learns the fourth layer: `npx tsx tests/domain/signs/learn-classifier.ts --locale en`, some nine minutes. Needs `python3`
 * with PyTorch 2 (BSD-3), which does the work in `learn-classifier.py`; the same texts give the same tables.
 */

const ROUNDS = 26
/** A word counts where so many texts have it. */
const LEAST_TEXTS = 3
const PIECES = 6000

/** See `classifier.ts`; chosen by the totals of the lots set aside, for both languages. */
const LIMITS = { still: 0.006, stillOther: 0.05, agrees: 0.1, ask: 0.4 }
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
  '-passing',
  '-below',
  '-daily',
  '-terse',
  '-beside',
  '-briefly',
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

/** What stands between two that are told together, more often a full stop than not. */
const BETWEEN: Readonly<Record<string, readonly string[]>> = {
  en: ['.', '.', ',', ',', 'but', 'and'],
  es: ['.', '.', ',', ',', 'pero', 'y'],
}

function learned(texts: readonly Text[], locale: string): ClassifierSource {
  const counts = new Map<string, number>()
  const pieces: Record<string, readonly number[]> = {}
  for (const { whole, parts } of texts) {
    for (const word of new Set(whole)) counts.set(word, (counts.get(word) ?? 0) + 1)
    for (const word of [...whole, ...parts.flat(), ...BETWEEN[locale]!])
      pieces[word] ??= piecesOf(word, PIECES)
  }
  const words = [...counts].filter(([, count]) => count >= LEAST_TEXTS).map(([word]) => word)
  const signs = SIGN_IDS.filter((sign) => texts.some((text) => text.signs.includes(sign)))
  const tables = tablesOf({
    signs,
    words,
    pieces,
    kinds: PIECES,
    between: BETWEEN[locale],
    mostWords: MOST_WORDS,
    dimensions: DIMENSIONS,
    widths: WIDTHS,
    filters: FILTERS,
    hidden: HIDDEN,
    rounds: ROUNDS,
    texts: texts.map((text) => ({ ...text, signs: text.signs.map((sign) => signs.indexOf(sign)) })),
  })
  return { limits: LIMITS, signs, words: words.join(' '), pieces: PIECES, tables }
}

/** The two hand each other files. */
function tablesOf(lot: object): ClassifierSource['tables'] {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-learn-'))
  const [given, made] = [join(folder, 'lot.json'), join(folder, 'tables.json')]
  const script = fileURLToPath(new URL('learn-classifier.py', import.meta.url))
  try {
    writeFileSync(given, JSON.stringify(lot))
    execFileSync('python3', [script, given, made], { stdio: 'inherit' })
    return JSON.parse(readFileSync(made, 'utf8'))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

const { locale } = parseArgs({ options: { locale: { type: 'string', default: 'en' } } }).values
const texts = rowsOf(locale)
  .map((row) => textOf(row, locale))
  .filter(({ whole, parts }) => parts.length > 0 && whole.length <= MOST_WORDS)
const place = new URL(`../../../src/domain/signs/lexicon/${locale}/classifier.json`, import.meta.url)
writeFileSync(place, `${JSON.stringify(learned(texts, locale))}\n`)
