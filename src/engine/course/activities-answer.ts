import { answered } from '../../domain/checkin.ts'
import { readReply } from '../../domain/reply/read.ts'
import { answeredNow } from '../check-in/asked.ts'
import { receipt } from '../check-in/receipt.ts'
import { trail } from '../check-in/record.ts'
import { screenWords } from '../check-in/screen-words.ts'
import type { Draft } from '../draft.ts'
import type { Filled } from '../event.ts'
import { lastAnswered } from '../history.ts'
import { isPressing, statusOf } from '../status.ts'
import { activityPaths, fieldOf, HARDEST, namesOf, roundAnswered, wasAsked } from './activities.ts'

type Scores = Record<string, number>

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

/**
 * "rowing 5, sitting 3", asked for or not: true where the line was that and nothing else. Read as a check-in it would
 * be five sessions.
 */
export function answersActivities(draft: Draft, text: string): boolean {
  const { file } = draft
  if (namesOf(file).length === 0 || statusOf(file) !== 'active' || isPressing(file)) return false
  if (!wasAsked(file) && namesZone(draft, text)) return false
  if (screenWords(draft, text).signs.length > 0) return false
  const scores = namedScores(text, namesOf(file), wasAsked(file)) ?? bareScores(draft, text)
  if (!scores) return false
  trail(draft, 'words', text, draft.today, { activities: scores })
  keep(draft, scores)
  return true
}

/** Activities told beside a check-in, as in "2 calf 4, rowing 5". */
export interface Beside {
  /** The words without them. */
  readonly rest: string
  readonly scores: Scores
}

/** The parts of a line that tell of an activity by its name, and what is left; null where there are none. */
export function besideCheckIn(draft: Draft, text: string): Beside | null {
  const { file } = draft
  const names = namesOf(file)
  if (names.length === 0 || statusOf(file) !== 'active' || isPressing(file)) return null
  const parts = text.split(/[,;\n]/)
  const told = parts.map((part) => (namesZone(draft, part) ? null : namedScores(part, names, wasAsked(file))))
  const rest = parts.filter((_, n) => told[n] === null).join(',')
  const scores: Scores = Object.assign({}, ...told)
  return Object.keys(scores).length > 0 && rest.trim() !== '' ? { rest, scores } : null
}

/** An activity may be called like a zone: unasked, that is a check-in. The numbers beside the others say nothing. */
function namesZone({ today, client }: Draft, text: string): boolean {
  const context = { planned: 2, today, promptDay: today, locale: client.language, asked: null }
  return readReply(text, context).reach !== null
}

function namedScores(text: string, names: readonly string[], short: boolean): Scores | null {
  const scores: Scores = {}
  for (const part of text.split(/[,;\n]|\s+and\s+|\s+y\s+/).filter((one) => one.trim() !== '')) {
    const [, said, number] =
      /^\s*(\D{2,}?)[\s:=-]+(?:is\s+|now\s+|es\s+|ahora\s+)*(\d{1,2})(?:\s*\/\s*10)?[\s.!]*$/.exec(part) ?? []
    const name = said && nameOf(said, names, short)
    const hard = scoreOf(number ?? '')
    if (!name || hard === null) return null
    scores[name] = hard
  }
  return Object.keys(scores).length > 0 ? scores : null
}

/** The activity meant: its name; after the question how it begins will do, where only one begins so. */
function nameOf(said: string, names: readonly string[], short: boolean): string | undefined {
  const lower = said.trim().toLowerCase()
  const begins = names.filter((name) => name.toLowerCase().startsWith(lower))
  const whole = names.find((name) => name.toLowerCase() === lower)
  return whole ?? (short && begins.length === 1 ? begins[0] : undefined)
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
  const notes = [keepScores(draft, scores)]
  receipt(draft, { days: [], day: latestDay(draft), notes, unsure: [] })
}

/** Writes them down; gives the line that says so. */
export function keepScores(draft: Draft, scores: Scores): string {
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
  roundAnswered(draft)
  const told = activityPaths(draft.file).filter(({ name }) => scores[name] !== undefined)
  return draft.texts.course.activitiesNoted(told)
}

/** The day of which the next question asks: the latest one told. */
const latestDay = ({ file, today }: Draft) => lastAnswered(file) ?? today
