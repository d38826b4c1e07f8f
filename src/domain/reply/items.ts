import type { Day } from '../day.ts'
import {
  type Cue,
  type Known,
  knownAs,
  type Language,
  type Meaning,
  mayGoOn,
  type Phrase,
} from './lexicon/compile.ts'
import { meant } from './slips.ts'
import { type Ticks, ticksOf } from './ticks.ts'
import type { Token } from './tokens.ts'

/** A stretch of the message with one meaning; what the passes find out about it is written onto it. */
export interface Item {
  cue: Cue | 'word' | 'mark'
  /** Rank of a zone, a number, days back; 0 where the cue has none. */
  value: number
  readonly text: string
  readonly start: number
  readonly end: number
  /** Nothing, not even a space, stands between it and the item before. */
  readonly tight: boolean
  /** An emoji or other sign stands between it and the item before. */
  apart: boolean
  /** Denied, or not about this client's day: of no value. */
  denied: boolean
  unread: boolean
  /** Said of an earlier time that may be the same day. */
  was: boolean
  /** Numbers: a range or bound that holds no plain value, and what was said of it. */
  range: boolean
  unsure: boolean
  slot: 'sessions' | 'pain' | null
  /** Replaces an earlier value of its slot in the same message. */
  corrects: boolean
  date: Day | null
  /** Of a day: others named with it, to which the same is told. */
  also: readonly Day[]
}

/** Marks that separate or join; any other sign, emoji included, is left out. */
const KEPT_MARKS = new Set([...'.,;:!?¿/-=()>~+&%→\n'])
const STRONG = new Set([...'.!?¿;\n'])

export const isMark = (item: Item | undefined, marks: string): boolean =>
  item?.cue === 'mark' && marks.includes(item.text)
/** Ends a sentence. */
export const isStrong = (item: Item | undefined): boolean =>
  item === undefined || (item.cue === 'mark' && STRONG.has(item.text))
/** Ends a clause: a sentence's end, a comma, a dash apart, a contrast. */
export const isBreak = (item: Item | undefined): boolean =>
  isStrong(item) || isMark(item, ',') || (isMark(item, '-') && !item!.tight) || item?.cue === 'but'

const NO_DAYS: readonly Day[] = []

export function makeItem(
  cue: Item['cue'],
  value: number,
  text: string,
  start: number,
  end: number,
  tight: boolean,
): Item {
  return {
    cue,
    value,
    text,
    start,
    end,
    tight,
    apart: false,
    denied: false,
    unread: false,
    was: false,
    range: false,
    unsure: false,
    slot: null,
    corrects: false,
    date: null,
    also: NO_DAYS,
  }
}

const REMEMBERED = 8192

/** The word as the data spells it: no apostrophes, drawn-out letters shortened, slips of the finger mended. */
function plainWord(text: string, language: Language): string {
  const bare = text.replaceAll("'", '')
  if (language.known.has(bare)) return bare
  return shortened(bare, language) ?? meant(bare, language.slips) ?? bare
}

function knownWord(text: string, language: Language): Known {
  const before = language.met.get(text)
  if (before !== undefined) return before
  const plain = plainWord(text, language)
  const known = knownAs(plain, language)
  if (language.met.size < REMEMBERED) language.met.set(text, known)
  return known
}

function shortened(word: string, language: Language): string | null {
  if (!/(.)\1\1/.test(word)) return null
  const twice = word.replace(/(.)\1{2,}/g, '$1$1')
  if (language.known.has(twice)) return twice
  const once = word.replace(/(.)\1{2,}/g, '$1')
  return language.known.has(once) ? once : meant(once, language.slips)
}

interface Step {
  readonly token: Token
  /** Null for numbers and marks. */
  readonly word: Known | null
  readonly tight: boolean
  readonly apart: boolean
}

function stepsOf(tokens: readonly Token[], language: Language): Step[] {
  const steps: Step[] = []
  let end = -1
  let apart = false
  for (const token of tokens) {
    if (token.kind === 'mark' && !KEPT_MARKS.has(token.text)) {
      apart = true
      continue
    }
    const word = token.kind === 'word' ? knownWord(token.text, language) : null
    steps.push({ token, word, tight: token.start === end, apart })
    apart = false
    end = token.end
  }
  return steps
}

