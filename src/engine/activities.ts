import { type Day, daysBetween } from '../domain/day.ts'
import type { ActivityPath } from '../text/en/course.ts'
import type { Question } from './asking.ts'
import type { Draft } from './draft.ts'
import type { Form } from './message.ts'
import type { ClientFile } from './ports.ts'
import { statusOf } from './status.ts'

/** Days between two askings; and before an asking that brought no answer is made again. */
const EVERY_DAYS = 14
const AGAIN_DAYS = 3
/** Days for which other questions may come before it. */
const LATE_DAYS = 2
const DAY_MS = 24 * 3_600_000
export const HARDEST = 10

/** How hard each activity that matters was at the first questions, and was told last. */
export function activityPaths({ screening, activities }: ClientFile): ActivityPath[] {
  const first = screening?.answers.activities
  if (typeof first !== 'object' || Array.isArray(first)) return []
  return Object.entries(first).map(([name, from]) => ({
    name,
    from,
    now: activities.findLast((row) => row.scores[name] !== undefined)?.scores[name] ?? null,
  }))
}

export const namesOf = (file: ClientFile): string[] => activityPaths(file).map(({ name }) => name)

/** True where the question has gone out in the last days and may still be answered. */
export const wasAsked = ({ asked, dues }: ClientFile): boolean =>
  asked.some((row) => row.ask === 'activities') || dues.some((due) => due.kind === 'activities')

/**
 * Every two weeks, after a check-in, when nothing else is left to ask; never while the ordinary day is stopped.
 * @param late only where it has waited for days already: then it goes first
 */
export function activitiesQuestion(draft: Draft, day: Day, late = false): Question | null {
  const { file, texts } = draft
  const names = namesOf(file)
  const last = file.activities.at(-1)?.day ?? file.client.start
  if (names.length === 0 || last === null || statusOf(file) !== 'active' || !file.plan) return null
  if (daysBetween(last, day) < EVERY_DAYS + (late ? LATE_DAYS : 0) || wasAsked(file)) return null
  draft.due('activities', new Date(draft.now.getTime() + AGAIN_DAYS * DAY_MS))
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
