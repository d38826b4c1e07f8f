import type { Item } from './items.ts'
import type { Language, Phrasebook } from './lexicon/compile.ts'
import type { Intent } from './reading.ts'

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

function heardIn(words: readonly string[], book: Phrasebook<Intent>): Set<Intent> {
  const heard = new Set<Intent>()
  for (let at = 0; at < words.length; at++) {
    const phrases = book.get(words[at]!)
    if (!phrases) continue
    for (const phrase of phrases) if (stands(words, at, phrase.words)) heard.add(phrase.means)
  }
  return heard
}

function stands(words: readonly string[], at: number, phrase: readonly string[]): boolean {
  for (let n = 1; n < phrase.length; n++) if (words[at + n] !== phrase[n]) return false
  return true
}

export interface Heard {
  readonly items: readonly Item[]
  readonly words: readonly string[]
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
  const within = heardIn(heard.words, language.within)
  if (heard.values) return heard.corrects || within.has('correct') ? 'correct' : 'checkin'
  if (heard.answered) return 'checkin'
  const whole = language.whole.get(heard.words.join(' ')) ?? language.whole.get(contentOf(heard.items))
  if (whole) return whole
  const wanted = ORDER.find((intent) => within.has(intent) && intent !== 'question' && intent !== 'thanks')
  if (wanted && !(heard.signs && wanted === 'help')) return wanted
  if (heard.slots)
    return heard.corrects ? 'correct' : within.has('question') && heard.asks ? 'question' : 'checkin'
  if (within.has('question') || heard.asks || heard.items.some((item) => item.cue === 'ask'))
    return 'question'
  if (heard.signs) return 'checkin'
  return within.has('thanks') || heard.courteous ? 'thanks' : 'other'
}

const contentOf = (items: readonly Item[]): string =>
  items.flatMap((item) => (SMALL.includes(item.cue) ? [] : item.text)).join(' ')
