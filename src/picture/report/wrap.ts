import type { Measure } from './sheet.ts'

// Beyond these the embedded type has no letters; its sign for that is wider in some readers than in others.
const UNSET = /[^\u0020-\u2bff]/gu

/** Words of one line in one face. */
export interface Run {
  readonly words: string
  readonly bold: boolean
  /** In points, without the gap before a following run. */
  readonly width: number
}
export type Line = readonly Run[]

interface Room {
  readonly width: number
  readonly size: number
  /** Lines; what is longer ends in an ellipsis. */
  readonly most: number
  readonly measure: Measure
}

interface Token {
  readonly word: string
  readonly bold: boolean
  readonly width: number
}

/** Words set in lines of a width; a word wider than a line is broken, what does not fit is cut with "…". */
export function wrap(runs: readonly Pick<Run, 'words' | 'bold'>[], room: Room): Line[] {
  // the wider gap of the two faces
  const gap = room.measure(' ', room.size, true)
  const tokens = runs.flatMap(({ words, bold }) =>
    words
      .replace(UNSET, '□')
      .split(' ')
      .flatMap((word) => broken(word, bold, room)),
  )
  const lines: Token[][] = []
  let used = 0
  for (const token of tokens) {
    const line = lines.at(-1)
    if (line && used + gap + token.width <= room.width) {
      line.push(token)
      used += gap + token.width
    } else {
      // nobody reads further than this: the rest need not be set
      if (lines.length === room.most) return [...lines.slice(0, -1), shortened(line!, room)].map(joined(room))
      lines.push([token])
      used = token.width
    }
  }
  return lines.map(joined(room))
}

/** A word in parts that each fit a line: most words are one. */
function broken(word: string, bold: boolean, { width: most, size, measure }: Room): Token[] {
  const width = measure(word, size, bold)
  if (width <= most) return [{ word, bold, width }]
  const parts: Token[] = []
  let part: Token = { word: '', bold, width: 0 }
  for (const letter of word) {
    const wide = measure(letter, size, bold)
    if (part.word !== '' && part.width + wide > most) {
      parts.push(part)
      part = { word: '', bold, width: 0 }
    }
    part = { word: part.word + letter, bold, width: part.width + wide }
  }
  return [...parts, part]
}

/** The last line of a text that goes on: as much of it as leaves room for the ellipsis. */
function shortened(line: readonly Token[], { width, size, measure }: Room): Token[] {
  const gap = measure(' ', size, true)
  const kept = [...line]
  const widthOf = (tokens: readonly Token[]): number =>
    tokens.reduce((sum, token) => sum + gap + token.width, -gap)
  const dots = measure('…', size, false)
  while (kept.length > 1 && widthOf(kept) + dots > width) kept.pop()
  const last = kept.pop()!
  const letters = [...last.word.replace(/[,;:.…]$/, '')]
  const measured = (): number => measure(letters.join(''), size, last.bold)
  while (letters.length > 0 && widthOf([...kept, { ...last, width: measured() + dots }]) > width)
    letters.pop()
  return [...kept, { ...last, word: `${letters.join('')}…`, width: measured() + dots }]
}

/** Neighbours in one face as one run. */
const joined =
  ({ size, measure }: Room) =>
  (tokens: readonly Token[]): Run[] => {
    const runs: { words: string; bold: boolean; width: number }[] = []
    for (const { word, bold, width } of tokens) {
      const last = runs.at(-1)
      if (last?.bold === bold) {
        last.words += ` ${word}`
        last.width += measure(' ', size, bold) + width
      } else runs.push({ words: word, bold, width })
    }
    return runs
  }
