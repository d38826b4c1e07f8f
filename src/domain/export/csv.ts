import type { CheckIn } from '../checkin.ts'
import type { Day } from '../day.ts'
import { COLUMNS, type Column } from '../history-csv/diary.ts'
import type { History, HistoryDay, OpenSign } from '../rules/assessment.ts'
import type { SignId } from '../signs/catalogue.ts'

/** What the client wrote on each day; an empty map keeps the words out. */
export type DayWords = ReadonlyMap<Day, string>

type Row = Readonly<Partial<Record<Column, string>>> & { readonly date: Day }

/**
 * A client's days as CSV (RFC 4180), in the columns that `readDiary` takes, with the facts beside them as comment
 * rows: assessed again it gives the same as the history itself. What CSV cannot hold: which signs were denied where
 * it was not all of them, and the side of a single day.
 */
export function exportCsv(history: History, words: DayWords): string {
  const early = [...new Set((history.openBefore ?? []).map(({ day }) => day))].sort()
  const rows = [
    ...early.map((day) => signRow(day, history.openBefore ?? [])),
    ...history.days.map((day) => dayRow(day, words.get(day.day) ?? '')),
  ]
  const lines = rows.map((row) => COLUMNS.map((column) => quoted(row[column] ?? '')).join(','))
  return `${[...facts(history), COLUMNS.join(','), ...lines].join('\r\n')}\r\n`
}

function facts({ side, baseline, start, days, known, decisions, gate }: History): string[] {
  const first = start ?? days[0]?.day ?? null
  const began = [baseline?.reach, baseline?.pain].filter((value) => value != null).join(' ')
  const resting = days.flatMap((one) => (one.resting ?? []).map((ladder) => `${one.day} ${ladder}`))
  const late = days.filter(({ checkIn }) => checkIn?.late).map(({ day }) => day)
  const decided = decisions.map(({ day, decision, ladder }) => [day, decision, ladder ?? ''].join(' ').trim())
  const lines: readonly (readonly [string, string])[] = [
    ['side', side ?? ''],
    ['baseline', began],
    ['start', first ?? ''],
    ['known', known.join(';')],
    ['decisions', decided.join(';')],
    ['resting', resting.join(';')],
    ['gate', [gate.checkIns, gate.days, gate.share, gate.painAtMost, gate.apart].join(' ')],
    ['late', late.join(';') || 'none'],
  ]
  return lines.filter(([, value]) => value !== '').map(([name, value]) => `# ${name}: ${value}`)
}

/** A sign that was open before the first day with a check-in. */
const signRow = (date: Day, open: readonly OpenSign[]): Row => ({
  date,
  planned: '0',
  signs: open
    .filter(({ day }) => day === date)
    .map(({ sign }) => sign)
    .join(';'),
})

function dayRow({ day, checkIn, rungs, cleared, noted }: HistoryDay, note: string): Row {
  return {
    date: day,
    ...(checkIn ? answers(checkIn) : {}),
    note,
    rungs: Object.entries(rungs ?? {})
      .map(([ladder, rung]) => `${ladder}:${rung}`)
      .join(';'),
    cleared: cleared.join(';'),
    noted: noted.join(';'),
  }
}

const answers = ({ planned, sessions, reach, pain, signs, denied, comfort, settled, filled }: CheckIn) => ({
  sessions: cell(sessions),
  planned: cell(planned),
  reach: reach ?? '',
  pain: cell(pain),
  signs: signCell(signs, denied),
  comfort: yesNo(comfort),
  settled: yesNo(settled),
  filled,
})

/** Signs go before a denial of the rest; denied one by one is not denied altogether. */
const signCell = (signs: readonly SignId[], denied: CheckIn['denied']): string =>
  signs.length > 0 ? signs.join(';') : denied === 'all' ? 'none' : ''

const cell = (value: number | null): string => (value === null ? '' : String(value))
const yesNo = (value: boolean | null): string => (value === null ? '' : value ? 'yes' : 'no')

/** In quotes where it must be; a text that a spreadsheet would take for a formula gets an apostrophe before it. */
function quoted(value: string): string {
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}
