import { type CsvRecord, readCsv } from './csv.ts'
import { COLUMNS, type Column, type Diary, type Problem, UnreadableDiary } from './diary.ts'
import { factOf, readFacts } from './facts.ts'
import { type Cells, type RowRead, readRow } from './row.ts'

type Row = Extract<CsvRecord, { kind: 'row' }>

/** Column numbers by name. Columns that are not known are left alone. */
function header(row: Row): Map<Column, number> {
  const at = new Map<Column, number>()
  for (const [n, cell] of row.cells.entries()) {
    const column = COLUMNS.find((name) => name === cell.toLowerCase())
    if (column === undefined) continue
    if (at.has(column)) throw new UnreadableDiary('twice-in-header', column)
    at.set(column, n)
  }
  // what a spreadsheet writes in countries with a decimal comma
  const oneCell = row.cells.length === 1 && /^\W*date\s*[;\t]|[;\t]\s*date\b/i.test(row.cells[0] ?? '')
  if (!at.has('date')) throw new UnreadableDiary(oneCell ? 'not-commas' : 'no-header')
  return at
}

/** A note in the last column may hold commas without quotes; anything else beyond the header cannot be right. */
function tooMany(cells: readonly string[], width: number, columns: Map<Column, number>): boolean {
  if (cells.slice(width).every((cell) => cell === '')) return false
  return columns.get('note') !== width - 1
}

function readRecord(record: Row, width: number, columns: Map<Column, number>): RowRead {
  const { line, cells } = record
  const cell: Cells = (column) => cells[columns.get(column) ?? cells.length] ?? ''
  const read = readRow(cell, line)
  const problems: Problem[] = [...read.problems]
  if (record.openQuote) problems.push({ line, what: 'quote', value: '' })
  if (tooMany(cells, width, columns)) problems.push({ line, what: 'cells', value: String(cells.length) })
  return { row: read.row, problems }
}

/**
 * A diary from CSV: a header with the columns of COLUMNS in any order, one row a day, and comment rows
 * "# side: left", "# baseline: calf 6", "# start: 2026-03-02", "# known: bladder-change". An empty cell was not
 * answered; in `signs` empty is not said and "none" denied. Cells missing at a row's end are empty.
 * Throws UnreadableDiary where there is no header.
 */
export function diaryFromCsv(text: string): Diary {
  const records = readCsv(text)
  const rows = records.filter((record) => record.kind === 'row')
  const first = rows[0]
  if (first === undefined) throw new UnreadableDiary('empty')
  const columns = header(first)
  const given = records.flatMap((record) => {
    const found = record.kind === 'comment' ? factOf(record.text) : null
    return found === null ? [] : [{ ...found, line: record.line }]
  })
  const { facts, problems } = readFacts(given)
  const read = rows.slice(1).map((record) => readRecord(record, first.cells.length, columns))
  return {
    ...facts,
    rows: read.flatMap(({ row }) => row ?? []),
    problems: [...problems, ...read.flatMap((r) => r.problems)].sort((a, b) => a.line - b.line),
  }
}
