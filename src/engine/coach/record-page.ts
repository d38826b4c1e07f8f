import { addDays, type Day, daysBetween, isDay } from '../../domain/day.ts'
import { weeksOf } from '../../domain/digest/weeks.ts'
import { isoWeekOf, mondayBefore, mondayOf } from '../../domain/iso-week.ts'
import { dayAt } from '../../domain/local-time.ts'
import { plain } from '../answer.ts'
import { Draft } from '../draft.ts'
import { historyOf } from '../history.ts'
import type { Act, Answer, Button } from '../message.ts'
import type { ClientFile, Tx } from '../ports.ts'
import { statusOf } from '../status.ts'
import { recordLines } from './record-lines.ts'
import { assessOn } from './watch.ts'
import { logOf } from './week-facts.ts'

/** Which week of a record, and which part of a long one (from 0); null: the present week. */
export interface RecordWish {
  readonly week: Day | null
  readonly part: number
}

// With its head a part stays below the 2,000 characters of a message.
const CHARACTERS_A_PART = 1_600

export const recordWish = (act: Act): RecordWish => ({
  week: typeof act.week === 'string' ? act.week : null,
  part: typeof act.part === 'number' ? act.part : 0,
})

/** The Monday that a coach means by "2026-W12" or a date in the week; null where it is neither. */
export const weekWished = (text: string): Day | null =>
  mondayOf(text) ?? (isDay(text.trim()) ? mondayBefore(text.trim()) : null)

/** One week of a client's record for a coach: picture, days with every version, signs, decisions, notes. */
export async function recordPage(
  tx: Tx,
  draft: Draft,
  wish: RecordWish,
  privately: boolean,
): Promise<Answer> {
  const { record } = draft.forCoach
  const { ref } = draft.client
  const whole = (await tx.wholeClient(draft.client.id)) ?? draft.file
  const file: ClientFile = { ...whole, client: draft.client }
  const [begins, now] = [mondayBefore(firstDay(file)), mondayBefore(draft.today)]
  const monday = wish.week ?? now
  if (monday < begins || monday > now) return plain(record.noWeek(ref, isoWeekOf(monday)), ref, privately)
  const told = await tx.told(draft.client.id)
  const lines = recordLines(file, told.versions, await tx.notes(draft.client.id), monday, draft)
  const parts = partsOf(lines)
  const part = Math.min(Math.max(0, wish.part), parts.length - 1)
  const head = record.head({
    ref,
    status: draft.forCoach.words.status(statusOf(file)),
    week: isoWeekOf(monday),
    first: monday,
    last: addDays(monday, 6),
    planWeek: planWeek(file, monday),
    part: { number: part + 1, of: parts.length },
  })
  return {
    ...plain([head, ...(parts[part] ?? [])].join('\n'), ref, privately),
    kind: 'report',
    picture: pictureOf(draft, file, addDays(monday, 6)),
    choices: {
      buttons: turns(draft, monday, { begins, now, part, parts: parts.length }),
      pick: null,
    },
  }
}

const firstDay = ({ client, checkIns }: ClientFile): Day =>
  [dayAt(client.createdAt, client.zone), ...checkIns.map((row) => row.day)].sort()[0]!

function planWeek({ client }: ClientFile, monday: Day): number | null {
  const last = addDays(monday, 6)
  if (client.start === null || last < client.start) return null
  return Math.floor(daysBetween(client.start, last) / 7) + 1
}

function partsOf(lines: readonly string[]): string[][] {
  const parts: string[][] = [[]]
  let length = 0
  for (const line of lines) {
    length += line.length + 1
    if (length > CHARACTERS_A_PART && parts.at(-1)!.length > 0) {
      parts.push([])
      length = line.length
    }
    parts.at(-1)!.push(line)
  }
  return parts
}

/** The weeks up to this one, as the digest of that week would draw them. */
function pictureOf(draft: Draft, file: ClientFile, sunday: Day): Answer['picture'] {
  const on = sunday < draft.today ? sunday : draft.today
  const past = new Draft(file, draft.now, draft.cause, () => draft.forCoach, draft.now, draft.ladders)
  const assessment = assessOn(past, on)
  const weeks = weeksOf(historyOf(file), logOf(file, assessment), on)
  const { digest, language } = draft.forCoach
  return { name: `record-${file.client.ref}-${on}`, alt: digest.alt(weeks), language, facts: weeks }
}

interface Place {
  readonly begins: Day
  readonly now: Day
  readonly part: number
  readonly parts: number
}

function turns(draft: Draft, monday: Day, { begins, now, part, parts }: Place): Button[] {
  const { record } = draft.forCoach
  const turn = (name: string, label: string, week: Day, to = 0): Button => ({
    name,
    label,
    act: { do: 'record', week, part: to },
  })
  return [
    ...(monday > begins ? [turn('week-before', record.before, addDays(monday, -7))] : []),
    ...(part < parts - 1 ? [turn('more', record.more, monday, part + 1)] : []),
    ...(monday < now ? [turn('week-after', record.after, addDays(monday, 7))] : []),
  ]
}
