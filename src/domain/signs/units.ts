import type { Token } from '../reply/tokens.ts'
import type { Compiled } from './compile.ts'
import type { Entry, Node } from './phrases.ts'

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
const NONE: Found[] = []

interface Found {
  readonly entry: Entry
  readonly next: number
}

/** Where the reading of a phrase stands; a word of no weight may belong to the phrase or be passed over. */
interface Thread {
  readonly node: Node
  readonly skips: number
  /** Whether a word was passed over anywhere. */
  readonly isLoose: boolean
}

/** "weak this week" is not the idiom "weak week": an idiom holds its own words and no others. */
const isIdiom = ({ has }: Entry, { cue, net }: Compiled): boolean =>
  has[cue.idiom] === 1 || (net.idiom >= 0 && has[net.idiom] === 1)

const plainWord = ({ text }: Token, { spellings }: Compiled): string => spellings.get(text) ?? text

function advance(threads: readonly Thread[], word: string, lexicon: Compiled): Thread[] {
  const next: Thread[] = []
  for (const { node, skips, isLoose } of threads) {
    for (const step of stepsFrom(node, word, lexicon)) next.push({ node: step, skips: 0, isLoose })
    if (skips < MOST_SKIPS && lexicon.skipped.has(word)) next.push({ node, skips: skips + 1, isLoose: true })
  }
  return next.length > MOST_THREADS ? next.slice(0, MOST_THREADS) : next
}

/** The phrases of the tree that start at this token, shortest first. */
function phrasesFrom(tokens: readonly Token[], at: number, root: Node, lexicon: Compiled): readonly Found[] {
  const first = stepsFrom(root, plainWord(tokens[at]!, lexicon), lexicon)
  if (first.length === 0) return NONE
  let found: Found[] = NONE
  for (const { entry } of first) if (entry !== null && found === NONE) found = [{ entry, next: at + 1 }]
  let threads: readonly Thread[] = first
    .filter(({ next }) => next.size > 0)
    .map((node) => ({ node, skips: 0, isLoose: false }))
  for (let i = at + 1; i < tokens.length && threads.length > 0; i++) {
    const token = tokens[i]!
    if (token.kind === 'mark') {
      if (isHyphen(tokens, i)) continue
      break
    }
    threads = advance(threads, plainWord(token, lexicon), lexicon)
    const ending = threads.find(
      ({ node: { entry }, skips, isLoose }) =>
        skips === 0 && entry !== null && !(isLoose && isIdiom(entry, lexicon)),
    )
    if (ending === undefined) continue
    if (found === NONE) found = []
    found.push({ entry: ending.node.entry!, next: i + 1 })
  }
  return found
}

/** The word itself and, "leg's gone dead", the word without its "'s"; where neither is known, what a slip stands for. */
function stepsFrom(node: Node, word: string, lexicon: Compiled): Node[] {
  const steps: Node[] = []
  const exact = node.next.get(word)
  if (exact !== undefined) steps.push(exact)
  const stem = word.endsWith("'s") ? node.next.get(word.slice(0, -2)) : undefined
  if (stem !== undefined) steps.push(stem)
  if (steps.length > 0) return steps
  const meant = lexicon.speller(word)
  const step = meant === null ? undefined : node.next.get(meant)
  return step === undefined ? steps : [step]
}

function isHyphen(tokens: readonly Token[], i: number): boolean {
  const mark = tokens[i]!
  return "-'/".includes(mark.text) && tokens[i - 1]?.end === mark.start && tokens[i + 1]?.start === mark.end
}

/** Cuts a message into units, the longest known phrase of the tree first. */
export function unitsOf(tokens: readonly Token[], lexicon: Compiled, root: Node = lexicon.root): Unit[] {
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
    const found = phrasesFrom(tokens, i, root, lexicon).at(-1)
    const next = found?.next ?? i + 1
    const entry = found?.entry ?? (token.kind === 'number' ? lexicon.number : lexicon.unknown)
    const isContrast = entry.has[lexicon.cue.contrast] === 1
    units.push({
      entry,
      start: token.start,
      end: tokens[next - 1]!.end,
      value: found === undefined && token.kind === 'number' ? (token.value ?? null) : null,
      gap: isContrast ? Math.max(gap, BREAK.contrast) : gap,
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

const says = ({ has }: Entry, cues: readonly (keyof Compiled['cue'])[], { cue }: Compiled): boolean =>
  cues.some((name) => has[cue[name]] === 1)

/** All circumstances told. They may overlap, but no "gone" is told within "gone numb", no "now" within "fine now". */
export function asidesOf(tokens: readonly Token[], units: readonly Unit[], lexicon: Compiled): Aside[] {
  const asides: Aside[] = []
  let unit = 0
  let shieldedTo = 0
  let overTo = 0
  for (let i = 0; i < tokens.length; ) {
    while (unit + 1 < units.length && units[unit + 1]!.start <= tokens[i]!.start) unit += 1
    const found = tokens[i]!.kind === 'mark' ? NONE : phrasesFrom(tokens, i, lexicon.asides, lexicon)
    const longest = found.at(-1)
    if (longest !== undefined && says(longest.entry, ['shield'], lexicon)) shieldedTo = longest.next
    // "two years ago, fine ever since" tells of nothing that goes on
    if (longest !== undefined && says(longest.entry, ['over'], lexicon)) overTo = longest.next
    for (const { entry } of found)
      if (i < overTo && says(entry, ['ongoing'], lexicon)) continue
      else if (
        i >= shieldedTo ||
        !says(entry, ['gone', 'ended', 'old', 'past', 'always', 'shielded'], lexicon)
      )
        asides.push({ entry, unit })
    i =
      longest !== undefined &&
      i >= shieldedTo &&
      says(longest.entry, ['gone', 'ended', 'old', 'past'], lexicon)
        ? longest.next
        : i + 1
  }
  return asides
}
