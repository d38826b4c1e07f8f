import { en } from './en/index.ts'
import { es } from './es/index.ts'

/** Every sentence of a language; another language is the same object in other words. */
export type Texts = typeof en

const LANGUAGES: Readonly<Record<string, Texts>> = { en, es }
export const LANGUAGE_CODES = Object.keys(LANGUAGES)

/** The platform's codes of a locale, and the language in which it is answered; all others read English. */
export const PLATFORM_LOCALES: Readonly<Record<string, string>> = { 'es-ES': 'es', 'es-419': 'es' }

/** The sentences of a language; English where it is not there. */
export const textsFor = (language: string): Texts => LANGUAGES[language] ?? en

/** Some of the sentences in every language but English, by the platform's code of a locale. */
export const byLocale = <T>(some: (texts: Texts) => T): Readonly<Record<string, T>> =>
  Object.fromEntries(
    Object.entries(PLATFORM_LOCALES).map(([locale, language]) => [locale, some(textsFor(language))]),
  )
