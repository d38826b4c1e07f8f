/** How signs are read, whatever the language. Raised when a change of the screen reads a message differently. */
const SCREEN_VERSION = 28

/** Which words and weights are known, by language. Raised with every change of them; a test holds it to that. */
const WORDS_VERSION: Readonly<Record<string, number>> = { en: 50, es: 46 }

/** One value for both ("en-2.1"). */
export const versionOf = (language: string): string =>
  `${language}-${SCREEN_VERSION}.${WORDS_VERSION[language] ?? 0}`
