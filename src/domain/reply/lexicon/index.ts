import { compile, type Language } from './compile.ts'
import { en } from './en/index.ts'
import { es } from './es/index.ts'
import { versionOf } from './version.ts'

/** A language is a folder of data and one line here. */
const LANGUAGES: readonly Language[] = [compile(en), compile(es)]

/** The language of a locale ("en-GB" is en); the first where there is none yet. */
export function languageOf(locale: string): Language {
  const wanted = locale.slice(0, 2).toLowerCase()
  return LANGUAGES.find(({ language }) => language === wanted) ?? LANGUAGES[0]!
}

/** The words and rules by which a reply in this locale is read ("en-3.3": the reader's version, then the words'). */
export const lexiconVersion = (locale: string): string => versionOf(languageOf(locale).language)
