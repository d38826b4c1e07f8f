import type { Token } from '../reply/tokens.ts'
import type { Compiled, Entry, Node } from './compile.ts'

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

/** The longest phrase of the tree that starts at this token, and the token after it. */
function longest(
  tokens: readonly Token[],
  at: number,
  lexicon: Compiled,
): { entry: Entry; next: number } | null {
  let node: Node | undefined = lexicon.root
  let best: { entry: Entry; next: number } | null = null
  let skips = 0
  for (let i = at; i < tokens.length; i++) {
    const token = tokens[i]!
    if (token.kind === 'mark') {
      if (isHyphen(tokens, i) && i > at) continue
      break
    }
    const word = token.text
    const step: Node | undefined = node.next.get(word) ?? corrected(node, word, lexicon)
    if (step === undefined) {
      if (i === at || skips === 2 || !lexicon.skipped.has(word)) break
      skips += 1
      continue
    }
    skips = 0
    node = step
    if (node.entry !== null) best = { entry: node.entry, next: i + 1 }
  }
  return best
}

function corrected(node: Node, word: string, lexicon: Compiled): Node | undefined {
  const meant = lexicon.speller(word)
  return meant === null ? undefined : node.next.get(meant)
}

function isHyphen(tokens: readonly Token[], i: number): boolean {
  const mark = tokens[i]!
  return "-'/".includes(mark.text) && tokens[i - 1]?.end === mark.start && tokens[i + 1]?.start === mark.end
}

/** Cuts a message into units, the longest known phrase first. */
export function unitsOf(tokens: readonly Token[], lexicon: Compiled): Unit[] {
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
    const found = longest(tokens, i, lexicon)
    const next = found?.next ?? i + 1
    const entry = found?.entry ?? (token.kind === 'number' ? lexicon.number : lexicon.unknown)
    const isContrast = entry.has[lexicon.cue.contrast] === 1
    units.push({
      entry,
      start: token.start,
      end: tokens[next - 1]!.end,
      value: found === null && token.kind === 'number' ? (token.value ?? null) : null,
      gap: isContrast ? Math.max(gap, BREAK.contrast) : gap,
      afterQuestion,
    })
    gap = BREAK.none
    afterQuestion = false
    i = next
  }
  return units
}
