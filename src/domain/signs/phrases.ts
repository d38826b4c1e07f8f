/** The classes that a word or phrase of the lexicon belongs to. */
export interface Entry {
  readonly classes: readonly number[]
  readonly has: Uint8Array
  /** A phrase that holds other words of the lexicon ("can't feel the paper"): one unit may fill two parts. */
  readonly isComposed: boolean
}

/** One node of the tree of phrases: the words that may follow, and the phrase that may end here. */
export interface Node {
  next: Map<string, Node>
  entry: Entry | null
}

export interface ClassIds {
  of(name: string): number
}

/** Which classes make a phrase inherit from the words within it. */
export interface Inheritance {
  readonly finding: number
  readonly place: number
  readonly topic: number
  /** Classes that stay with the inner word. */
  readonly kept: readonly number[]
}

type Phrases = Map<string, Set<number>>

/** "(a/b) c" -> "a c", "b c". */
export function spread(phrase: string): string[] {
  const open = phrase.indexOf('(')
  if (open < 0) return [phrase.replace(/\s+/g, ' ').trim()]
  const close = phrase.indexOf(')', open)
  const choices = phrase.slice(open + 1, close).split('/')
  return choices.flatMap((choice) => spread(phrase.slice(0, open) + choice + phrase.slice(close + 1)))
}

/** Every phrase with the ids of its classes and of the groups that these belong to. */
export function phrasesByClass(
  words: Readonly<Record<string, readonly string[]>>,
  groups: Readonly<Record<string, readonly string[]>>,
  ids: ClassIds,
): Phrases {
  const found: Phrases = new Map()
  for (const [name, list] of Object.entries(words)) {
    const mine = [name, ...Object.keys(groups).filter((group) => groups[group]!.includes(name))].map((one) =>
      ids.of(one),
    )
    for (const phrase of list.flatMap(spread)) {
      const all = found.get(phrase) ?? new Set<number>()
      for (const id of mine) all.add(id)
      found.set(phrase, all)
    }
  }
  return found
}

/** What the words inside a finding mean: "can't feel the paper" is numbness and tells where. */
function inherited(phrase: string, phrases: Phrases, { finding, place, topic, kept }: Inheritance): number[] {
  const own = phrases.get(phrase)!
  if (!phrase.includes(' ') || !own.has(finding) || own.has(place) || own.has(topic)) return []
  const starts = [0]
  for (let at = phrase.indexOf(' '); at >= 0; at = phrase.indexOf(' ', at + 1)) starts.push(at + 1)
  const inner: number[] = []
  for (const [k, start] of starts.entries())
    for (let end = k + 1; end <= starts.length && end - k < starts.length; end++) {
      const part = phrases.get(phrase.slice(start, end < starts.length ? starts[end]! - 1 : undefined))
      if (part === undefined || part === own) continue
      if (part.has(finding) || part.has(place) || part.has(topic))
        for (const id of part) if (!own.has(id) && !kept.includes(id)) inner.push(id)
    }
  return inner
}

/** Most nodes lead nowhere; they share one empty map. */
const LEAF = new Map<string, Node>()

function plant(root: Node, phrase: string, entry: Entry, replace: boolean): void {
  let node = root
  for (const word of phrase.split(' ')) {
    let next = node.next.get(word)
    if (!next) {
      next = { next: LEAF, entry: null }
      if (node.next === LEAF) node.next = new Map()
      node.next.set(word, next)
    }
    node = next
  }
  if (replace || node.entry === null) node.entry = entry
}

/** Phrases of the same classes share one entry. */
export function treeOf(phrases: Phrases, size: number, inheritance: Inheritance | null): Node {
  const root: Node = { next: new Map(), entry: null }
  const shared = new Map<string, Entry>()
  const entryFor = (phrase: string, own: ReadonlySet<number>): Entry => {
    const inner = inheritance === null ? [] : inherited(phrase, phrases, inheritance)
    const ids = [...new Set([...own, ...inner])]
    const key = `${inner.length > 0} ${ids.join(' ')}`
    const entry = shared.get(key) ?? entryOf(ids, size, inner.length > 0)
    shared.set(key, entry)
    return entry
  }
  for (const [phrase, own] of phrases) plant(root, phrase, entryFor(phrase, own), true)
  // people leave apostrophes out; where that makes another known word ("i'll"), the other word stands
  for (const [phrase, own] of phrases)
    if (phrase.includes("'")) plant(root, phrase.replaceAll("'", ''), entryFor(phrase, own), false)
  return root
}

export function entryOf(classes: readonly number[], size: number, isComposed = false): Entry {
  const has = new Uint8Array(size)
  for (const id of classes) has[id] = 1
  return { classes, has, isComposed }
}
