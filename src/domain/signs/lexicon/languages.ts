import { type Compiled, compile } from '../compile.ts'
import { en } from './en.ts'
import { es } from './es/es.ts'
import type { LexiconSource } from './shape.ts'

/** One line a language; the first is read where a language is not known. */
const SOURCES: Readonly<Record<string, LexiconSource>> = { en, es }
const FALLBACK = 'en'

const ready = new Map<string, Compiled>()

function readyFor(language: string): Compiled {
  const known = ready.get(language)
  if (known) return known
  const made = compile(SOURCES[language]!)
  ready.set(language, made)
  return made
}

/** The lexicon of a locale ("en-GB" is "en"), made ready at its first use, since that is the slow part of a start. */
export function lexiconFor(locale: string): Compiled {
  const asNamed = ready.get(locale)
  if (asNamed) return asNamed
  const language = locale.toLowerCase().split(/[-_]/, 1)[0] ?? FALLBACK
  return readyFor(Object.hasOwn(SOURCES, language) ? language : FALLBACK)
}
