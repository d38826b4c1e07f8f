/** How words are read, whatever the language. Raised when a change of the reader reads a reply differently. */
const READER_VERSION = 4

/** Which words are known, by language. Raised with every change of its words; a test holds it to that. */
const WORDS_VERSION: Readonly<Record<string, number>> = { en: 6, es: 4 }

/** One value for both, kept beside every stored reading so that a later one can be compared ("en-3.3"). */
export const versionOf = (language: string): string =>
  `${language}-${READER_VERSION}.${WORDS_VERSION[language] ?? 0}`
