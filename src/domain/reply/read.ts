import { type Day, daysBetween } from '../day.ts'
import { screenTokens } from '../signs/screen.ts'
import type { Screening } from '../signs/screening.ts'
import { answerTo } from './answers.ts'
import { applyCorrections, deniedNumber, settleNo } from './corrections.ts'
import { joinDates } from './dates.ts'
import { joinDays } from './days-together.ts'
import { withoutListNumbers } from './enumerated.ts'
import { type Folded, fold } from './fold.ts'
import { type DayGroup, groupByDay } from './groups.ts'
import { intentOf } from './intents.ts'
import { type Item, itemise } from './items.ts'
import { joinNumbers } from './joins.ts'
import type { Language } from './lexicon/compile.ts'
import { languageOf } from './lexicon/index.ts'
import { type DayReading, type Evidence, type Reading, type ReadingContext, SLOTS } from './reading.ts'
import { setScopes } from './scopes.ts'
import { readSlots } from './slots.ts'
import { EXTRA_SESSIONS, type SlotsFound } from './taken.ts'
import { tokenise } from './tokens.ts'
import { joinTurns } from './told-in-turn.ts'

/** A day named further back is asked back. */
const FURTHEST_BACK = 3
/** From here on pain itself is a sign: likely severe and unrelenting, asked back. */
const SEVERE = 9

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

/** "4 not 6": where only pain could be 6, the 4 is pain. */
function settleDenied(items: readonly Item[], planned: number): void {
  const denied = deniedNumber(items)
  const kept = items.filter((item) => item.cue === 'num' && !item.denied && !item.unread)
  if (denied === null || kept.length !== 1 || kept[0]!.slot !== null) return
  if (items[items.findIndex((item) => item.cue === 'num' && item.denied) + 1]?.cue === 'session')
    kept[0]!.slot = 'sessions'
  else if (denied > planned + 2) kept[0]!.slot = 'pain'
}

function signsOf(screening: Screening, context: ReadingContext, pain: number | null, answer: string | null) {
  const severe = pain !== null && pain >= SEVERE && !screening.signs.includes('severe-unrelenting')
  const answered = context.asked === 'signs' ? answer : null
  const signs = severe ? [...screening.signs, 'severe-unrelenting' as const] : screening.signs
  const care =
    severe && (screening.care === 'none' || screening.care === 'soon')
      ? ('same-day' as const)
      : screening.care
  const denied =
    answered === 'no' && signs.length === 0 && screening.denied.length === 0
      ? (['all'] as const)
      : screening.denied
  const unsure = severe || screening.unsure.length > 0 || (answered === 'yes' && signs.length === 0)
  return { signs, denied, care, unsure }
}

function evidenceOf(folded: Folded, slots: SlotsFound, date: Item | undefined): Evidence[] {
  const quotes = slots.evidence.map(({ slot, item }) => ({ slot, words: folded.quote(item.start, item.end) }))
  return date ? [...quotes, { slot: 'day', words: folded.quote(date.start, date.end) }] : quotes
}

const plain = (day: Day | null, { sessions, reach, pain }: SlotsFound): DayReading => ({
  day,
  sessions,
  reach,
  pain,
})

/**
 * Reads one message in the light of its context: slots with the words behind them, or what must be asked back.
 * Total: any text has a reading. Deterministic, and linear in the length of the text.
 */
export function readReply(text: string, context: ReadingContext): Reading {
  const language = languageOf(context.locale)
  const folded = fold(text)
  const tokens = tokenise(folded)
  const { items: raw, words, courteous } = itemise(tokens, language)
  const items = joinNumbers(
    joinTurns(joinDays(joinDates(withoutListNumbers(raw), context, language)), context.planned),
    context.planned,
    language,
  )
  settleNo(items, language)
  setScopes(items, language)
  const corrects = applyCorrections(items, context.planned + EXTRA_SESSIONS)
  if (corrects) settleDenied(items, context.planned)
  const answer = answerTo(context.asked, { items, words, tokens }, language)
  const days = readDays(items, context, language)
  const main = days.find(fillsDay) ?? days.find(holds) ?? days.find(hints) ?? days[0]!
  const slots = main.slots
  if (answersOnly(answer, context, slots)) slots.unsure.clear()
  const named =
    main.group.date ??
    (days.length > 1 || holds(main) || hints(main) ? null : (firstDate(items)?.date ?? null))
  const given = holds(main) || slots.unsure.size > 0
  const day = named !== null ? within(named, context.today) : given ? context.promptDay : null
  const signs = signsOf(screenTokens(folded, tokens, context.locale), context, worstPain(days), answer)
  const unsure: Reading['unsure'][number][] = SLOTS.filter((slot) => slots.unsure.has(slot))
  const others = days
    .filter((d) => d !== main && fillsDay(d))
    .reverse()
    .map((d) => plain(within(d.group.date ?? context.promptDay, context.today), d.slots))
  if ((named !== null && day === null) || others.some((other) => other.day === null)) unsure.push('day')
  if (signs.unsure) unsure.push('signs')
  return {
    day,
    sessions: slots.sessions,
    reach: slots.reach,
    pain: slots.pain,
    side: slots.side ?? (context.asked === 'side' && isSide(answer) ? answer : null),
    signs: signs.signs,
    denied: signs.denied,
    care: signs.care,
    missing: SLOTS.filter((slot) => slots[slot] === null && !slots.unsure.has(slot)),
    unsure,
    same: slots.same.filter((slot) => slots.unsure.has(slot)),
    intent: intentOf(
      {
        items: raw,
        words,
        tokens,
        courteous,
        corrects,
        asks: tokens.some((t) => t.text === '?'),
        values: days.some(holds),
        slots: given,
        signs: signs.signs.length + signs.denied.length > 0,
        answered: answer !== null,
      },
      language,
    ),
    others,
    answer,
    evidence: evidenceOf(
      folded,
      slots,
      main.group.items.find((item) => item.date !== null),
    ),
  }
}

const isSide = (answer: string | null): answer is 'left' | 'right' | 'both' =>
  answer === 'left' || answer === 'right' || answer === 'both'

const firstDate = (items: readonly Item[]): Item | undefined =>
  items.find((item) => item.date !== null && !item.unread)

const worstPain = (days: readonly Dated[]): number | null =>
  days.reduce<number | null>(
    (worst, { slots }) => (slots.pain === null ? worst : Math.max(worst ?? 0, slots.pain)),
    null,
  )

/** A choice or a yes to a question about something else gives no slot to ask back. */
function answersOnly(answer: string | null, context: ReadingContext, slots: SlotsFound): boolean {
  return answer !== null && context.asked !== null && SLOTS.every((slot) => slots[slot] === null)
}
