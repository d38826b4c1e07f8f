import { ClassSet } from './class-set.ts'
import { bitOf, type Phrase } from './phrase-source.ts'

/** The classes that a word or phrase of the lexicon belongs to. */
export class Entry extends ClassSet {
  constructor(
    readonly classes: readonly number[],
    size: number,
    /** A phrase that holds other words of the lexicon ("can't feel the paper"): one unit may fill two parts. */
    readonly isComposed = false,
  ) {
    super(size)
    for (const id of classes) this.add(id)
  }
}

/** One node of the tree of phrases: the words that may follow, and the phrase that may end here. */
export interface Node {
  /** By the number of the word. */
  readonly next: ReadonlyMap<number, Node>
  /** The bits of the words that may follow: most words may not, and need not be looked up to know it. */
  readonly bits: number
  readonly entry: Entry | null
}

/** What the words inside a phrase add to it; null: nothing. */
export type Inheritance = (
  own: ReadonlySet<number>,
  words: readonly number[],
  tree: Tree,
) => readonly number[]

/** A phrase of which the words up to here were read: what is left of a choice, then the places from `place` on. */
interface Reading {
  readonly phrase: Phrase
  readonly choice: readonly number[]
  /** How many words of the choice were read. */
  readonly read: number
  readonly place: number
}

/** Most nodes lead nowhere; they share one empty map. */
const LEAF: ReadonlyMap<number, Node> = new Map()

/** Spreads only the choices that are asked for: a phrase of many choices costs its length, not their product. */
class Branch implements Node {
  private follows: ReadonlyMap<number, Node> | null = null
  private followed: number | null = null
  private end: Entry | null | undefined = undefined

  constructor(
    private readonly tree: Tree,
    private readonly readings: readonly Reading[],
    private readonly words: readonly number[],
  ) {}

  get next(): ReadonlyMap<number, Node> {
    this.follows ??= this.branches()
    return this.follows
  }

  get bits(): number {
    if (this.followed === null) {
      this.followed = 0
      for (const word of this.next.keys()) this.followed |= bitOf(word)
    }
    return this.followed
  }

  get entry(): Entry | null {
    if (this.end === undefined) {
      const own = this.own()
      this.end = own === null ? null : this.tree.entryFor(own, this.words)
    }
    return this.end
  }

  /** The classes of the phrases that end here; what is written without apostrophes only where nothing else is. */
  own(): ReadonlySet<number> | null {
    const ending = this.readings.filter(isOver)
    const exact = ending.filter(({ phrase }) => !phrase.isBare)
    const all = exact.length > 0 ? exact : ending
    return all.length === 0 ? null : new Set(all.flatMap(({ phrase }) => phrase.classes))
  }

  private branches(): ReadonlyMap<number, Node> {
    const byWord = new Map<number, Reading[]>()
    for (const reading of this.readings) addSteps(byWord, reading)
    if (byWord.size === 0) return LEAF
    const next = new Map<number, Node>()
    for (const [word, list] of byWord) next.set(word, new Branch(this.tree, list, [...this.words, word]))
    return next
  }
}

/** The same place of the same phrase, reached by other empty choices; its readings stand next to each other. */
function isKnown(list: readonly Reading[], { phrase, choice, read, place }: Reading): boolean {
  const isAlike = (one: Reading): boolean =>
    one.place === place &&
    one.choice.length - one.read === choice.length - read &&
    one.choice.every((word, i) => i < one.read || word === choice[i - one.read + read])
  for (let i = list.length - 1; i >= 0 && list[i]!.phrase === phrase; i--) if (isAlike(list[i]!)) return true
  return false
}

const isEmpty = (choice: readonly number[]): boolean => choice.length === 0

/** Whether the phrase may end here: what is left can be empty. */
const isOver = ({ phrase, choice, read, place }: Reading): boolean =>
  read === choice.length && phrase.places.every((choices, at) => at < place || choices.some(isEmpty))

/** Adds the reading to the words with which it may go on. */
function addSteps(byWord: Map<number, Reading[]>, { phrase, choice, read, place }: Reading): void {
  if (read < choice.length) {
    addStep(byWord, { phrase, choice, read: read + 1, place })
    return
  }
  for (let at = place; at < phrase.places.length; at++) {
    const choices = phrase.places[at]!
    for (const one of choices)
      if (one.length > 0) addStep(byWord, { phrase, choice: one, read: 1, place: at + 1 })
    if (!choices.some(isEmpty)) break
  }
}

function addStep(byWord: Map<number, Reading[]>, after: Reading): void {
  const word = after.choice[after.read - 1]!
  const list = byWord.get(word)
  if (list === undefined) byWord.set(word, [after])
  else if (!isKnown(list, after)) list.push(after)
}

/** The phrases of a lexicon by their words. */
export class Tree {
  readonly root: Node
  private readonly shared = new Map<string, Entry>()

  constructor(
    phrases: readonly Phrase[],
    private readonly size: number,
    private readonly inheritance: Inheritance | null,
  ) {
    this.root = new Branch(
      this,
      phrases.map((phrase) => ({ phrase, choice: [], read: 0, place: 0 })),
      [],
    )
  }

  /** The classes of the phrase of just these words, without what it inherits. */
  ownOf(words: readonly number[]): ReadonlySet<number> | null {
    let node: Node | undefined = this.root
    for (const word of words) node = node?.next.get(word)
    return node === undefined ? null : (node as Branch).own()
  }

  /** Phrases of the same classes share one entry. */
  entryFor(own: ReadonlySet<number>, words: readonly number[]): Entry {
    const inner = this.inheritance?.(own, words, this) ?? []
    const ids = [...new Set([...own, ...inner])]
    const key = `${inner.length > 0} ${ids.join(' ')}`
    const entry = this.shared.get(key) ?? new Entry(ids, this.size, inner.length > 0)
    this.shared.set(key, entry)
    return entry
  }
}

/** The classes of every shorter phrase within the words. */
export function* within(words: readonly number[], tree: Tree): Iterable<ReadonlySet<number>> {
  for (let from = 0; from < words.length; from++)
    for (let to = from + 1; to <= words.length; to++) {
      if (to - from === words.length) continue
      const part = tree.ownOf(words.slice(from, to))
      if (part !== null) yield part
    }
}
