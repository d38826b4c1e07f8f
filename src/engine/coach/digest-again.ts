import { addDays, type Day, WEEKDAYS, weekday } from '../../domain/day.ts'
import type { WeekFacts } from '../../domain/digest/facts.ts'
import { revisedDays } from '../../domain/digest/revised.ts'
import { type Weeks, weeksOf } from '../../domain/digest/weeks.ts'
import { isoWeekOf } from '../../domain/iso-week.ts'
import { dayAt, instantOf } from '../../domain/local-time.ts'
import type { Desk } from '../command.ts'
import { Draft } from '../draft.ts'
import { historyOf } from '../history.ts'
import type { ClientFile, Posting } from '../ports.ts'
import type { OutboxRow, PracticeRow } from '../rows.ts'
import { decisionButtons } from './decide.ts'
import { type Card, inOrder, rollCallPostings } from './digest.ts'
import { assessOn } from './watch.ts'
import { factsOn, logOf } from './week-facts.ts'

/** A week's digest asked for again: on which day it falls in the practice, and under which key it was posted. */
interface Again {
  readonly week: string
  readonly day: Day
  readonly at: Date
  readonly key: string
  /** What the postings of this request stand for. */
  readonly cause: string
}

/**
 * The digest that belongs to a calendar week: the first at or after its Thursday, so that most of the days it tells
 * of lie in that week, whatever weekday the practice has chosen.
 */
export function digestOfWeek(practice: PracticeRow, monday: Day, cause: string): Again {
  const [name, time] = practice.digest.split(' ') as [(typeof WEEKDAYS)[number], string]
  const days = WEEKDAYS.map((_, n) => addDays(monday, 3 + n))
  const day = days.find((one) => weekday(one) === name)!
  const at = instantOf(day, time, practice.zone)
  return { week: isoWeekOf(monday), day, at, key: at.toISOString().slice(0, 10), cause }
}

/** Cards of a week gone by, from the record as it is now; a day changed since the posting marks its card as revised. */
export async function digestAgain(
  desk: Desk,
  files: readonly ClientFile[],
  again: Again,
  withRollCall: boolean,
): Promise<Posting[]> {
  const cards: Card[] = []
  for (const { client } of files) {
    const file = await desk.tx.wholeClient(client.id)
    const posted = await desk.tx.outboxByKey(`${client.id}/digest/${again.key}`)
    const card = file && cardAgain(desk, file, again, posted)
    if (card) cards.push(card)
  }
  if (cards.length === 0) return []
  const ordered = inOrder(cards).flatMap((card) => card.postings)
  if (!withRollCall) return ordered
  const facts: WeekFacts[] = cards.map((card) => card.facts)
  return [...rollCallPostings(desk, facts, again.day, again.cause), ...ordered]
}

function cardAgain(desk: Desk, file: ClientFile, again: Again, posted: OutboxRow | null): Card | null {
  const { now, textsFor, ladders } = desk
  const shown = (posted?.body.picture?.facts ?? null) as Weeks | null
  const on = shown?.on ?? dayAt(again.at, file.client.zone)
  if (file.client.start === null || file.client.start > on) return null
  const draft = new Draft(file, now, again.cause, textsFor, now, ladders)
  const { digest, digestAgain: said, language } = draft.forCoach
  const assessment = assessOn(draft, on)
  const facts = factsOn(draft, on, assessment)
  const weeks = weeksOf(historyOf(file), logOf(file, assessment), on)
  const revised = shown ? revisedDays(shown, weeks) : []
  draft.toCoach({
    kind: 'digest',
    key: draft.id('digest', again.cause),
    text: [
      said.again(again.week),
      ...(revised.length > 0 ? [said.revised(again.day, revised)] : []),
      digest.card(facts),
    ].join('\n'),
    // what there was to decide then is no longer the question; the reasons and the record are
    buttons: decisionButtons(draft, assessment).filter(({ name }) => name === 'why' || name === 'record'),
    picture: { name: `digest-${file.client.ref}-${on}`, alt: digest.alt(weeks), language, facts: weeks },
  })
  return { facts, postings: draft.outcome.postings }
}
