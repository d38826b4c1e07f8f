import { answered } from '../../domain/checkin.ts'
import { addDays, type Day, daysFrom, laterOf } from '../../domain/day.ts'
import { dayAt, timeAt } from '../../domain/local-time.ts'
import type { Draft } from '../draft.ts'
import type { ClientFile } from '../ports.ts'
import type { AlertRow, NoteRow, SignRow, VersionRow } from '../rows.ts'

interface Week {
  readonly file: ClientFile
  readonly versions: readonly VersionRow[]
  readonly first: Day
  readonly last: Day
  readonly draft: Draft
}

/** All that is kept of one week, a line each, in the order in which a coach looks for it. */
export function recordLines(
  file: ClientFile,
  versions: readonly VersionRow[],
  notes: readonly NoteRow[],
  first: Day,
  draft: Draft,
): string[] {
  const week: Week = { file, versions, first, last: addDays(first, 6), draft }
  const { record } = draft.forCoach
  const inCharge = file.client.coach ?? file.plan?.by ?? null
  const own = notes.filter((note) => within(week, localDay(week, note.at)))
  return [
    ...(inCharge ? [record.inCharge(inCharge)] : []),
    ...file.alerts.filter((alert) => touches(week, alert)).map((alert) => alertLine(week, alert)),
    ...dayLines(week),
    ...signLines(week),
    ...changeLines(week),
    ...(own.length > 0 ? [record.notes] : []),
    ...own.map((note) => record.note(stamp(week, note.at), note.by, note.text)),
  ]
}

const localDay = ({ file }: Week, at: Date): Day => dayAt(at, file.client.zone)
const within = ({ first, last }: Week, day: Day): boolean => day >= first && day <= last

/** "Tue 17 Mar 09:05" in the client's own time. */
const stamp = (week: Week, at: Date): string =>
  `${week.draft.forCoach.words.date(localDay(week, at))} ${timeAt(at, week.file.client.zone)}`

/** An open alert is shown whatever the week: it is what a coach must not miss. */
const touches = (week: Week, { openedAt, closedAt }: AlertRow): boolean =>
  closedAt === null || within(week, localDay(week, openedAt)) || within(week, localDay(week, closedAt))

function alertLine(week: Week, alert: AlertRow): string {
  const { record, signs, coach } = week.draft.forCoach
  return record.alert({
    opened: stamp(week, alert.openedAt),
    signs: alert.signs.map((sign) => signs[sign].short),
    takenBy: alert.takenBy,
    takenAt: alert.takenAt ? stamp(week, alert.takenAt) : '',
    had: alert.had.map(({ by, at }) => ({ by, at: stamp(week, new Date(at)) })),
    outcome: alert.outcome
      ? ((coach.outcome as Record<string, string>)[alert.outcome] ?? alert.outcome)
      : null,
    closed: alert.closedAt ? stamp(week, alert.closedAt) : null,
  })
}

function dayLines(week: Week): string[] {
  const { file, draft } = week
  const begins = file.client.start ?? dayAt(file.client.createdAt, file.client.zone)
  const last = [week.last, draft.today].sort()[0]!
  const shown = daysFrom(laterOf(week.first, begins), last)
  const days = [...new Set([...shown, ...writtenDays(week)])].sort()
  return days.flatMap((day) => [dayLine(week, day), ...versionLines(week, day)])
}

/** Days of the week with something written, be they before the plan. */
const writtenDays = (week: Week): Day[] =>
  [...week.file.checkIns.map((row) => row.day), ...week.versions.map((row) => dayOf(row))].filter((day) =>
    within(week, day),
  )

const dayOf = (version: VersionRow): Day => version.day ?? dayAt(version.at, version.zone)

function dayLine({ file, draft }: Week, day: Day): string {
  const { record, words, signs } = draft.forCoach
  const row = file.checkIns.find((checkIn) => checkIn.day === day)
  if (!row) return record.noReply(day)
  const said = row.signs.map((sign) => signs[sign].short)
  const denied = row.denied === null || row.denied.length === 0 ? record.signsNotSaid : record.signsDenied
  return record.day(day, words.values(row), [
    ...(said.length > 0 ? said : answered(row) || row.denied !== null ? [denied] : []),
    ...(row.filled > row.day ? [record.later(row.filled)] : []),
  ])
}

/** Every version with its words; a single one that was written on the day says no more than the day does. */
function versionLines(week: Week, day: Day): string[] {
  const { draft, file } = week
  const own = week.versions.filter((version) => dayOf(version) === day)
  return own.map((version) =>
    draft.forCoach.record.version({
      at: stamp(week, version.at),
      via: version.via,
      words: file.practice.quote ? version.words : null,
      later: dayAt(version.at, version.zone) > day,
    }),
  )
}

function signLines(week: Week): string[] {
  const { record, signs } = week.draft.forCoach
  const shown = week.file.signs.filter(
    (row) =>
      row.state === 'open' ||
      within(week, row.day) ||
      (row.endedAt !== null && within(week, localDay(week, row.endedAt))),
  )
  return shown.map((row) => record.sign(signs[row.sign].short, row.care, row.day, signEnd(week, row)))
}

function signEnd(week: Week, { state, endedAt, endedBy }: SignRow): string | null {
  const { record } = week.draft.forCoach
  if (state === 'open') return null
  const how = record.signEnd[state] ?? state
  return endedAt === null ? how : record.ended(how, endedBy ?? '', stamp(week, endedAt))
}

function changeLines(week: Week): string[] {
  const { file, draft } = week
  const { record, rules, coach } = draft.forCoach
  return [
    ...file.flags
      .filter((flag) => within(week, flag.day))
      .map((flag) => record.flag(flag.day, rules.why(flag))),
    ...file.decisions
      .filter((row) => within(week, row.day))
      .map((row) =>
        record.decision({
          at: stamp(week, row.at),
          decision: coach.decision[row.decision],
          ladder: row.decision === 'advance' || row.decision === 'ease-back' ? row.ladder : null,
          by: row.by,
          reason: row.reason,
        }),
      ),
    ...file.rungs
      .filter((row) => within(week, row.day))
      .map((row) => record.step(row.day, row.ladder, row.from, row.to)),
  ]
}
