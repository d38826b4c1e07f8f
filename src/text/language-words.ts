/** How somebody asks for another language in a line of its own, and its code; the same in every language. */
export const LANGUAGE_WORDS: Readonly<Record<string, string>> = {
  'in english': 'en',
  'in english please': 'en',
  english: 'en',
  'en inglés': 'en',
  'en ingles': 'en',
  'en español': 'es',
  'en espanol': 'es',
  'en español por favor': 'es',
  español: 'es',
  espanol: 'es',
  'en castellano': 'es',
  castellano: 'es',
  'in spanish': 'es',
  'in spanish please': 'es',
}
