import { MOST_CHARACTERS } from '../reply/fold.ts'
import type { Token } from '../reply/tokens.ts'
import type { Compiled } from './compile.ts'
import type { Entry } from './phrases.ts'
import { ASIDES, type MAIN, type NET, type Path, type TreePlace, type Word } from './words.ts'

/** What parts two units, in rising strength. */
export const BREAK = { none: 0, comma: 1, contrast: 2, sentence: 3 } as const

/** Units that are looked at around a word, so that the cost stays in line with the length. */
export const FARTHEST = 12

/** For each unit a 0, however long the message: most messages deny nothing, suppose nothing and speak of nobody else. */
export const NOWHERE = new Uint8Array(3 * MOST_CHARACTERS)

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

/** A message cut into tokens, and the words among them as its lexicon knows them. */
export interface Said {
  readonly tokens: readonly Token[]
  readonly words: readonly (Word | null)[]
}

/** A phrase found, and how many tokens it takes. */
interface Found {
  readonly entry: Entry
  readonly length: number
}

const NONE: readonly Found[] = []

/** The token behind, hyphens between the words of a phrase left out. */
function following({ tokens, words }: Said, at: number): number {
  let next = at + 1
  while (words[next] === null && isHyphen(tokens, next)) next += 1
  return next
}

/** Where the path leads with the word at this place, if one stands there. */
const onward = (path: Path, { words }: Said, at: number): Path | null =>
  words[at] == null ? null : path.next(words[at]!)

/** The longest phrase of the tree that starts at this word. */
function longestFrom(said: Said, from: number, tree: TreePlace): Found | null {
  let found: Entry | null = null
  let length = 0
  let at = from
  for (let path: Path | null = said.words[at]!.opens(tree); path !== null; path = onward(path, said, at)) {
    if (path.entry !== null) {
      found = path.entry
      length = at + 1 - from
    }
    at = following(said, at)
  }
  return found === null ? null : { entry: found, length }
}

/** All phrases of the tree that start at this word, shortest first. */
function phrasesFrom(said: Said, from: number, tree: TreePlace): readonly Found[] {
  let found: Found[] | null = null
  let at = from
  for (let path: Path | null = said.words[at]!.opens(tree); path !== null; path = onward(path, said, at)) {
    if (path.entry !== null) {
      found ??= []
      found.push({ entry: path.entry, length: at + 1 - from })
    }
    at = following(said, at)
  }
  return found ?? NONE
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
    const found = longestFrom(said, i, tree)
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
      value: found === null && token.kind === 'number' ? (token.value ?? null) : null,
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
    const found = words[i] == null ? NONE : phrasesFrom(said, i, ASIDES)
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
