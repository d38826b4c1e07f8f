import type { Token } from '../reply/tokens.ts'
import type { Compiled } from './compile.ts'
import { bitOf, numberOf } from './phrase-source.ts'
import type { Entry, Node } from './phrases.ts'
import type { WordRows } from './weights.ts'

/** The trees of phrases that a message is read with: one a layer, and the circumstances. */
export const TREES = ['main', 'net', 'asides'] as const
export type TreeName = (typeof TREES)[number]
/** Its place in `TREES`. */
export type TreePlace = 0 | 1 | 2
export const [MAIN, NET, ASIDES] = [0, 1, 2] as const

/** A phrase found, and how many tokens it takes. */
export interface Found {
  readonly entry: Entry
  readonly length: number
}

/** Where the reading of a phrase stands; a word of no weight may belong to the phrase or be passed over. */
export interface Thread {
  readonly node: Node
  readonly skips: number
  /** Whether a word was passed over anywhere. */
  readonly isLoose: boolean
}

/** What begins with a word in one of the trees. */
export interface Opening {
  /** The phrase that the word is by itself, if it is one. */
  readonly found: readonly Found[]
  /** The longer phrases that it may open. */
  readonly threads: readonly Thread[]
  /** The bits of the words that may come next in one of them. */
  readonly bits: number
}

const NO_STEPS: readonly Node[] = []
const NOTHING: Opening = { found: [], threads: [], bits: 0 }
/** Words kept at hand, so that memory stays bounded whatever people write. */
const REMEMBERED = 8192

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
  private readonly openings: (Opening | null)[] = TREES.map(() => null)
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

  opens(tree: TreePlace): Opening {
    this.openings[tree] ??= this.openingIn(this.lexicon.roots[TREES[tree]])
    return this.openings[tree]
  }

  private openingIn(root: Node): Opening {
    const steps = this.stepsFrom(root)
    const ending = steps.find(({ entry }) => entry !== null)
    if (steps.length === 0) return NOTHING
    const open = steps.filter(({ next }) => next.size > 0)
    return {
      found: ending === undefined ? [] : [{ entry: ending.entry!, length: 1 }],
      threads: open.map((node) => ({ node, skips: 0, isLoose: false })),
      bits: open.reduce((bits, node) => bits | node.bits, 0),
    }
  }
}

/** The words among the tokens, each in its place; null for a mark. */
export function wordsOf(tokens: readonly Token[], lexicon: Compiled): (Word | null)[] {
  return tokens.map(({ kind, text }) => (kind === 'mark' ? null : wordOf(text, lexicon)))
}

function wordOf(written: string, lexicon: Compiled): Word {
  const { met } = lexicon
  const known = met.get(written)
  if (known !== undefined) return known
  if (met.size >= REMEMBERED) met.clear()
  const word = new Word(written, lexicon)
  met.set(written, word)
  return word
}
