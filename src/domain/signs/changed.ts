import { fold } from '../reply/fold.ts'
import { type Token, tokenise } from '../reply/tokens.ts'
import { change as en } from './lexicon/en/change.ts'
import { change as es } from './lexicon/es/change.ts'

type ChangeWords = Readonly<
  Record<'changed' | 'fresh' | 'denied' | 'same' | 'others' | 'turns', readonly string[]>
>

/** One line a language; the first is read where a language is not known. */
const SOURCES: Readonly<Record<string, ChangeWords>> = { en, es }
/** A denial reaches so many words on: "not any worse". */
const DENIAL_REACH = 3

const wordsFor = (locale: string): ChangeWords => SOURCES[locale.toLowerCase().split(/[-_]/, 1)[0]!] ?? en

/**
 * Whether words about old, known trouble tell of a change in it ("bladder worse today"), as against the same as
 * ever ("bladder as always, pain worse"). When in doubt, yes: then it is asked. Total and linear in the length.
 * @param about the words that name the trouble, as the screen quotes them
 */
export function saysChanged(text: string, locale: string, about: readonly string[] = []): boolean {
  const words = wordsFor(locale)
  const named = new Set(about.flatMap((quote) => tokenise(fold(quote)).map((token) => token.text)))
  const clauses = clausesOf(text, words)
  const calledSame = clauses.some((clause) => includes(clause, named) && isSame(clause, words))
  return clauses.some(
    (clause) => tells(clause, words) && !(calledSame && !includes(clause, named) && isAside(clause, words)),
  )
}

const includes = (clause: readonly string[], some: ReadonlySet<string>): boolean =>
  clause.some((word) => some.has(word))
const isSame = (clause: readonly string[], { same }: ChangeWords): boolean =>
  clause.some((word) => same.includes(word))
const isAside = (clause: readonly string[], { others }: ChangeWords): boolean =>
  clause.some((word) => others.includes(word))

/** True where a word of change stands in the clause and nothing just before denies it. */
function tells(clause: readonly string[], words: ChangeWords): boolean {
  const cues = isSame(clause, words) ? words.changed : [...words.changed, ...words.fresh]
  return clause.some(
    (word, at) =>
      cues.includes(word) &&
      !clause.slice(Math.max(0, at - DENIAL_REACH), at).some((earlier) => words.denied.includes(earlier)),
  )
}

const ENDS = ['.', ',', ';', '!', '?', '\n', ':', '(', ')']

function clausesOf(text: string, words: ChangeWords): string[][] {
  const clauses: string[][] = [[]]
  for (const token of tokenise(fold(text))) {
    if (ends(token, words)) clauses.push([])
    else clauses.at(-1)!.push(token.text)
  }
  return clauses
}

const ends = (token: Token, { turns }: ChangeWords): boolean =>
  (token.kind === 'mark' && ENDS.includes(token.text)) ||
  (token.kind === 'word' && turns.includes(token.text))
