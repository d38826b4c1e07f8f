import { type Day, daysBetween } from '../day.ts'
import { type DayGroup, groupByDay } from './groups.ts'
import type { Item } from './items.ts'
import type { Language } from './lexicon/compile.ts'
import { type DayReading, type ReadingContext, SLOTS } from './reading.ts'
import { readSlots } from './slots.ts'
import type { SlotsFound } from './taken.ts'

/** A day named further back is asked back. */
const FURTHEST_BACK = 3

interface Dated {
  readonly group: DayGroup
  readonly slots: SlotsFound
}

const holds = ({ slots }: Dated): boolean => SLOTS.some((slot) => slots[slot] !== null)
const hints = ({ slots }: Dated): boolean => SLOTS.some((slot) => slots.unsure.has(slot))

/** The day claimed, where it lies within reach; null where it must be asked back. */
function within(day: Day, today: Day): Day | null {
  if (day === today) return day
  const back = daysBetween(day, today)
  return back >= 0 && back <= FURTHEST_BACK ? day : null
}

const dateOf = ({ group }: Dated, { promptDay }: ReadingContext): Day => group.date ?? promptDay

/** Latest day first. */
function readDays(items: readonly Item[], context: ReadingContext, language: Language): Dated[] {
  const groups = groupByDay(items, context.promptDay)
  const dated = groups.map((group): Dated => ({ group, slots: readSlots(group.items, context, language) }))
  return dated.length === 1
    ? dated
    : dated.sort((a, b) => daysBetween(dateOf(a, context), dateOf(b, context)))
}

/** A zone or pain alone told of an earlier day in passing ("was in the foot yesterday") fills no record. */
function fillsDay({ group, slots }: Dated): boolean {
  const told = SLOTS.filter((slot) => slots[slot] !== null).length
  return (
    told > 1 || slots.sessions !== null || (told === 1 && !group.items.some((item) => item.cue === 'was'))
  )
}

/** What a message tells, by days: the one it is about, and others beside it. */
export interface DaysTold {
  readonly slots: SlotsFound
  /** Null where none was given, or where it must be asked back. */
  readonly day: Day | null
  /** The word behind the day. */
  readonly dayWord: Item | undefined
  readonly others: readonly DayReading[]
  readonly isDayUnsure: boolean
  /** Of the day it is about a value was given, or something that must be asked back. */
  readonly given: boolean
  /** Of any day a value was given. */
  readonly values: boolean
  /** Of all days. */
  readonly worstPain: number | null
}

/** @param answer what the message answers to a question just asked; null where it answers none */
export function daysTold(
  items: readonly Item[],
  answer: string | null,
  context: ReadingContext,
  language: Language,
): DaysTold {
  const { promptDay, today } = context
  const days = readDays(items, context, language)
  const main = days.find(fillsDay) ?? days.find(holds) ?? days.find(hints) ?? days[0]!
  if (answersOnly(answer, context, main)) main.slots.unsure.clear()
  const named =
    main.group.date ??
    (days.length > 1 || holds(main) || hints(main) ? null : (firstDate(items)?.date ?? null))
  const given = holds(main) || main.slots.unsure.size > 0
  const day = named !== null ? within(named, today) : given ? promptDay : null
  const others = days
    .filter((d) => d !== main && fillsDay(d))
    .reverse()
    .map((d) => plain(within(dateOf(d, context), today), d.slots))
  return {
    slots: main.slots,
    day,
    dayWord: main.group.items.find((item) => item.date !== null),
    others,
    isDayUnsure: (named !== null && day === null) || others.some((other) => other.day === null),
    given,
    values: days.some(holds),
    worstPain: worstPain(days),
  }
}

const plain = (day: Day | null, { sessions, reach, pain }: SlotsFound): DayReading => ({
  day,
  sessions,
  reach,
  pain,
})

const firstDate = (items: readonly Item[]): Item | undefined =>
  items.find((item) => item.date !== null && !item.unread)

const worstPain = (days: readonly Dated[]): number | null =>
  days.reduce<number | null>(
    (worst, { slots }) => (slots.pain === null ? worst : Math.max(worst ?? 0, slots.pain)),
    null,
  )

/** A choice or a yes to a question about something else gives no slot to ask back. */
const answersOnly = (answer: string | null, { asked }: ReadingContext, main: Dated): boolean =>
  answer !== null && asked !== null && !holds(main)
