import type { CheckIn } from '../checkin.ts'
import { type Day, daysBetween } from '../day.ts'
import {
  type Cell,
  dayCell,
  idsCell,
  reachCell,
  rungsCell,
  type SignsCell,
  signsCell,
  wholeCell,
  yesNoCell,
} from './cells.ts'
import type { Column, DiaryRow, Problem } from './diary.ts'

/** Sessions of a day where the file does not say (the plan's default). */
const USUAL_PLANNED = 2
const MOST_PLANNED = 6
const BEYOND_PLANNED = 2
/** A date two later is more than 36 hours later, one later is not (only dates are known here). */
const LATE_DAYS = 2

/** The cells of one row by column; a column left out of the file is empty. */
export type Cells = (column: Column) => string

export interface RowRead {
  readonly row: DiaryRow | null
  readonly problems: readonly Problem[]
}

type Complain = (column: Column) => void

function value<T>(cell: Cell<T>, column: Column, complain: Complain): T | null {
  if (cell.ok) return cell.value
  complain(column)
  return null
}

function checkInOf(cells: Cells, day: Day, filled: Day, signs: SignsCell, complain: Complain): CheckIn {
  const planned = value(wholeCell(cells('planned'), 0, MOST_PLANNED), 'planned', complain) ?? USUAL_PLANNED
  if (signs.wrong.length > 0) complain('signs')
  return {
    day,
    planned,
    sessions: value(wholeCell(cells('sessions'), 0, planned + BEYOND_PLANNED), 'sessions', complain),
    reach: value(reachCell(cells('reach')), 'reach', complain),
    pain: value(wholeCell(cells('pain'), 0, 10), 'pain', complain),
    side: null,
    signs: signs.signs,
    denied: signs.denied ? 'all' : null,
    filled,
    late: daysBetween(day, filled) >= LATE_DAYS,
    comfort: value(yesNoCell(cells('comfort')), 'comfort', complain),
    settled: value(yesNoCell(cells('settled')), 'settled', complain),
  }
}

const says = (c: CheckIn): boolean =>
  [c.sessions, c.reach, c.pain, c.denied, c.comfort, c.settled].some((v) => v !== null) || c.signs.length > 0

/** Of a row that cannot be right only the signs it names are kept: missing a sign is the worst mistake. */
function signsOnly(row: DiaryRow): DiaryRow | null {
  if (row.checkIn === null || row.checkIn.signs.length === 0) return null
  const nothing = { sessions: null, reach: null, pain: null, denied: null, comfort: null, settled: null }
  return { ...row, checkIn: { ...row.checkIn, ...nothing }, rungs: null, cleared: [], noted: [] }
}

/** Reads one row. A row with anything that cannot be right is left out as a whole, but for the signs it names. */
export function readRow(cells: Cells, line: number): RowRead {
  const problems: Problem[] = []
  const complain: Complain = (column) => problems.push({ line, what: column, value: cells(column) })
  const signs = signsCell(cells('signs'))
  const date = dayCell(cells('date'))
  if (!date.ok || date.value === null) {
    const lost = signs.signs.length > 0 ? { lostSigns: signs.signs } : {}
    return { row: null, problems: [{ line, what: 'date', value: cells('date'), ...lost }] }
  }
  const day = date.value
  const filled = value(dayCell(cells('filled')), 'filled', complain) ?? day
  if (filled < day) complain('filled')
  const checkIn = checkInOf(cells, day, [filled, day].sort()[1]!, signs, complain)
  const row: DiaryRow = {
    line,
    day,
    filled: checkIn.filled,
    checkIn: says(checkIn) ? checkIn : null,
    rungs: value(rungsCell(cells('rungs')), 'rungs', complain),
    cleared: value(idsCell(cells('cleared')), 'cleared', complain) ?? [],
    noted: value(idsCell(cells('noted')), 'noted', complain) ?? [],
  }
  return { row: problems.length > 0 ? signsOnly(row) : row, problems }
}
