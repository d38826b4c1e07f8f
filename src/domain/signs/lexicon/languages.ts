import { type Compiled, compile } from '../compile.ts'
import { en } from './en.ts'
import { es } from './es/es.ts'
import type { LexiconSource } from './shape.ts'

/** One line a language; the first is read where a language is not known. */
const SOURCES: Readonly<Record<string, LexiconSource>> = { en, es }
const FALLBACK = 'en'

const ready = new Map(
  Object.entries(SOURCES).map(([locale, source]): [string, Compiled] => [locale, compile(source)]),
)

/** The lexicon of a locale ("en-GB" is "en"). */
export function lexiconFor(locale: string): Compiled {
  const language = locale.toLowerCase().split(/[-_]/, 1)[0] ?? FALLBACK
  return ready.get(language) ?? ready.get(FALLBACK)!
}