/** How many steps the phrase covers from `at`, hyphens between its words included; 0 where it does not stand there. */
function covers(steps: readonly Step[], at: number, phrase: Phrase<Meaning>): number {
  const { words } = phrase
  let i = at + 1
  for (let n = 1; n < words.length; n++) {
    if (isHyphen(steps[i])) i += 1
    // "2 done 🎉 none anywhere" is no "done none"
    if (steps[i]?.word?.plain !== words[n] || steps[i]!.apart) return 0
    i += 1
  }
  return i - at
}

function phraseAt(steps: readonly Step[], at: number): { length: number; means: Meaning } | null {
  const opening = steps[at]?.word?.cues
  if (!opening) return null
  const { longer, alone } = opening
  const second = steps[isHyphen(steps[at + 1]) ? at + 2 : at + 1]?.word
  if (mayGoOn(opening, second))
    for (const phrase of longer) {
      const length = covers(steps, at, phrase)
      if (length > 0 && !isTakenUp(steps, at, length, phrase.means)) return { length, means: phrase.means }
    }
  return alone.length > 0 ? { length: 1, means: alone[0]! } : null
}

const isHyphen = (step: Step | undefined): boolean => step?.token.text === '-' && step.tight

/** "it doesn't" answers; "it doesn't reach the knee" goes on. */
function isTakenUp(steps: readonly Step[], at: number, length: number, { cue }: Meaning): boolean {
  if (length < 2 || (cue !== 'yes' && cue !== 'nope')) return false
  const next = steps[at + length]?.token.kind
  if (next !== 'word' && next !== 'number') return false
  const last = steps[at + length - 1]!.word?.cues
  if (last === undefined) return false
  const all = [...last.alone, ...last.longer.map(({ means }) => means)]
  return all.some((means) => means.cue === 'did' || means.cue === 'no')
}

export interface Itemised {
  readonly items: Item[]
  /** Every word of the message. */
  readonly words: readonly Known[]
  /** True where a courtesy was left out. */
  readonly courteous: boolean
}

function wordsOf(steps: readonly Step[]): Known[] {
  const words: Known[] = []
  for (const { word } of steps) if (word !== null) words.push(word)
  return words
}

export const plainText = (words: readonly Known[]): string => words.map(({ plain }) => plain).join(' ')

const textOf = (steps: readonly Step[], at: number, length: number): string =>
  plainText(wordsOf(steps.slice(at, at + length)))

function itemOf({ done, taken }: Ticks, tokens: readonly Token[]): Item {
  const [first, last] = [tokens[0]!, tokens[taken - 1]!]
  return Object.assign(makeItem('num', done, first.text, first.start, last.end, false), { slot: 'sessions' })
}

/** Words and numbers with their meaning, longest phrase first; courtesies are left out. */
export function itemise(tokens: readonly Token[], language: Language): Itemised {
  const ticks = ticksOf(tokens)
  const steps = stepsOf(ticks ? tokens.slice(ticks.taken) : tokens, language)
  let courteous = false
  const items: Item[] = ticks ? [itemOf(ticks, tokens)] : []
  for (let at = 0; at < steps.length; ) {
    const { token, word, tight, apart } = steps[at]!
    const found = phraseAt(steps, at)
    if (found) {
      const last = steps[at + found.length - 1]!.token
      const text = found.length === 1 ? word!.plain : textOf(steps, at, found.length)
      if (found.means.cue === 'thanks') courteous = true
      else if (found.means.cue === 'noBeyond')
        items.push(
          makeItem('no', 0, text, token.start, last.end, tight),
          makeItem('beyond', 0, text, token.start, last.end, true),
        )
      else items.push(makeItem(found.means.cue, found.means.value, text, token.start, last.end, tight))
      if (apart && found.means.cue !== 'thanks') items.at(-1)!.apart = true
      at += found.length
      continue
    }
    const cue = token.kind === 'number' ? 'num' : token.kind
    items.push(makeItem(cue, token.value ?? 0, word?.plain ?? token.text, token.start, token.end, tight))
    at += 1
  }
  return { items, words: wordsOf(steps), courteous }
}
