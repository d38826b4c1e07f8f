import type { SignId } from './catalogue.ts'
import {
  CUES,
  type Cue,
  type Lexicon,
  type LexiconSource,
  lexiconShape,
  type Pattern,
} from './lexicon/shape.ts'
import { type Speller, spellerOf } from './spelling.ts'

/** The classes that a word or phrase of the lexicon belongs to. */
export interface Entry {
  readonly classes: readonly number[]
  readonly has: Uint8Array
}

/** One node of the tree of phrases: the words that may follow, and the phrase that may end here. */
export interface Node {
  readonly next: Map<string, Node>
  entry: Entry | null
}

/** A pattern in one fixed order of its parts; each part is a list of classes. */
export interface Rule {
  readonly sign: SignId
  readonly parts: readonly (readonly number[])[]
  readonly within: number
  readonly across: number
  readonly unsure: boolean
  readonly alone: boolean
  readonly denialOnly: boolean
  readonly isNegative: boolean
  readonly isDenial: boolean
  readonly sure: number | null
  readonly needs: number | null
  readonly unless: number | null
  readonly anywhere: number | null
}

/** A lexicon made ready once, so that screening a message only looks things up. */
export interface Compiled {
  readonly version: string
  readonly root: Node
  /** The tree of circumstances. */
  readonly asides: Node
  /** How many classes there are. */
  readonly size: number
  readonly skipped: ReadonlySet<string>
  readonly spellings: ReadonlyMap<string, string>
  readonly cue: Readonly<Record<Cue, number>>
  /** Rules by the class that opens them. */
  readonly opening: readonly (readonly Rule[])[]
  readonly subjects: readonly (SignId | undefined)[]
  readonly number: Entry
  readonly unknown: Entry
  readonly speller: Speller
}

const MOST_BETWEEN = 3
const BREAKS = { none: 0, comma: 1, sentence: 3 } as const

/** "(a/b) c" -> "a c", "b c". */
export function spread(phrase: string): string[] {
  const open = phrase.indexOf('(')
  if (open < 0) return [phrase.replace(/\s+/g, ' ').trim()]
  const close = phrase.indexOf(')', open)
  const choices = phrase.slice(open + 1, close).split('/')
  return choices.flatMap((choice) => spread(phrase.slice(0, open) + choice + phrase.slice(close + 1)))
}

class Classes {
  readonly ids = new Map<string, number>()
  constructor(names: Iterable<string>) {
    for (const name of names) if (!this.ids.has(name)) this.ids.set(name, this.ids.size)
  }
  of(name: string): number {
    const id = this.ids.get(name)
    if (id === undefined) throw new Error(`The lexicon names a class that it does not have: ${name}`)
    return id
  }
}

function classesByPhrase(
  words: Lexicon['words'],
  lexicon: Lexicon,
  classes: Classes,
): Map<string, Set<number>> {
  const found = new Map<string, Set<number>>()
  for (const [name, list] of Object.entries(words)) {
    const groups = Object.entries(lexicon.groups).filter(([, members]) => members.includes(name))
    for (const phrase of list.flatMap(spread)) {
      const mine = found.get(phrase) ?? new Set<number>()
      mine.add(classes.of(name))
      for (const [group] of groups) mine.add(classes.of(group))
      found.set(phrase, mine)
    }
  }
  return found
}

function plant(root: Node, phrase: string, entry: Entry, replace: boolean): void {
  let node = root
  for (const word of phrase.split(' ')) {
    let next = node.next.get(word)
    if (!next) {
      next = { next: new Map(), entry: null }
      node.next.set(word, next)
    }
    node = next
  }
  if (replace || node.entry === null) node.entry = entry
}

