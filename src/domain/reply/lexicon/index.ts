import { versionOf as signsVersionOf } from '../../signs/lexicon/version.ts'
import { compile, type Language } from './compile.ts'
import { en } from './en/index.ts'
import { es } from './es/index.ts'
import { versionOf } from './version.ts'

/** A language is a folder of data and one line here. */
export const LANGUAGES: readonly Language[] = [compile(en), compile(es)]

/** The language of a locale ("en-GB" is en); the first where there is none yet. */
export function languageOf(locale: string): Language {
  const wanted = locale.slice(0, 2).toLowerCase()
  return LANGUAGES.find(({ language }) => language === wanted) ?? LANGUAGES[0]!
}

/**
 * By what a reply in this locale is read: version of the reader and of its words, then of the screen for urgent signs
 * and of its words ("en-5.7/2.3").
 */
export const lexiconVersion = (locale: string): string => {
  const { language } = languageOf(locale)
  return `${versionOf(language)}/${signsVersionOf(language).split('-').at(-1)}`
}
