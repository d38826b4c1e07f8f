import { en } from './en/index.ts'
import { es } from './es/index.ts'

/** Every sentence of a language; another language is the same object in other words. */
export type Texts = typeof en

const LANGUAGES: Readonly<Record<string, Texts>> = { en, es }
export const LANGUAGE_CODES = Object.keys(LANGUAGES)

/** The sentences of a language; English where it is not there. */
export const textsFor = (language: string): Texts => LANGUAGES[language] ?? en
