const VOWEL = '[aeiouáéíóúü]'
/** Strong vowels, or weak ones with an accent, part; a weak one beside another vowel belongs to it. */
const STRONG = /[aeoáéíóú]/g
const letters = (word: string): string =>
  word
    .toLowerCase()
    .replace(/qu/g, 'q')
    .replace(/gu(?=[eiéí])/g, 'g')
    .replace(/y$/, 'i')
    .replace(/[^a-záéíóúüñ]/g, '')

/** Syllables of a Spanish word: each group of vowels once, and once more for every hiatus in it. */
function syllables(word: string): number {
  const groups = letters(word).match(new RegExp(`${VOWEL}+`, 'g')) ?? []
  const count = groups.reduce((sum, group) => sum + Math.max(1, group.match(STRONG)?.length ?? 1), 0)
  return Math.max(1, count)
}

/**
 * Reading ease of Spanish, 0 to 100 and more, higher is easier: 206.84 - 60 syllables a word - 1.02 words a sentence
 * (Fernández Huerta 1959, in the form usual since Law 2011). 70 and above is read in the sixth year of school (common
 * reading of its table: 80 to 90 fifth, 70 to 80 sixth year).
 */
export function readingEase(text: string): number {
  const sentences = text.split(/[.!?]+(?:\s|$)|\n/).filter((part) => /\p{L}/u.test(part))
  const words = text.match(/\p{L}[\p{L}-]*/gu) ?? []
  const sum = words.reduce((total, word) => total + syllables(word), 0)
  return 206.84 - 60 * (sum / words.length) - 1.02 * (words.length / sentences.length)
}

export { syllables }