function treeOf(phrases: Map<string, Set<number>>, size: number): Node {
  const root: Node = { next: new Map(), entry: null }
  const shared = new Map<string, Entry>()
  const entryFor = (ids: ReadonlySet<number>): Entry => {
    const key = [...ids].join(' ')
    const entry = shared.get(key) ?? entryOf([...ids], size)
    shared.set(key, entry)
    return entry
  }
  for (const [phrase, ids] of phrases) plant(root, phrase, entryFor(ids), true)
  // people leave apostrophes out; where that makes another known word ("i'll"), the other word stands
  for (const [phrase, ids] of phrases)
    if (phrase.includes("'")) plant(root, phrase.replaceAll("'", ''), entryFor(ids), false)
  return root
}

function entryOf(classes: readonly number[], size: number): Entry {
  const has = new Uint8Array(size)
  for (const id of classes) has[id] = 1
  return { classes, has }
}

function orders<T>(items: readonly T[]): T[][] {
  if (items.length < 2) return [[...items]]
  return items.flatMap((item, i) =>
    orders([...items.slice(0, i), ...items.slice(i + 1)]).map((rest) => [item, ...rest]),
  )
}

function rulesOf([sign, text, options]: Pattern, classes: Classes): Rule[] {
  const idOf = (name: string | undefined): number | null => (name === undefined ? null : classes.of(name))
  const anyOrder = text.includes('&')
  const parts = text
    .split(anyOrder ? /\s*&\s*/ : /\s+/)
    .map((part) => part.split('|').map((name) => classes.of(name)))
  return (anyOrder ? orders(parts) : [parts]).map((inOrder) => ({
    sign,
    parts: inOrder,
    within: options.within ?? MOST_BETWEEN,
    across: BREAKS[options.across ?? 'none'],
    unsure: options.unsure ?? false,
    alone: options.alone ?? false,
    denialOnly: options.denialOnly ?? false,
    isNegative: options.isNegative ?? false,
    isDenial: options.isDenial ?? false,
    sure: idOf(options.sure),
    needs: idOf(options.needs),
    unless: idOf(options.unless),
    anywhere: idOf(options.anywhere),
  }))
}

const wordsOf = (phrases: readonly string[]): string[] => phrases.flatMap((phrase) => phrase.split(' '))

/** Checks a language's data and makes it ready; throws where the data contradict themselves. */
export function compile(source: LexiconSource): Compiled {
  const lexicon = lexiconShape.parse(source)
  const { words, circumstances, groups } = lexicon
  const classes = new Classes(
    [CUES, ...[words, circumstances, groups].map((each) => Object.keys(each))].flat(),
  )
  const size = classes.ids.size
  const opening: Rule[][] = Array.from({ length: size }, () => [])
  for (const rule of lexicon.patterns.flatMap((pattern) => rulesOf(pattern, classes)))
    for (const id of rule.parts[0]!) opening[id]!.push(rule)
  const subjects: (SignId | undefined)[] = Array.from({ length: size }, () => undefined)
  for (const [name, sign] of Object.entries(lexicon.subjects)) subjects[classes.of(name)] = sign
  const phrases = classesByPhrase(words, lexicon, classes)
  const asides = classesByPhrase(circumstances, lexicon, classes)
  const cue = Object.fromEntries(CUES.map((name) => [name, classes.of(name)])) as Record<Cue, number>
  // only words of the body and of what befalls it are worth a guess
  const guessed = [cue.place, cue.topic, cue.finding]
  const spellable = [...phrases]
    .filter(([, ids]) => guessed.some((id) => ids.has(id)))
    .map(([phrase]) => phrase)
  return {
    version: lexicon.version,
    root: treeOf(phrases, size),
    asides: treeOf(asides, size),
    size,
    skipped: new Set(lexicon.skipped),
    spellings: new Map(Object.entries(lexicon.spellings)),
    cue,
    opening,
    subjects,
    number: entryOf([], size),
    unknown: entryOf([], size),
    speller: spellerOf(wordsOf(spellable), [
      ...wordsOf([...phrases.keys(), ...asides.keys()]),
      ...lexicon.ordinary,
      ...lexicon.skipped,
    ]),
  }
}
