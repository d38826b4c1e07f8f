/** The phrases of a list, parted by commas, with single spaces between their words. */
export const phrasesIn = (text: string): string[] =>
  text
    .trim()
    .split(/\s*,\s*/)
    .filter((phrase) => phrase !== '')
    .map((phrase) => phrase.replace(/\s\s+|[^\S ]/g, ' '))
