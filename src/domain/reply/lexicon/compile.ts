import { REACHES, rank } from '../../reach.ts'
import type { Intent } from '../reading.ts'
import type { SlipTargets } from '../slips.ts'
import { slipTargets } from '../slips.ts'
import { type Barrier, type Lexicon, type LexiconData, LexiconSchema, type PlainCue } from './schema.ts'

/** All that a word or phrase can be to the reader. */
export type Cue = PlainCue | 'zone' | 'num' | 'count' | 'left' | 'right' | 'day' | 'weekday' | 'month'

/** One phrase: its words, what it is, and its value (rank of a zone, number, days back ...; 0 where none). */
export interface Phrase<T> {
  readonly words: readonly string[]
  readonly means: T
}
export interface Meaning {
  readonly cue: Cue
  readonly value: number
}
/** What opens with one word. */
export interface Opening<T> {
  /** Phrases of several words, the longest first. */
  readonly longer: readonly Phrase<T>[]
  /** Their second words, and the bits of them: where none follows, the phrases need not be looked at. */
  readonly seconds: ReadonlySet<string>
  readonly bits: number
  /** The word by itself. */
  readonly alone: readonly T[]
}
/** A wish, or a phrase in which its words mean something else. */
export type Wish = Intent | 'aside'
/** By the first word. */
type Phrasebook<T> = ReadonlyMap<string, Opening<T>>

/** A word as somebody wrote it, looked up once: its plain spelling, and what may open with it. */
export interface Known {
  readonly plain: string
  readonly bit: number
  readonly cues: Opening<Meaning> | undefined
  readonly within: Opening<Wish> | undefined
}

export interface Language {
  readonly language: string
  readonly decimalComma: boolean
  readonly dayFirst: boolean
  readonly inverted: ReadonlySet<string>
  readonly gerunds: readonly string[]
  readonly singular: ReadonlySet<string>
  readonly daysOfThings: ReadonlySet<string>
  readonly takesBack: { readonly words: ReadonlySet<string>; readonly always: boolean }
  readonly atHours: ReadonlySet<string>
  readonly dateOpeners: ReadonlySet<string>
  readonly ordinals: ReadonlySet<string>
  readonly firstOfRow: ReadonlySet<string>
  readonly ofSessions: { readonly numbers: ReadonlySet<string>; readonly articles: ReadonlySet<string> }
  readonly homophones: ReadonlyMap<string, number>
  readonly weekdaysAmong: ReadonlyMap<string, number>
  readonly cues: Phrasebook<Meaning>
  readonly within: Phrasebook<Wish>
  readonly refusals: ReadonlySet<string>
  /** No phrase of `refusals` has more words. */
  readonly longestRefusal: number
  readonly things: ReadonlySet<string>
  readonly gotIt: ReadonlySet<string>
  readonly whole: ReadonlyMap<string, Intent>
  /** No phrase of `whole` has more words. */
  readonly longestWhole: number
  readonly barriers: ReadonlyMap<string, Barrier>
  readonly pairs: ReadonlySet<string>
  /** Every word that stands in the data; such a word is never bent. */
  readonly known: ReadonlySet<string>
  readonly slips: SlipTargets
  /** Words met before, up to a bound. */
  readonly met: Map<string, Known>
}

type Row = readonly [cue: Cue, value: number, phrases: readonly string[]]

function rowsOf(lexicon: Lexicon): Row[] {
  const numbered = (cue: Cue, table: Record<string, string[]>): Row[] =>
    Object.entries(table).map(([value, phrases]) => [cue, Number(value), phrases])
  return [
    ...REACHES.map((reach): Row => ['zone', rank(reach), lexicon.zones[reach]]),
    ...numbered('num', lexicon.numbers),
    ...numbered('count', lexicon.counts),
    ...numbered('day', lexicon.daysBack),
    ...numbered('weekday', lexicon.weekdays),
    ...numbered('month', lexicon.months),
    ['left', 0, lexicon.sides.left],
    ['right', 0, lexicon.sides.right],
    ...Object.entries(lexicon.cues).map(([cue, phrases]): Row => [cue as PlainCue, 0, phrases]),
  ]
}

function book<T>(pairs: readonly (readonly [string, T])[]): Phrasebook<T> {
  const byFirst = new Map<string, Phrase<T>[]>()
  for (const [phrase, means] of pairs) {
    const words = phrase.split(' ')
    const list = byFirst.get(words[0]!)
    if (list === undefined) byFirst.set(words[0]!, [{ words, means }])
    else list.push({ words, means })
  }
  return new Map([...byFirst].map(([first, list]) => [first, openingOf(list)]))
}

