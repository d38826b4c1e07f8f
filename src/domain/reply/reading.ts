import type { Care } from '../care.ts'
import type { Side } from '../checkin.ts'
import type { Day } from '../day.ts'
import type { Reach } from '../reach.ts'
import type { SignId } from '../signs/catalogue.ts'

/** What the bot may just have asked; a bare "4" or "yes" is read in its light. */
export const ASKS = [
  'sessions',
  'reach',
  'pain',
  'side',
  'signs',
  'comfort',
  'settled',
  'barrier',
  'day',
] as const
export type Ask = (typeof ASKS)[number]

export const INTENTS = [
  'checkin',
  'pause',
  'resume',
  'leave',
  'help',
  'today',
  'correct',
  'question',
  'thanks',
  'other',
] as const
export type Intent = (typeof INTENTS)[number]

export const SLOTS = ['sessions', 'reach', 'pain'] as const
export type Slot = (typeof SLOTS)[number]

/** All that is needed to read a reply; nothing else is looked at. */
export interface ReadingContext {
  /** Sessions planned that day (0 on a day off). */
  readonly planned: number
  /** The client's local calendar date and, for "today" after midnight, the day of the latest prompt. */
  readonly today: Day
  readonly promptDay: Day
  readonly locale: string
  readonly asked: Ask | null
}

/** The values of one day named in a message. */
export interface DayReading {
  readonly day: Day | null
  readonly sessions: number | null
  readonly reach: Reach | null
  readonly pain: number | null
}

/** Which words of the message (as the client wrote them) stand behind a slot. */
export interface Evidence {
  readonly slot: Slot | 'side' | 'day' | 'answer'
  readonly words: string
}

/** One reading of one message; every value null where it was not given or must be asked back. */
export interface Reading extends DayReading {
  readonly side: Side | null
  readonly signs: readonly SignId[]
  /** Ids denied in so many words, or ['all']. Empty where nothing was said. */
  readonly denied: readonly (SignId | 'all')[]
  readonly care: Care
  readonly missing: readonly Slot[]
  readonly unsure: readonly (Slot | 'side' | 'day' | 'signs')[]
  /** Slots in `unsure` because they were said to be as before. */
  readonly same: readonly Slot[]
  readonly intent: Intent
  /** Further days named in the same message; the main reading is the latest. */
  readonly others: readonly DayReading[]
  /** A plain yes or no, or a choice in words, to the question just asked (comfort, settled, barrier, side, signs). */
  readonly answer: string | null
  readonly evidence: readonly Evidence[]
}
