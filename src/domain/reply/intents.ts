import { type Item, plainText } from './items.ts'
import { type Known, type Language, mayGoOn, type Wish } from './lexicon/compile.ts'
import type { Intent } from './reading.ts'
import type { Token } from './tokens.ts'

/** Where several are heard, the first of these. */
const ORDER: readonly Intent[] = [
  'leave',
  'pause',
  'resume',
  'today',
  'help',
  'correct',
  'question',
  'thanks',
]
const SMALL: readonly Item['cue'][] = ['mark', 'soft', 'article', 'be']

interface Span {
  readonly wish: Wish
  /** Places among the words, both included. */
  readonly from: number
  readonly to: number
}

function spansIn(words: readonly Known[]): Span[] {
  const spans: Span[] = []
  for (let at = 0; at < words.length; at++) {
    const opening = words[at]!.within
    if (!opening) continue
    for (const wish of opening.alone) spans.push({ wish, from: at, to: at })
    if (!mayGoOn(opening, words[at + 1])) continue
    for (const { words: phrase, means } of opening.longer)
      if (stands(words, at, phrase)) spans.push({ wish: means, from: at, to: at + phrase.length - 1 })
  }
  return spans
}

/** A phrase of another meaning over the wish's words; a wish that holds such a phrase and more stays one. */
const takesAway = (aside: Span, { from, to }: Span): boolean =>
  aside.wish === 'aside' &&
  aside.from <= to &&
  aside.to >= from &&
  !(from <= aside.from && to >= aside.to && to - from > aside.to - aside.from)

/** Can be taken back by a word before it ("don't cancel my plan"). */
const WISHES: readonly Wish[] = ['leave', 'pause', 'resume', 'help']

function heardIn({ words, tokens }: Heard, language: Language): Set<Wish> {
  const spans = spansIn(words)
  const heard = new Set<Wish>()
  for (const span of spans) {
    if (heard.has(span.wish)) continue
    const apart = span.wish !== 'aside' && spans.some((other) => takesAway(other, span))
    const refused = WISHES.includes(span.wish) && isRefused(words, span.from, tokens, language)
    if (!apart && !refused) heard.add(span.wish)
  }
  return heard
}

/** "I don't want to leave", "no quiero salir"; "no, quiero salir" is parted. */
function isRefused(
  words: readonly Known[],
  at: number,
  tokens: readonly Token[],
  { refusals, longestRefusal }: Language,
): boolean {
  for (let from = at - 1; from >= 0 && from >= at - longestRefusal; from--)
    if (refusals.has(plainText(words.slice(from, at)))) return !isParted(tokens, at)
  return false
}

/** Whether a mark stands before the word of that number. */
function isParted(tokens: readonly Token[], word: number): boolean {
  let seen = -1
  const at = tokens.findIndex(({ kind }) => kind === 'word' && ++seen === word)
  return tokens[at - 1]?.kind === 'mark'
}

function stands(words: readonly Known[], at: number, phrase: readonly string[]): boolean {
  for (let n = 1; n < phrase.length; n++) if (words[at + n]?.plain !== phrase[n]) return false
  return true
}

export interface Heard {
  readonly items: readonly Item[]
  readonly words: readonly Known[]
  readonly tokens: readonly Token[]
  readonly courteous: boolean
  readonly asks: boolean
  /** A value was given, or at least something that must be asked back. */
  readonly values: boolean
  readonly slots: boolean
  readonly corrects: boolean
  readonly signs: boolean
  readonly answered: boolean
}

/** What the message wants. A value given makes it a check-in, whatever else it says. */
export function intentOf(heard: Heard, language: Language): Intent {
  const within = heardIn(heard, language)
  if (heard.values) return heard.corrects || within.has('correct') ? 'correct' : 'checkin'
  if (heard.answered) return 'checkin'
  const whole = wholeOf(heard, within.has('aside'), language)
  if (whole) return whole
  const wanted = ORDER.find((intent) => within.has(intent) && intent !== 'question' && intent !== 'thanks')
  // who asks how to go has not gone yet
  if (wanted === 'leave' && within.has('help')) return 'help'
  if (wanted && !(heard.signs && wanted === 'help')) return wanted
  if (heard.slots)
    return heard.corrects ? 'correct' : within.has('question') && heard.asks ? 'question' : 'checkin'
  if (within.has('question') || heard.asks || heard.items.some((item) => item.cue === 'ask'))
    return 'question'
  if (heard.signs) return 'checkin'
  return within.has('thanks') || heard.courteous ? 'thanks' : 'other'
}

/** The intent that the message as a whole is known to have, small words left out or not. */
function wholeOf(
  { words, items }: Heard,
  aside: boolean,
  { whole, longestWhole }: Language,
): Intent | undefined {
  const all = words.length <= longestWhole ? whole.get(plainText(words)) : undefined
  if (all !== undefined) return all
  // "leave me a note" is more than its one content word
  if (aside) return undefined
  const content = items.filter(({ cue }) => !SMALL.includes(cue))
  return content.length <= longestWhole ? whole.get(content.map(({ text }) => text).join(' ')) : undefined
}
