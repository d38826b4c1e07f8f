import type { Token } from '../reply/tokens.ts'
import type { Compiled } from './compile.ts'
import type { Entry } from './phrases.ts'
import {
  ASIDES,
  type Found,
  type MAIN,
  type NET,
  type Opening,
  type Thread,
  type TreePlace,
  type Word,
} from './words.ts'

/** What parts two units, in rising strength. */
export const BREAK = { none: 0, comma: 1, contrast: 2, sentence: 3 } as const

/** A word or phrase of the message: what it may mean, and where it stands in the folded text. */
export interface Unit {
  readonly entry: Entry
  readonly start: number
  readonly end: number
  /** The value of a number, else null. */
  readonly value: number | null
  /** The break before it. */
  readonly gap: number
  /** The break before it is a question mark. */
  readonly afterQuestion: boolean
}

const SENTENCE_END = new Set(['.', '!', '?', ';', '\n', '•', '*'])
const JOINS = new Set(["'", '"', '/', '&', '+', '_', '%', '#', '@', '=', '~', '^', '°'])

function breakOf(mark: Token, before: Token | undefined, after: Token | undefined): number {
  const { text } = mark
  if (JOINS.has(text)) return BREAK.none
  const isTight = before?.end === mark.start && after?.start === mark.end
  if (text === '-' && isTight) return BREAK.none
  // "numb... down there" trails off, it does not end; "3.Numb" and "numb.can't" do end
  if (text === '.' && mark.end - mark.start > 1) return BREAK.comma
  return SENTENCE_END.has(text) ? BREAK.sentence : BREAK.comma
}

/** "between (both of) my legs": words of no weight that a phrase may hold in a row. */
const MOST_SKIPS = 2
const MOST_THREADS = 4
const NO_THREADS: readonly Thread[] = []
const NONE: readonly Found[] = []

/** A message cut into tokens, and the words among them as its lexicon knows them. */
export interface Said {
  readonly tokens: readonly Token[]
  readonly words: readonly (Word | null)[]
}

/** "weak this week" is not the idiom "weak week": an idiom holds its own words and no others. */
const isIdiom = (entry: Entry, { cue, net }: Compiled): boolean =>
  entry.has(cue.idiom) || entry.has(net.idiom)

function advance(threads: readonly Thread[], word: Word): readonly Thread[] {
  let next: Thread[] | null = null
  for (const { node, skips, isLoose } of threads) {
    for (const step of word.stepsFrom(node)) {
      next ??= []
      next.push({ node: step, skips: 0, isLoose })
    }
    if (!word.isSkipped || skips === MOST_SKIPS) continue
    next ??= []
    next.push({ node, skips: skips + 1, isLoose: true })
  }
  if (next === null) return NO_THREADS
  return next.length > MOST_THREADS ? next.slice(0, MOST_THREADS) : next
}

function endingOf(threads: readonly Thread[], lexicon: Compiled): Entry | null {
  for (const { node, skips, isLoose } of threads) {
    const entry = skips === 0 ? node.entry : null
    if (entry !== null && !(isLoose && isIdiom(entry, lexicon))) return entry
  }
  return null
}

/** The phrases of the tree that start at this word, shortest first. */
function phrasesFrom(said: Said, at: number, tree: TreePlace, lexicon: Compiled): readonly Found[] {
  const opening = said.words[at]!.opens(tree)
  const next = said.words[at + 1]
  if (opening.bits === 0 || next === undefined || next?.goesOn(opening.bits) === false) return opening.found
  return longerFrom(said, at, opening, lexicon)
}

function longerFrom(
  { tokens, words }: Said,
  at: number,
  opening: Opening,
  lexicon: Compiled,
): readonly Found[] {
  let { found, threads } = opening
  for (let i = at + 1; threads.length > 0 && i < tokens.length; i++) {
    const word = words[i]
    if (word == null) {
      if (isHyphen(tokens, i)) continue
      break
    }
    threads = advance(threads, word)
    const entry = endingOf(threads, lexicon)
    if (entry !== null) found = [...found, { entry, length: i + 1 - at }]
  }
  return found
}

function isHyphen(tokens: readonly Token[], i: number): boolean {
  const mark = tokens[i]!
  return "-'/".includes(mark.text) && tokens[i - 1]?.end === mark.start && tokens[i + 1]?.start === mark.end
}

/** Cuts a message into units, the longest known phrase of the tree first. */
export function unitsOf(said: Said, lexicon: Compiled, tree: typeof MAIN | typeof NET): Unit[] {
  const { tokens } = said
  const units: Unit[] = []
  let gap: number = BREAK.none
  let afterQuestion = false
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i]!
    if (token.kind === 'mark') {
      gap = Math.max(gap, breakOf(token, tokens[i - 1], tokens[i + 1]))
      afterQuestion ||= token.text === '?'
      i += 1
      continue
    }
    const found = phrasesFrom(said, i, tree, lexicon).at(-1)
    const next = i + (found?.length ?? 1)
    const entry = found?.entry ?? (token.kind === 'number' ? lexicon.number : lexicon.unknown)
    // "fine yesterday and now ..." begins anew as a comma would
    const least = entry.has(lexicon.cue.contrast)
      ? BREAK.contrast
      : entry.has(lexicon.cue['my-turn'])
        ? BREAK.comma
        : BREAK.none
    units.push({
      entry,
      start: token.start,
      end: tokens[next - 1]!.end,
      value: found === undefined && token.kind === 'number' ? (token.value ?? null) : null,
      gap: Math.max(gap, least),
      afterQuestion,
    })
    gap = BREAK.none
    afterQuestion = false
    i = next
  }
  return units
}

/** A circumstance with the unit in which it begins. */
export interface Aside {
  readonly entry: Entry
  readonly unit: number
}

/** All circumstances told. They may overlap, but no "gone" is told within "gone numb", no "now" within "fine now". */
export function asidesOf(said: Said, units: readonly Unit[], lexicon: Compiled): Aside[] {
  const { tokens, words } = said
  const { shield, over, ongoing, gone, ended, old, past, always, shielded } = lexicon.cue
  const ends = [gone, ended, old, past]
  const asides: Aside[] = []
  let unit = 0
  let shieldedTo = 0
  let overTo = 0
  for (let i = 0; i < tokens.length; ) {
    while (unit + 1 < units.length && units[unit + 1]!.start <= tokens[i]!.start) unit += 1
    const found = words[i] == null ? NONE : phrasesFrom(said, i, ASIDES, lexicon)
    const longest = found.at(-1)
    if (longest === undefined) {
      i += 1
      continue
    }
    const next = i + longest.length
    if (longest.entry.has(shield)) shieldedTo = next
    // "two years ago, fine ever since" tells of nothing that goes on
    if (longest.entry.has(over)) overTo = next
    for (const { entry } of found)
      if (i < overTo && entry.has(ongoing)) continue
      else if (i >= shieldedTo || !(entry.hasAny(ends) || entry.has(always) || entry.has(shielded)))
        asides.push({ entry, unit })
    const isEnd = i >= shieldedTo && longest.entry.hasAny(ends)
    i = isEnd ? next : i + 1
  }
  return asides
}
