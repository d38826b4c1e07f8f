import { type Day, weekday } from '../../domain/day.ts'
import { dayAt } from '../../domain/local-time.ts'
import { readReply } from '../../domain/reply/read.ts'
import { ASKS, type Ask, type Intent, type Reading, type ReadingContext } from '../../domain/reply/reading.ts'
import type { Draft } from '../draft.ts'
import { plannedOn } from '../plan/rungs.ts'
import type { AskedRow } from '../rows.ts'
import { otherLanguages } from './screen-words.ts'

/** What a word or two of another language may ask for ("leave"); a longer text may only sound like it. */
const WISHES: readonly Intent[] = ['leave', 'pause', 'resume', 'today', 'help']
const SHORT_WORDS = 3

const isAsk = (ask: string): ask is Ask => (ASKS as readonly string[]).includes(ask)

/** "Are you on your way?" is answered by yes or no like any other question of that kind. */
const askFor = (asked: AskedRow | null): Ask | null => {
  if (asked?.ask === 'on-the-way') return 'settled'
  return asked && isAsk(asked.ask) ? asked.ask : null
}

/**
 * Reads a reply in the light of what was asked. The routine question on signs, which every prompt carries, counts
 * only where the words say nothing else: "no" is then an answer, "no sessions" is not.
 */
export function readWith(draft: Draft, text: string, promptDay: Day, asked: AskedRow | null): ReadWith {
  const context = {
    planned: plannedOn(draft.file, weekday(promptDay)),
    today: dayAt(draft.written, draft.client.zone),
    promptDay,
    locale: draft.client.language,
  }
  const ask = askFor(asked)
  if (ask !== 'signs' || asked?.pressing) return readIn(draft, text, { ...context, asked: ask })
  const alone = readIn(draft, text, { ...context, asked: null })
  return saysNothing(alone.reading) ? readIn(draft, text, { ...context, asked: 'signs' }) : alone
}

interface ReadWith {
  readonly reading: Reading
  readonly context: ReadingContext
}

/**
 * In the client's language; where that leaves something open, in the one of our languages in which nothing is: people
 * write in both, and whoever has changed language still knows the words of the one before.
 */
function readIn(draft: Draft, text: string, context: ReadingContext): ReadWith {
  const own = { reading: readReply(text, context), context }
  if (!saysNothing(own.reading) && own.reading.unsure.length === 0) return own
  const others = otherLanguages(draft).map((locale) => {
    const there = { ...context, locale }
    return { reading: readReply(text, there), context: there }
  })
  return others.find(({ reading }) => isWhole(reading) || (isShort(text) && wantsSomething(reading))) ?? own
}

const isWhole = (reading: Reading): boolean => reading.missing.length === 0 && reading.unsure.length === 0
const isShort = (text: string): boolean => text.trim().split(/\s+/).length <= SHORT_WORDS
const wantsSomething = ({ intent, unsure }: Reading): boolean =>
  unsure.length === 0 && WISHES.includes(intent)

const saysNothing = (reading: Reading): boolean =>
  reading.intent === 'other' &&
  reading.day === null &&
  reading.signs.length + reading.denied.length + reading.unsure.length === 0