/** One of 32 bits by the letters of a word: a set of words that lacks the bit does not hold the word. */
const bitOf = (word: string): number =>
  1 << (word.charCodeAt(0) * 7 + word.charCodeAt(word.length - 1) * 3 + word.length)

export const knownAs = (plain: string, { cues, within }: Pick<Language, 'cues' | 'within'>): Known => ({
  plain,
  bit: bitOf(plain),
  cues: cues.get(plain),
  within: within.get(plain),
})

/** Whether a phrase of several words may stand where this word follows the first. */
export const mayGoOn = ({ seconds, bits }: Opening<unknown>, next: Known | null | undefined): boolean =>
  next != null && (next.bit & bits) !== 0 && seconds.has(next.plain)

function openingOf<T>(phrases: readonly Phrase<T>[]): Opening<T> {
  const longer = phrases.filter(({ words }) => words.length > 1)
  return {
    longer: longer.sort((a, b) => b.words.length - a.words.length),
    seconds: new Set(longer.map(({ words }) => words[1]!)),
    bits: longer.reduce((bits, { words }) => bits | bitOf(words[1]!), 0),
    alone: phrases.filter(({ words }) => words.length === 1).map(({ means }) => means),
  }
}

/** Throws where one phrase would mean two things: the data must decide. */
function single(rows: readonly Row[], language: string): Map<string, Meaning> {
  const meanings = new Map<string, Meaning>()
  for (const [cue, value, phrases] of rows) {
    for (const phrase of phrases) {
      const before = meanings.get(phrase)
      if (before && (before.cue !== cue || before.value !== value))
        throw new Error(`lexicon ${language}: "${phrase}" is both ${before.cue} and ${cue}; keep one`)
      meanings.set(phrase, { cue, value })
    }
  }
  return meanings
}

const byWord = (lists: Readonly<Record<string, readonly string[]>>): ReadonlyMap<string, number> =>
  new Map(Object.entries(lists).flatMap(([n, list]) => list.map((w): [string, number] => [w, Number(n)])))

/** Checks and prepares the data of one language. Throws with the place of the first fault. */
export function compile(data: LexiconData): Language {
  const lexicon = LexiconSchema.parse(data)
  const meanings = single(rowsOf(lexicon), lexicon.language)
  const intents = Object.entries(lexicon.intents) as [Intent, { within: string[]; whole: string[] }][]
  const within = [
    ...intents.flatMap(([intent, heard]) => heard.within.map((p): [string, Wish] => [p, intent])),
    ...lexicon.aside.map((p): [string, Wish] => [p, 'aside']),
  ]
  const barriers = Object.entries(lexicon.barriers) as [Barrier, string[]][]
  const bent = lexicon.bent.map((word): [string, string] => {
    const means = meanings.get(word)
    return [word, means ? `${means.cue} ${means.value}` : word]
  })
  const whole = intents.flatMap(([intent, heard]) => heard.whole.map((p): [string, Intent] => [p, intent]))
  const phrases = [...meanings.keys(), ...lexicon.known, ...within.map(([phrase]) => phrase)]
  return {
    language: lexicon.language,
    decimalComma: lexicon.decimalComma,
    dayFirst: lexicon.dayFirst,
    inverted: new Set(lexicon.inverted),
    gerunds: lexicon.gerunds,
    singular: new Set(lexicon.singular),
    daysOfThings: new Set(lexicon.daysOfThings),
    takesBack: { words: new Set(lexicon.takesBack.words), always: lexicon.takesBack.always },
    atHours: new Set(lexicon.atHours),
    dateOpeners: new Set(lexicon.dateOpeners),
    ordinals: new Set(lexicon.ordinals),
    firstOfRow: new Set(lexicon.firstOfRow),
    ofSessions: {
      numbers: new Set(lexicon.ofSessions.numbers),
      articles: new Set(lexicon.ofSessions.articles),
    },
    homophones: byWord(lexicon.homophones),
    weekdaysAmong: byWord(lexicon.weekdaysAmong),
    cues: book([...meanings]),
    within: book(within),
    refusals: new Set(lexicon.refusals),
    longestRefusal: Math.max(0, ...lexicon.refusals.map((phrase) => phrase.split(' ').length)),
    things: new Set(lexicon.things),
    gotIt: new Set(lexicon.gotIt),
    whole: new Map(whole),
    longestWhole: Math.max(...whole.map(([phrase]) => phrase.split(' ').length)),
    barriers: new Map(
      barriers.flatMap(([barrier, list]) => list.map((p): [string, Barrier] => [p, barrier])),
    ),
    pairs: new Set(lexicon.pairs),
    known: new Set(phrases.join(' ').split(' ')),
    met: new Map(),
    slips: slipTargets(new Map(bent), lexicon.keyboard),
  }
}
