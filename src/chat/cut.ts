/** Cuts what the platform would refuse as too long, between words, and shows that it was cut. */
export function cut(text: string, most: number): string {
  if (text.length <= most) return text
  return `${text.slice(0, breakBefore(text, most - 1)).trimEnd()}…`
}

/** A label of at most `most` characters, and what did not fit of it, at most `mostRest`. */
export function cutInTwo(text: string, most: number, mostRest: number): [string, string] {
  if (text.length <= most) return [text, '']
  const at = breakBefore(text, most - 1)
  return [`${text.slice(0, at).trimEnd()}…`, cut(`…${text.slice(at).trim()}`, mostRest)]
}

/** Splits a text into pieces of at most `most` characters: between paragraphs, else lines, else words. */
export function splitText(text: string, most: number): string[] {
  const pieces: string[] = []
  let rest = text
  while (rest.length > most) {
    const at = splitAt(rest, most)
    pieces.push(rest.slice(0, at).trimEnd())
    rest = rest.slice(at).trimStart()
  }
  return rest === '' && pieces.length > 0 ? pieces : [...pieces, rest]
}

// A paragraph or line that ends in the first half would leave a stump of a message: look for a finer break then.
function splitAt(text: string, most: number): number {
  for (const mark of ['\n\n', '\n']) {
    const at = text.lastIndexOf(mark, most)
    if (at >= most / 2) return at
  }
  return breakBefore(text, most)
}

/** The last gap between words at or before `most`; where there is none, `most`, never inside a character. */
function breakBefore(text: string, most: number): number {
  const at = Math.max(text.lastIndexOf(' ', most), text.lastIndexOf('\n', most))
  if (at > most / 2) return at
  return /[\uDC00-\uDFFF]/.test(text.charAt(most)) ? most - 1 : most
}
