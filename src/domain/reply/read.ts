import { screenTokens } from '../signs/screen.ts'
import type { Screening } from '../signs/screening.ts'
import { answerTo } from './answers.ts'
import { applyCorrections, deniedNumber, settleNo } from './corrections.ts'
import { joinDates } from './dates.ts'
import { joinDays } from './days-together.ts'
import { type DaysTold, daysTold } from './days-told.ts'
import { withoutListNumbers } from './enumerated.ts'
import { type Folded, fold } from './fold.ts'
import { intentOf } from './intents.ts'
import { type Item, type Itemised, itemise } from './items.ts'
import { joinNumbers } from './joins.ts'
import type { Language } from './lexicon/compile.ts'
import { languageOf } from './lexicon/index.ts'
import { type Evidence, type Reading, type ReadingContext, SLOTS } from './reading.ts'
import { setScopes } from './scopes.ts'
import { EXTRA_SESSIONS } from './taken.ts'
import { type Token, tokenise } from './tokens.ts'
import { joinTurns } from './told-in-turn.ts'

/** From here on pain itself is a sign: likely severe and unrelenting, asked back. */
const SEVERE = 9

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

function evidenceOf(folded: Folded, { slots, dayWord }: DaysTold): Evidence[] {
  const quotes = slots.evidence.map(({ slot, item }) => ({ slot, words: folded.quote(item.start, item.end) }))
  return dayWord ? [...quotes, { slot: 'day', words: folded.quote(dayWord.start, dayWord.end) }] : quotes
}

/** What a message says, before it is parted by days. */
interface Said {
  readonly itemised: Itemised
  /** The items with what stands together joined, each with what denies or dates it. */
  readonly joined: readonly Item[]
  readonly corrects: boolean
}

function saidIn(tokens: readonly Token[], context: ReadingContext, language: Language): Said {
  const { planned } = context
  const itemised = itemise(tokens, language)
  const dated = joinDays(joinDates(withoutListNumbers(itemised.items), context, language))
  const joined = joinNumbers(joinTurns(dated, planned), planned, language)
  settleNo(joined, language)
  setScopes(joined, language)
  const corrects = applyCorrections(joined, planned + EXTRA_SESSIONS)
  if (corrects) settleDenied(joined, planned)
  return { itemised, joined, corrects }
}

/**
 * Reads one message in the light of its context: slots with the words behind them, or what must be asked back.
 * Total: any text has a reading. Deterministic, and linear in the length of the text.
 */
export function readReply(text: string, context: ReadingContext): Reading {
  const language = languageOf(context.locale)
  const folded = fold(text)
  const tokens = tokenise(folded)
  const { itemised, joined, corrects } = saidIn(tokens, context, language)
  const { items, words, courteous } = itemised
  const answer = answerTo(context.asked, { items: joined, words, tokens }, language)
  const told = daysTold(joined, answer, context, language)
  const { slots } = told
  const signs = signsOf(screenTokens(folded, tokens, context.locale), context, told.worstPain, answer)
  const heard = {
    items,
    words,
    tokens,
    courteous,
    corrects,
    values: told.values,
    slots: told.given,
    asks: tokens.some((t) => t.text === '?'),
    signs: signs.signs.length + signs.denied.length > 0,
    answered: answer !== null,
  }
  return {
    day: told.day,
    sessions: slots.sessions,
    reach: slots.reach,
    pain: slots.pain,
    side: slots.side ?? (context.asked === 'side' && isSide(answer) ? answer : null),
    signs: signs.signs,
    denied: signs.denied,
    care: signs.care,
    missing: SLOTS.filter((slot) => slots[slot] === null && !slots.unsure.has(slot)),
    unsure: unsureOf(told, signs.unsure),
    same: slots.same.filter((slot) => slots.unsure.has(slot)),
    intent: intentOf(heard, language),
    others: told.others,
    answer,
    evidence: evidenceOf(folded, told),
  }
}

function unsureOf({ slots, isDayUnsure }: DaysTold, areSignsUnsure: boolean): Reading['unsure'] {
  const unsure: Reading['unsure'][number][] = SLOTS.filter((slot) => slots.unsure.has(slot))
  if (isDayUnsure) unsure.push('day')
  if (areSignsUnsure) unsure.push('signs')
  return unsure
}

const isSide = (answer: string | null): answer is 'left' | 'right' | 'both' =>
  answer === 'left' || answer === 'right' || answer === 'both'
