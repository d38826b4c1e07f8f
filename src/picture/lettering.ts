/** Families as the font files of the package name them; see png.ts. */
export const FAMILY = 'DejaVu Sans Condensed'

// Advance widths in parts of the font size, rounded up, of the regular face.
const NARROW = new Set("iljI.,:;'|!")
const MIDDLE = new Set('frt-()[]/ ')
const WIDE = new Set('mwMWGOQDHNU%@—')
const BOLD_FACTOR = 1.13

/** Width of words in user units, on the safe side by some per cent. */
export function widthOf(words: string, size: number, bold = false): number {
  let ems = 0
  for (const letter of words) {
    if (NARROW.has(letter)) ems += 0.31
    else if (MIDDLE.has(letter)) ems += 0.38
    else if (WIDE.has(letter)) ems += 0.86
    else if (letter > '\u024f') ems += 1.1
    else ems += letter >= 'A' && letter <= 'Z' ? 0.68 : 0.58
  }
  return ems * size * (bold ? BOLD_FACTOR : 1)
}

/** Words cut with an ellipsis so that they take no more than `most` user units. */
export function cutTo(words: string, size: number, most: number, bold = false): string {
  if (widthOf(words, size, bold) <= most) return words
  const letters = [...words]
  while (letters.length > 0 && widthOf(`${letters.join('')}…`, size, bold) > most) letters.pop()
  return `${letters.join('').trimEnd()}…`
}
