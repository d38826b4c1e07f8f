/** Vowel groups, a silent final e left out: rough, but close to a count by hand on plain English. */
function syllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '')
  if (letters.length <= 3) return 1
  const groups = letters.replace(/(?:[^laeiouy]es|[^aeiouydt]ed|[^laeiouy]e)$/, '').match(/[aeiouy]+/g)
  return Math.max(1, groups?.length ?? 1)
}

/** Flesch-Kincaid grade (Kincaid 1975): 0.39 words per sentence + 11.8 syllables per word - 15.59. */
export function gradeLevel(text: string): number {
  const sentences = text.split(/[.!?]+(?:\s|$)|\n/).filter((part) => /[a-z]/i.test(part))
  const words = text.match(/[a-z][a-z'-]*/gi) ?? []
  const sum = words.reduce((total, word) => total + syllables(word), 0)
  return 0.39 * (words.length / sentences.length) + 11.8 * (sum / words.length) - 15.59
}

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length
