/** How words are read, whatever the language. Raised when a change of the reader reads a reply differently. */
const READER_VERSION = 16

/** Which words are known, by language. Raised with every change of its words; a test holds it to that. */
const WORDS_VERSION: Readonly<Record<string, number>> = { en: 23, es: 21 }

/** One value for both ("en-3.3"); with that of the screen for urgent signs it is kept beside every stored reading. */
export const versionOf = (language: string): string =>
  `${language}-${READER_VERSION}.${WORDS_VERSION[language] ?? 0}`
