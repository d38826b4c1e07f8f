import { type Item, plainText } from './items.ts'
import { type Known, type Language, mayGoOn } from './lexicon/compile.ts'
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

function heardIn(words: readonly Known[]): Set<Intent> {
  const heard = new Set<Intent>()
  for (let at = 0; at < words.length; at++) {
    const opening = words[at]!.within
    if (!opening) continue
    for (const intent of opening.alone) heard.add(intent)
    if (!mayGoOn(opening, words[at + 1])) continue
    for (const phrase of opening.longer) if (stands(words, at, phrase.words)) heard.add(phrase.means)
  }
  return heard
}

function stands(words: readonly Known[], at: number, phrase: readonly string[]): boolean {
  for (let n = 1; n < phrase.length; n++) if (words[at + n]?.plain !== phrase[n]) return false
  return true
}

export interface Heard {
  readonly items: readonly Item[]
  readonly words: readonly Known[]
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
  const within = heardIn(heard.words)
  if (heard.values) return heard.corrects || within.has('correct') ? 'correct' : 'checkin'
  if (heard.answered) return 'checkin'
  const whole = wholeOf(heard, language)
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
function wholeOf({ words, items }: Heard, { whole, longestWhole }: Language): Intent | undefined {
  const all = words.length <= longestWhole ? whole.get(plainText(words)) : undefined
  if (all !== undefined) return all
  const content = items.filter(({ cue }) => !SMALL.includes(cue))
  return content.length <= longestWhole ? whole.get(content.map(({ text }) => text).join(' ')) : undefined
}
