import { answered, type CheckIn } from '../../domain/checkin.ts'
import { type Day, weekday } from '../../domain/day.ts'
import { dayAt, instantOf } from '../../domain/local-time.ts'
import { lexiconVersion } from '../../domain/reply/lexicon/index.ts'
import type { SignId } from '../../domain/signs/catalogue.ts'
import type { Draft } from '../draft.ts'
import { plannedOn } from '../plan/rungs.ts'
import type { CheckInRow, VersionRow } from '../rows.ts'

// Filled in later than this after its prompt, a day no longer counts for a gate (diaries filled in afterwards
// are the known weakness of the method: Stone 2003, Control Clin Trials 24:182).
const LATE_MS = 36 * 3_600_000

export type Given = Partial<
  Pick<CheckIn, 'sessions' | 'reach' | 'pain' | 'side' | 'denied' | 'comfort' | 'settled'>
>

/** Writes what was given into the day's check-in; what was not given stays as it stands. Signs are only added. */
export function record(draft: Draft, day: Day, given: Given, signs: readonly SignId[] = []): CheckInRow {
  const before = draft.file.checkIns.find((row) => row.day === day)
  const kept = before ?? emptyDay(draft, day)
  // a day answered before keeps its first mark: a correction does not make it late
  const marked = before && answered(before) ? before : whenFilled(draft, day)
  const row: CheckInRow = {
    ...kept,
    ...given,
    signs: [...new Set([...kept.signs, ...signs])],
    filled: marked.filled,
    late: marked.late,
    updatedAt: draft.now,
  }
  draft.put('checkIn', row)
  return row
}

/** The local date of writing, and whether that was too long after the day's prompt. */
function whenFilled(draft: Draft, day: Day): Pick<CheckInRow, 'filled' | 'late'> {
  const { prompt, zone } = draft.client
  const late = draft.written.getTime() > instantOf(day, prompt, zone).getTime() + LATE_MS
  return { filled: dayAt(draft.written, zone), late }
}

function emptyDay(draft: Draft, day: Day): CheckInRow {
  return {
    id: draft.id('day', day),
    clientId: draft.client.id,
    day,
    sessions: null,
    planned: plannedOn(draft.file, weekday(day)),
    reach: null,
    pain: null,
    side: null,
    signs: [],
    denied: null,
    care: 'none',
    filled: draft.today,
    late: false,
    comfort: null,
    settled: null,
    updatedAt: draft.now,
  }
}

/** Adds a version to the trail: the very words, how they were read and by which lexicon. */
export function trail(
  draft: Draft,
  via: VersionRow['via'],
  words: string,
  day: Day | null,
  reading: object,
): void {
  draft.put('version', {
    id: draft.id('version', draft.cause),
    clientId: draft.client.id,
    day,
    at: draft.written,
    zone: draft.client.zone,
    via,
    words,
    reading: { ...reading },
    lexicon: lexiconVersion(draft.client.language),
  })
}
