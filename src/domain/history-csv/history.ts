import type { CheckIn } from '../checkin.ts'
import type { Day } from '../day.ts'
import { DEFAULT_GATE } from '../ladder/plan.ts'
import type { History, HistoryDay } from '../rules/assessment.ts'
import type { Diary, DiaryRow } from './diary.ts'
import { diaryFromCsv } from './from-csv.ts'
import { diaryFromJson, looksLikeJson } from './from-json.ts'

/** Reads a diary in either form. Throws UnreadableDiary where it is neither. */
export const readDiary = (text: string): Diary =>
  looksLikeJson(text) ? diaryFromJson(text) : diaryFromCsv(text)

/** First and last date of a diary; null where it has no day. */
export function spanOf(diary: Diary): { readonly first: Day; readonly last: Day } | null {
  const days = diary.rows.map((row) => row.day).sort()
  const first = days[0]
  return first === undefined ? null : { first, last: days.at(-1)! }
}

/** What the later row gives goes before the earlier; what it leaves empty stays. Signs are never corrected away. */
function corrected(before: CheckIn | null, after: CheckIn | null): CheckIn | null {
  if (before === null || after === null) return after ?? before
  return {
    ...before,
    planned: after.planned,
    sessions: after.sessions ?? before.sessions,
    reach: after.reach ?? before.reach,
    pain: after.pain ?? before.pain,
    signs: [...new Set([...before.signs, ...after.signs])],
    denied: after.denied ?? before.denied,
    comfort: after.comfort ?? before.comfort,
    settled: after.settled ?? before.settled,
  }
}

function merged(before: HistoryDay | undefined, row: DiaryRow): HistoryDay {
  const rungs = row.rungs ?? before?.rungs
  return {
    day: row.day,
    checkIn: corrected(before?.checkIn ?? null, row.checkIn),
    ...(rungs ? { rungs } : {}),
    cleared: [...new Set([...(before?.cleared ?? []), ...row.cleared])],
    noted: [...new Set([...(before?.noted ?? []), ...row.noted])],
  }
}

/** Rows in the order in which they were written: by the date of writing, then as they stand in the file. */
const inOrderOfWriting = (rows: readonly DiaryRow[]): DiaryRow[] =>
  [...rows].sort((a, b) => (a.filled === b.filled ? a.line - b.line : a.filled < b.filled ? -1 : 1))

function historyOf(diary: Diary, rows: readonly DiaryRow[]): History {
  const days = new Map<Day, HistoryDay>()
  for (const row of rows) days.set(row.day, merged(days.get(row.day), row))
  return {
    side: diary.side,
    baseline: diary.baseline,
    start: diary.start,
    known: diary.known,
    days: [...days.values()].sort((a, b) => (a.day < b.day ? -1 : 1)).map((day) => withAdded(diary, day)),
    decisions: diary.decisions,
    gate: diary.gate ?? DEFAULT_GATE,
  }
}

/** What an export adds to a day beside its row: the ladders resting, and whether it counts as late. */
function withAdded({ resting, late }: Diary, known: HistoryDay): HistoryDay {
  const rested = resting.filter(({ day }) => day === known.day).map(({ ladder }) => ladder)
  const checkIn = known.checkIn && late ? { ...known.checkIn, late: late.includes(known.day) } : known.checkIn
  return { ...known, checkIn, ...(rested.length > 0 ? { resting: rested } : {}) }
}

/**
 * The history as it was known on a day: a row filled in later is not there yet. The file itself ends with its
 * last date; what was filled in after that counts as written on it.
 */
export function historyKnownOn(diary: Diary): (day: Day) => History {
  const last = spanOf(diary)?.last ?? ''
  const rows = inOrderOfWriting(diary.rows)
  const writtenOn = (row: DiaryRow): Day => [row.filled, last].sort()[0]!
  const whole = historyOf(diary, rows)
  if (rows.every((row) => writtenOn(row) === row.day)) return () => whole
  return (day) =>
    day >= last
      ? whole
      : historyOf(
          diary,
          rows.filter((row) => writtenOn(row) <= day),
        )
}
