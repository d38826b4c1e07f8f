import type { Token } from '../reply/tokens.ts'
import type { Compiled } from './compile.ts'
import { bitOf, numberOf } from './phrase-source.ts'
import type { Entry, Node } from './phrases.ts'
import type { WordRows } from './weights.ts'

/** The trees of phrases that a message is read with: one a layer, and the circumstances. */
const TREES = ['main', 'net', 'asides'] as const
export type TreeName = (typeof TREES)[number]
/** Its place in `TREES`. */
export type TreePlace = 0 | 1 | 2
export const [MAIN, NET, ASIDES] = [0, 1, 2] as const

/** Where the reading of a phrase stands; a word of no weight may belong to the phrase or be passed over. */
interface Thread {
  readonly node: Node
  readonly skips: number
  /** Whether a word was passed over anywhere. */
  readonly isLoose: boolean
}

/** "between (both of) my legs": words of no weight that a phrase may hold in a row. */
const MOST_SKIPS = 2
const MOST_THREADS = 4

/** "weak this week" is not the idiom "weak week": an idiom holds its own words and no others. */
const isIdiom = (entry: Entry, { cue, net }: Compiled): boolean =>
  entry.has(cue.idiom) || entry.has(net.idiom)

function endingOf(threads: readonly Thread[], lexicon: Compiled): Entry | null {
  for (const { node, skips, isLoose } of threads) {
    const entry = skips === 0 ? node.entry : null
    if (entry !== null && !(isLoose && isIdiom(entry, lexicon))) return entry
  }
  return null
}

/** The phrases of a tree that may go on after the words read so far; what follows a word is found out once. */
export class Path {
  /** The phrase that ends here. */
  readonly entry: Entry | null
  private readonly threads: readonly Thread[]
  /** The bits of the words that may come next in one of the phrases. */
  private readonly bits: number
  private after: Map<Word, Path> | null = null

  constructor(
    private readonly lexicon: Compiled,
    ending: readonly Thread[],
    threads = ending,
  ) {
    this.entry = endingOf(ending, lexicon)
    this.threads = threads
    this.bits = threads.reduce((bits, { node }) => bits | node.bits, 0)
  }

  /** Where one word more leads; null where no phrase goes on with it. */
  next(word: Word): Path | null {
    if (this.bits === 0 || !word.goesOn(this.bits)) return null
    this.after ??= new Map()
    const known = this.after.get(word)
    if (known !== undefined) return known
    const path = new Path(this.lexicon, this.threadsWith(word))
    this.after.set(word, path)
    this.lexicon.met.paths += 1
    return path
  }

  private threadsWith(word: Word): Thread[] {
    const next: Thread[] = []
    for (const { node, skips, isLoose } of this.threads) {
      for (const step of word.stepsFrom(node)) next.push({ node: step, skips: 0, isLoose })
      if (word.isSkipped && skips < MOST_SKIPS) next.push({ node, skips: skips + 1, isLoose: true })
    }
    return next.slice(0, MOST_THREADS)
  }
}

const NO_STEPS: readonly Node[] = []
/** Words and paths kept at hand, so that memory stays bounded whatever people write. */
const REMEMBERED = 8192
const MOST_PATHS = 65_536

/** Words that were met before, as they were written, and how many paths lead on from them. */
export interface Met {
  readonly words: Map<string, Word>
  paths: number
}

/** All that a lexicon has to say of a word as somebody wrote it, found out once. */
export class Word {
  /** In its plain spelling. */
  readonly plain: string
  readonly isSkipped: boolean
  readonly isCourtesy: boolean
  /** Numbers of the word itself, of the word without its "'s" ("leg's gone dead"), and of what a slip stands for. */
  private readonly exact: number
  private readonly stem: number
  private readonly meant: number
  /** The bits of all three. */
  private readonly bits: number
  private readonly paths: (Path | null)[] = TREES.map(() => null)
  /** What the third layer has learned of it. */
  readonly learned: WordRows | null
  /** Whether no sign can be told with it, whether it names a zone in such a message, and whether it pairs zones. */
  readonly isPlain: boolean
  readonly isZone: boolean
  readonly isPair: boolean

  constructor(
    readonly written: string,
    private readonly lexicon: Compiled,
  ) {
    this.plain = lexicon.spellings.get(written) ?? written
    this.exact = numberOf(this.plain)
    this.stem = this.plain.endsWith("'s") ? numberOf(this.plain.slice(0, -2)) : -1
    this.meant = numberOf(lexicon.speller(this.plain) ?? '')
    this.bits = bitOf(this.exact) | bitOf(this.stem) | bitOf(this.meant)
    this.learned = lexicon.weights?.word(this.plain) ?? null
    this.isSkipped = lexicon.skipped.has(this.plain)
    this.isCourtesy = lexicon.courtesies.has(written)
    const { words, zones, pairs } = lexicon.plain
    this.isZone = zones.has(written)
    this.isPlain = words.has(written) || this.isZone
    this.isPair = pairs.has(written)
  }

  /** Whether it may belong to a phrase that goes on with a word of these bits. */
  goesOn(bits: number): boolean {
    return this.isSkipped || (this.bits & bits) !== 0
  }

  /** The word itself and the word without its "'s"; where neither is known, what a slip stands for. */
  stepsFrom(node: Node): readonly Node[] {
    if ((node.bits & this.bits) === 0) return NO_STEPS
    const { next } = node
    const exact = next.get(this.exact)
    const stem = this.stem < 0 ? undefined : next.get(this.stem)
    if (exact !== undefined) return stem === undefined ? [exact] : [exact, stem]
    const step = stem ?? next.get(this.meant)
    return step === undefined ? NO_STEPS : [step]
  }

  /** The phrases of a tree that it opens. */
  opens(tree: TreePlace): Path {
    this.paths[tree] ??= this.pathIn(this.lexicon.roots[TREES[tree]])
    return this.paths[tree]
  }

  private pathIn(root: Node): Path {
    const threads = this.stepsFrom(root).map((node) => ({ node, skips: 0, isLoose: false }))
    return new Path(
      this.lexicon,
      threads,
      threads.filter(({ node }) => node.next.size > 0),
    )
  }
}

/** The words among the tokens, each in its place; null for a mark. */
export function wordsOf(tokens: readonly Token[], lexicon: Compiled): (Word | null)[] {
  return tokens.map(({ kind, text }) => (kind === 'mark' ? null : wordOf(text, lexicon)))
}

function wordOf(written: string, lexicon: Compiled): Word {
  const { met } = lexicon
  const known = met.words.get(written)
  if (known !== undefined) return known
  if (met.words.size >= REMEMBERED || met.paths >= MOST_PATHS) {
    met.words.clear()
    met.paths = 0
  }
  const word = new Word(written, lexicon)
  met.words.set(written, word)
  return word
}
