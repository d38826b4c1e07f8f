/**
 * A coach's own words to a client: lines, emphasis and links that can be seen stay. They call nobody, and hide nothing
 * behind other words, behind code or by turning the direction of writing.
 */
export const asWritten = (words: string): string =>
  words
    .replace(/[^\P{C}\n]+/gu, ' ')
    .replace(/[\\`|<[\]]/g, '\\$&')
    .replaceAll('@', '@\u200b')
    .trim()
