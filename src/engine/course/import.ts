import { answered } from '../../domain/checkin.ts'
import type { Day } from '../../domain/day.ts'
import type { Diary, DiaryRow } from '../../domain/history-csv/diary.ts'
import type { SignId } from '../../domain/signs/catalogue.ts'
import type { Draft } from '../draft.ts'
import type { CheckInRow } from '../rows.ts'

/** Why a row that is right in itself is not taken. */
export type NotTaken = 'exists' | 'future' | 'twice' | 'nothing'

export interface ImportResult {
  /** Days written, in order, and of them those that were there before. */
  readonly days: readonly Day[]
  readonly replaced: readonly Day[]
  readonly notTaken: readonly { readonly line: number; readonly day: Day; readonly why: NotTaken }[]
  /** Signs that the file names, row by row: no alert is raised for them. */
  readonly signs: readonly { readonly line: number; readonly day: Day; readonly signs: readonly SignId[] }[]
}

export interface ImportWish {
  /** A day that is there already takes the values of the file; the earlier version stays in the trail. */
  readonly replace: boolean
  /** The file line by line, kept as the words of each version. */
  readonly lines: readonly string[]
}

/**
 * A past diary becomes days of the record, marked as filled in later and with a version each. Signs that it names are
 * kept in the version and told to the coach: what is past raises no alert, but somebody should ask.
 */
export function importDiary(draft: Draft, diary: Diary, wish: ImportWish): ImportResult {
  const wrong = new Set(diary.problems.map(({ line }) => line))
  const notTaken: ImportResult['notTaken'][number][] = []
  const days: Day[] = []
  const before = new Map(draft.file.checkIns.map((row) => [row.day, row]))
  for (const row of diary.rows.filter(({ line }) => !wrong.has(line))) {
    const why = refused(draft, row, days, wish.replace ? null : before)
    if (why) notTaken.push({ line: row.line, day: row.day, why })
    else {
      write(draft, row, before.get(row.day) ?? null, wish.lines[row.line - 1] ?? '')
      days.push(row.day)
    }
  }
  const signs = diary.rows.flatMap(({ line, day, checkIn }) =>
    checkIn && checkIn.signs.length > 0 ? [{ line, day, signs: checkIn.signs }] : [],
  )
  if (signs.length > 0 && days.length > 0) tellCoach(draft, signs)
  return { days: days.sort(), replaced: days.filter((day) => before.has(day)), notTaken, signs }
}

function refused(
  draft: Draft,
  { day, checkIn }: DiaryRow,
  taken: readonly Day[],
  kept: ReadonlyMap<Day, CheckInRow> | null,
): NotTaken | null {
  if (day > draft.today) return 'future'
  if (taken.includes(day)) return 'twice'
  if (checkIn === null) return 'nothing'
  return kept?.has(day) ? 'exists' : null
}

function write(draft: Draft, { day, checkIn }: DiaryRow, before: CheckInRow | null, words: string): void {
  const { sessions, planned, reach, pain, denied, comfort, settled } = checkIn!
  const values = { sessions, reach, pain, comfort, settled }
  draft.put('checkIn', {
    id: before?.id ?? draft.id('day', day),
    clientId: draft.client.id,
    day,
    planned,
    ...values,
    side: before?.side ?? null,
    // a sign once told is never corrected away
    signs: before?.signs ?? [],
    denied: before && before.signs.length > 0 ? before.denied : denied,
    care: before?.care ?? 'none',
    filled: draft.today,
    late: day < draft.today && answered(checkIn!),
    updatedAt: draft.now,
  })
  draft.put('version', {
    id: draft.id('version', 'import', day, draft.cause),
    clientId: draft.client.id,
    day,
    at: draft.now,
    zone: draft.client.zone,
    via: 'import',
    words,
    reading: { ...values, planned, denied, signs: checkIn!.signs },
    lexicon: 'import',
  })
}

function tellCoach(draft: Draft, signs: ImportResult['signs']): void {
  const { ownDataForCoach, signs: names } = draft.forCoach
  const lines = signs.map(({ day, signs }) => ({ day, names: signs.map((sign) => names[sign].short) }))
  draft.toCoach({ kind: 'notice', text: ownDataForCoach.importedSigns(draft.client.ref, lines) })
}
