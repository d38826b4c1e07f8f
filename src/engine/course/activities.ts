import { addDays, type Day, daysBetween } from '../../domain/day.ts'
import { dayAt, instantOf } from '../../domain/local-time.ts'
import type { ActivityPath } from '../../text/en/course.ts'
import type { Question } from '../check-in/asking.ts'
import type { Draft } from '../draft.ts'
import type { Form } from '../message.ts'
import type { ClientFile } from '../ports.ts'
import { openSigns, statusOf } from '../status.ts'

/** Days of a round; within one it is asked twice at most, some days apart. */
const EVERY_DAYS = 14
const TIMES = 2
const AGAIN_DAYS = 3
/** Days for which other questions may come before it. */
const LATE_DAYS = 2
const HOUR_MS = 3_600_000
export const HARDEST = 10

/** How hard each activity that matters was at the first questions, and was told last, by name. */
export function activityPaths({ screening, activities }: ClientFile): ActivityPath[] {
  const first = screening?.answers.activities
  if (typeof first !== 'object' || Array.isArray(first)) return []
  // sorted, since a database need not keep the order of fields, and bare numbers are read in the order that was asked
  const named = Object.entries(first).sort(([a], [b]) => (a < b ? -1 : 1))
  return named.map(([name, from]) => ({
    name,
    from,
    now: activities.findLast((row) => row.scores[name] !== undefined)?.scores[name] ?? null,
  }))
}

export const namesOf = (file: ClientFile): string[] => activityPaths(file).map(({ name }) => name)

interface Round {
  readonly last: Day
  readonly times: number
}

/** The round under way: its row is due when the next may begin. */
function roundOf({ dues }: ClientFile): Round | null {
  const row = dues.find((due) => due.kind === 'activities' && due.data.calm === undefined)
  if (!row) return null
  const { last, times } = row.data as Partial<Round>
  // a row of an earlier version holds no day: it has been asked, and is not asked again before it goes
  return last && times ? { last, times } : { last: '', times: TIMES }
}

/** True where the question has gone out in this round and may still be answered. */
export const wasAsked = (file: ClientFile): boolean =>
  file.asked.some((row) => row.ask === 'activities') || roundOf(file) !== null

/** Answered: the next round counts from here. */
export function roundAnswered(draft: Draft): void {
  for (const due of draft.file.dues)
    if (due.kind === 'activities' && due.data.calm === undefined) draft.drop('due', due.id)
}

/** A sign has been asked about: nothing else is asked for the rest of the day, an hour at least. */
export function calmAfterSign(draft: Draft): void {
  if (draft.client.stage !== 'enrolled') return
  const midnight = instantOf(addDays(draft.today, 1), '00:00', draft.client.zone)
  const hour = new Date(draft.now.getTime() + HOUR_MS)
  draft.due(
    'activities',
    hour > midnight ? hour : midnight,
    { calm: true },
    draft.id('due', 'activities-calm'),
  )
}

/** No day for it: a sign is open or was asked about, or something more than a note is being watched. */
const isTactless = ({ file, today }: Draft): boolean =>
  openSigns(file).length > 0 ||
  file.signs.some(({ at }) => dayAt(at, file.client.zone) === today) ||
  file.dues.some((due) => due.kind === 'activities' && due.data.calm === true) ||
  file.flags.some(({ closedAt, level }) => closedAt === null && level !== 'note')

/**
 * Every two weeks, after a check-in, when nothing else is left to ask; never while the ordinary day is stopped.
 * @param late only where it has waited for days already: then it goes first
 */
export function activitiesQuestion(draft: Draft, day: Day, late = false): Question | null {
  const { file, texts } = draft
  const names = namesOf(file)
  const last = file.activities.at(-1)?.day ?? file.client.start
  if (names.length === 0 || last === null || statusOf(file) !== 'active' || !file.plan) return null
  if (daysBetween(last, day) < EVERY_DAYS + (late ? LATE_DAYS : 0) || isTactless(draft)) return null
  const round = roundOf(file)
  if (round && (round.times >= TIMES || daysBetween(round.last, draft.today) < AGAIN_DAYS)) return null
  const next = instantOf(addDays(draft.today, EVERY_DAYS), '00:00', draft.client.zone)
  draft.due('activities', next, { last: draft.today, times: (round?.times ?? 0) + 1 })
  const act = { do: 'activities', day }
  return {
    ask: 'activities',
    day,
    text: texts.course.askActivities(names),
    buttons: [{ name: 'activities', label: texts.course.activitiesButton, act, form: formOf(draft, names) }],
    pick: null,
    pressing: false,
  }
}

export const fieldOf = (n: number): string => `activity-${n}`

const formOf = ({ texts }: Draft, names: readonly string[]): Form => ({
  name: 'activities',
  title: texts.course.activitiesTitle,
  fields: names.map((name, n) => ({
    name: fieldOf(n),
    label: texts.course.activityField(name),
    kind: 'one',
    options: Array.from({ length: HARDEST + 1 }, (_, hard) => ({ value: String(hard), label: String(hard) })),
    required: false,
  })),
})
