/** One record of a CSV file with the line (from 1) on which it begins; a comment has its text without the "#". */
export type CsvRecord =
  | {
      readonly kind: 'row'
      readonly line: number
      readonly cells: readonly string[]
      readonly openQuote: boolean
    }
  | { readonly kind: 'comment'; readonly line: number; readonly text: string }

interface Read {
  readonly cells: string[]
  /** Where the next record begins. */
  readonly next: number
  readonly openQuote: boolean
}

const lineEnd = (text: string, from: number): number => {
  const end = text.indexOf('\n', from)
  return end < 0 ? text.length : end
}

/** A quoted cell from its opening quote on; null where the quote is never closed. */
function quotedCell(text: string, from: number): { cell: string; next: number } | null {
  let cell = ''
  let at = from + 1
  for (;;) {
    const quote = text.indexOf('"', at)
    if (quote < 0) return null
    cell += text.slice(at, quote)
    if (text[quote + 1] !== '"') return { cell, next: quote + 1 }
    cell += '"'
    at = quote + 2
  }
}

/** A quote that is never closed must not swallow the days after it: then its line is split as it stands. */
const plainLine = (text: string, from: number): Read => {
  const end = lineEnd(text, from)
  return {
    cells: text
      .slice(from, end)
      .split(',')
      .map((cell) => cell.trim()),
    next: end + 1,
    openQuote: true,
  }
}

function readRow(text: string, from: number): Read {
  const cells: string[] = []
  let at = from
  for (;;) {
    while (text[at] === ' ' || text[at] === '\t') at += 1
    let cell = ''
    if (text[at] === '"') {
      const quoted = quotedCell(text, at)
      if (quoted === null) return plainLine(text, from)
      cell = quoted.cell
      at = quoted.next
    }
    const end = lineEnd(text, at)
    const comma = text.indexOf(',', at)
    const stop = comma >= 0 && comma < end ? comma : end
    cells.push((cell + text.slice(at, stop)).trim())
    if (stop === end) return { cells, next: end + 1, openQuote: false }
    at = stop + 1
  }
}

const newlines = (text: string, from: number, to: number): number =>
  text.slice(from, to).split('\n').length - 1

/**
 * Reads CSV (RFC 4180: quotes, doubled quotes, line breaks inside quotes; also CR LF, a byte-order mark and
 * blanks round a cell). Empty lines are left out, lines that begin with "#" are comments.
 */
export function readCsv(file: string): CsvRecord[] {
  const text = file.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')
  const records: CsvRecord[] = []
  let line = 1
  for (let at = 0; at < text.length; ) {
    const first = text.slice(at, lineEnd(text, at)).trim()
    if (first === '' || first.startsWith('#')) {
      if (first !== '') records.push({ kind: 'comment', line, text: first.slice(1).trim() })
      at = lineEnd(text, at) + 1
      line += 1
      continue
    }
    const { cells, next, openQuote } = readRow(text, at)
    records.push({ kind: 'row', line, cells, openQuote })
    line += Math.max(1, newlines(text, at, next))
    at = next
  }
  return records
}
