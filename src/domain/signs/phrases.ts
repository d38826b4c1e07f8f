/** The classes that a word or phrase of the lexicon belongs to. */
export interface Entry {
  readonly classes: readonly number[]
  readonly has: Uint8Array
  /** A phrase that holds other words of the lexicon ("can't feel the paper"): one unit may fill two parts. */
  readonly isComposed: boolean
}

/** One node of the tree of phrases: the words that may follow, and the phrase that may end here. */
export interface Node {
  readonly next: Map<string, Node>
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
  const words = phrase.split(' ')
  const inner: number[] = []
  for (let start = 0; start < words.length; start++)
    for (let end = start + 1; end <= words.length && end - start < words.length; end++) {
      const part = phrases.get(words.slice(start, end).join(' '))
      if (part?.has(finding) || part?.has(place) || part?.has(topic))
        inner.push(...[...part].filter((id) => !own.has(id) && !kept.includes(id)))
    }
  return inner
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
