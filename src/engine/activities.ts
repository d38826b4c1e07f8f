import { answered } from '../domain/checkin.ts'
import { type Day, daysBetween } from '../domain/day.ts'
import { screen } from '../domain/signs/screen.ts'
import type { ActivityPath } from '../text/en/course.ts'
import { answeredNow } from './asked.ts'
import type { Question } from './asking.ts'
import type { Draft } from './draft.ts'
import type { Filled } from './event.ts'
import type { Form } from './message.ts'
import type { ClientFile } from './ports.ts'
import { trail } from './record.ts'
import { isPressing, statusOf } from './status.ts'

/** Days between two askings; and before an asking that brought no answer is made again. */
const EVERY_DAYS = 14
const AGAIN_DAYS = 3
const DAY_MS = 24 * 3_600_000
const HARDEST = 10

type Scores = Record<string, number>

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

const namesOf = (file: ClientFile): string[] => activityPaths(file).map(({ name }) => name)

/** True where the question has gone out in the last days and may still be answered. */
const wasAsked = ({ asked, dues }: ClientFile): boolean =>
  asked.some((row) => row.ask === 'activities') || dues.some((due) => due.kind === 'activities')

/** An answer of today may still be put right. */
const answeredToday = ({ file, today }: Draft): boolean => file.activities.at(-1)?.day === today

/** Every two weeks, after a check-in; never while the ordinary day is stopped. */
export function activitiesQuestion(draft: Draft, day: Day): Question | null {
  const { file, texts } = draft
  const names = namesOf(file)
  const last = file.activities.at(-1)?.day ?? file.client.start
  if (names.length === 0 || last === null || statusOf(file) !== 'active' || !file.plan) return null
  if (daysBetween(last, day) < EVERY_DAYS || wasAsked(file)) return null
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

const fieldOf = (n: number): string => `activity-${n}`

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

/** The form filled in: what is there is kept. */
export function activitiesFilled(draft: Draft, filled: Filled): void {
  const scores: Scores = {}
  for (const [n, name] of namesOf(draft.file).entries()) {
    const given = filled[fieldOf(n)]
    const hard = scoreOf(String(typeof given === 'string' ? given : (given?.[0] ?? '')))
    if (hard !== null) scores[name] = hard
  }
  if (statusOf(draft.file) !== 'active') return
  trail(draft, 'form', JSON.stringify(filled), draft.today, { activities: scores })
  if (Object.keys(scores).length > 0) return keep(draft, scores)
  draft.toClient({ kind: 'notice', text: draft.texts.course.activitiesUnread })
}

const scoreOf = (text: string): number | null => {
  const hard = /^\d{1,2}$/.test(text.trim()) ? Number(text) : HARDEST + 1
  return hard <= HARDEST ? hard : null
}

/** "rowing 5, sitting 3" after the question: true where the line was that and nothing else. */
export function answersActivities(draft: Draft, text: string): boolean {
  const { file, client } = draft
  if (!(wasAsked(file) || answeredToday(draft)) || statusOf(file) !== 'active' || isPressing(file))
    return false
  if (screen(text, client.language).signs.length > 0) return false
  const scores = namedScores(text, namesOf(file)) ?? bareScores(draft, text)
  if (!scores) return false
  trail(draft, 'words', text, draft.today, { activities: scores })
  keep(draft, scores)
  return true
}

function namedScores(text: string, names: readonly string[]): Scores | null {
  const scores: Scores = {}
  for (const part of text.split(/[,;\n]|\s+and\s+|\s+y\s+/).filter((one) => one.trim() !== '')) {
    const [, said, number] =
      /^\s*(\D{2,}?)[\s:=-]+(?:is\s+|now\s+)*(\d{1,2})(?:\s*\/\s*10)?[\s.!]*$/.exec(part) ?? []
    const name = said && nameOf(said, names)
    const hard = scoreOf(number ?? '')
    if (!name || hard === null) return null
    scores[name] = hard
  }
  return Object.keys(scores).length > 0 ? scores : null
}

/** The activity meant: its name, or how it begins where only one begins so. */
function nameOf(said: string, names: readonly string[]): string | undefined {
  const lower = said.trim().toLowerCase()
  const begins = names.filter((name) => name.toLowerCase().startsWith(lower))
  return names.find((name) => name.toLowerCase() === lower) ?? (begins.length === 1 ? begins[0] : undefined)
}

/** Numbers alone, one for each, count once the day is told: before that they would be the check-in. */
function bareScores({ file }: Draft, text: string): Scores | null {
  const asked = file.asked.find((row) => row.ask === 'activities')
  const row = file.checkIns.find((checkIn) => checkIn.day === asked?.day)
  const isTold = row && answered(row) && row.pain !== null && row.reach !== null
  const numbers = text.split(/[,;\s]+/).filter(Boolean)
  const names = namesOf(file)
  if (!isTold || numbers.length !== names.length) return null
  const scores = numbers.map(scoreOf)
  if (scores.includes(null)) return null
  return Object.fromEntries(names.map((name, n) => [name, scores[n]!]))
}

function keep(draft: Draft, scores: Scores): void {
  const id = draft.id('activity', draft.today)
  const before = draft.file.activities.find((row) => row.id === id)?.scores
  draft.put('activity', {
    id,
    clientId: draft.client.id,
    day: draft.today,
    at: draft.now,
    scores: { ...before, ...scores },
  })
  answeredNow(draft, 'activities')
  for (const due of draft.file.dues) if (due.kind === 'activities') draft.drop('due', due.id)
  const told = activityPaths(draft.file).filter(({ name }) => scores[name] !== undefined)
  draft.toClient({ kind: 'receipt', text: draft.texts.course.activitiesNoted(told) })
}
