import { addDays, type Day, WEEKDAYS, type Weekday, weekday } from '../../domain/day.ts'
import { rollCall } from '../../domain/digest/attention.ts'
import type { WeekFacts } from '../../domain/digest/facts.ts'
import { weeksOf } from '../../domain/digest/weeks.ts'
import { LADDERS } from '../../domain/ladder/ladders.ts'
import { dayAt, instantOf } from '../../domain/local-time.ts'
import type { Desk } from '../command.ts'
import { courseLines } from '../course/course-summary.ts'
import { openQuestions } from '../course/questions.ts'
import { Draft } from '../draft.ts'
import { historyOf } from '../history.ts'
import { BARE } from '../message.ts'
import type { EngineParts } from '../parts.ts'
import type { ClientFile, Posting } from '../ports.ts'
import type { DueRow, PracticeRow } from '../rows.ts'
import { isLocked } from '../status.ts'
import { decisionButtons } from './decide.ts'
import { assessOn } from './watch.ts'
import { factsOn, logOf } from './week-facts.ts'

/** The next digest after an instant, at the practice's own day and hour. */
function nextDigest(practice: PracticeRow, after: Date): Date {
  const [name, time] = practice.digest.split(' ') as [Weekday, string]
  const first = dayAt(after, practice.zone)
  const days = Array.from({ length: WEEKDAYS.length + 1 }, (_, n) => addDays(first, n))
  const instants = days
    .filter((day) => weekday(day) === name)
    .map((day) => instantOf(day, time, practice.zone))
  return instants.find((at) => at > after) ?? instantOf(addDays(first, 7), time, practice.zone)
}

export const digestDue = (practice: PracticeRow, after: Date): DueRow => ({
  id: `${practice.id}/due/digest`,
  practiceId: practice.id,
  clientId: null,
  kind: 'digest',
  at: nextDigest(practice, after),
  data: {},
})

/** Roll-call on top, then a card with picture for each client, those who need the coach first. */
export function digest(
  practice: PracticeRow,
  files: readonly ClientFile[],
  now: Date,
  { textsFor, ladders }: CardParts,
  key: string,
): Posting[] {
  if (!practice.coachChannel) return []
  const texts = textsFor(practice.language)
  const cards = files.filter(isOnTheRoll).map((file) => cardOf(file, now, { textsFor, ladders }, key))
  const day = dayAt(now, practice.zone)
  const facts = cards.map((card) => card.facts)
  const overdue = openQuestions(files, now, 'overdue')
  const waiting = overdue.length > 0 ? texts.courseForCoach.openQuestions(overdue) : []
  return [
    ...rollCallPostings({ practice, texts, now }, facts, day, key, waiting),
    ...inOrder(cards).flatMap((card) => card.postings),
  ]
}

/** The cards of those who need the coach first, as the roll-call has them. */
export function inOrder(cards: readonly Card[]): Card[] {
  const roll = rollCall(cards.map((card) => card.facts))
  const order = [...roll.needs, ...roll.move, ...roll.rest].map((entry) => entry.facts.ref)
  return [...cards].sort((a, b) => order.indexOf(a.facts.ref) - order.indexOf(b.facts.ref))
}

/** The roll-call in as many messages as it needs, and what else is to be read before the cards. */
export const rollCallPostings = (
  { practice, texts, now }: Pick<Desk, 'practice' | 'texts' | 'now'>,
  facts: readonly WeekFacts[],
  day: Day,
  key: string,
  more: readonly string[] = [],
): Posting[] =>
  [...texts.digest.rollCall(rollCall(facts), day), ...more].map((text, n) =>
    rollCallPosting(practice!, text, now, `${key}/${n}`),
  )

/** Everybody with a plan under way, and whoever has an urgent sign or alert open, however far they have come. */
const isOnTheRoll = (file: ClientFile): boolean =>
  (file.client.stage === 'enrolled' && file.plan !== null) ||
  isLocked(file) ||
  file.alerts.some((alert) => alert.closedAt === null)

/** What a card is made with; the ladders are those of the house where left out. */
type CardParts = Pick<EngineParts, 'textsFor' | 'ladders'>

export interface Card {
  readonly facts: WeekFacts
  readonly postings: readonly Posting[]
}

export function cardOf(
  file: ClientFile,
  now: Date,
  { textsFor, ladders = LADDERS }: CardParts,
  key: string,
): Card {
  const draft = new Draft(file, now, key, textsFor, now, ladders)
  const texts = draft.forCoach
  const on = draft.today
  const assessment = assessOn(draft, on)
  const facts = factsOn(draft, on, assessment)
  const weeks = weeksOf(historyOf(file), logOf(file, assessment), on)
  draft.toCoach({
    kind: 'digest',
    key: draft.id('digest', key),
    text: [texts.digest.card(facts), ...courseLines(draft)].join('\n'),
    buttons: decisionButtons(draft, assessment),
    picture: {
      name: `digest-${file.client.ref}-${on}`,
      alt: texts.digest.alt(weeks),
      language: texts.language,
      facts: weeks,
    },
  })
  return { facts, postings: draft.outcome.postings }
}

function rollCallPosting(practice: PracticeRow, text: string, now: Date, key: string): Posting {
  return {
    message: {
      ...BARE,
      key: `${practice.id}/roll-call/${key}`,
      address: { to: 'coach', channel: practice.coachChannel! },
      kind: 'roll-call',
      text,
    },
    clientId: null,
    practiceId: practice.id,
    priority: 4,
    notBefore: now,
    expires: null,
  }
}
