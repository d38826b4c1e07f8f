import { lettersApart, lettersOf } from '../reply/slips.ts'

/** Finds the lexicon word that a typing slip stands for, or null. */
export type Speller = (word: string) => string | null

/** Shorter words are never bent: too many others lie one slip away. */
const SHORTEST = 4
/** From this length on two slips are forgiven. */
const LONG = 8
/** Nobody types a word of the lexicon this long; longer strings are not looked at. */
const LONGEST = 18

/** A word of the lexicon that somebody may have meant. */
interface Target {
  readonly word: string
  readonly letters: number
  readonly slips: number
}

const slipsAllowed = (word: string): number => (word.length < SHORTEST ? 0 : word.length < LONG ? 1 : 2)

/** "nuuumb" -> "numb", "tingliing" -> "tingling": repeats are the cheapest slip. */
const squeeze = (word: string): string => word.replace(/(.)\1+/g, '$1')

function withoutOne(word: string): string[] {
  return Array.from({ length: word.length }, (_, i) => word.slice(0, i) + word.slice(i + 1))
}

/** The word with up to so many letters left out, the fewest first. */
function shortened(word: string, times: number): Set<string> {
  let last = [word]
  const all = new Set(last)
  for (let i = 0; i < times; i++) {
    last = last.flatMap(withoutOne)
    for (const form of last) all.add(form)
  }
  return all
}

/** Edits with neighbouring letters swapped as one (optimal string alignment); stops caring above `most`. */
function slipsBetween(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1
  let [before, last, row]: [number[], number[], number[]] = [[], [], []]
  for (let j = 0; j <= b.length; j++) last[j] = j
  for (let i = 1; i <= a.length; i++) {
    const typed = a[i - 1]
    let least = i
    row[0] = i
    for (let j = 1; j <= b.length; j++) {
      const same = typed === b[j - 1] ? 0 : 1
      let best = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same)
      if (i > 1 && j > 1 && typed === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, before[j - 2]! + 1)
      row[j] = best
      if (best < least) least = best
    }
    if (least > most) return most + 1
    ;[before, last, row] = [last, row, before]
  }
  return last[b.length]!
}

/** People rarely miss the first letter of a short word; a swap of the first two is common. */
function startsAlike(typed: string, word: string): boolean {
  return typed[0] === word[0] || (typed[0] === word[1] && typed[1] === word[0])
}

/** Words by each of their first two letters: what is typed is measured against few of them. */
function targetsOf(words: readonly string[]): ReadonlyMap<string, readonly Target[]> {
  const targets = new Map<string, Target[]>()
  for (const word of words) {
    const target = { word, letters: lettersOf(word), slips: slipsAllowed(word) }
    for (const letter of new Set(word.slice(0, 2))) {
      const list = targets.get(letter)
      if (list === undefined) targets.set(letter, [target])
      else list.push(target)
    }
  }
  return targets
}

/** @param known words that no slip is made of, those of the lexicon among them */
export function spellerOf(lexicon: readonly string[], known: ReadonlySet<string>): Speller {
  const words = lexicon.filter((word) => slipsAllowed(word) > 0 && /^\p{L}+$/u.test(word))
  const targets = targetsOf(words)
  const squeezed = new Map(words.map((word): [string, string] => [squeeze(word), word]).reverse())
  return (typed) => {
    if (known.has(typed) || typed.length < SHORTEST - 1 || typed.length > LONGEST) return null
    return squeezed.get(squeeze(typed)) ?? nearest(typed, targets.get(typed[0]!) ?? [])
  }
}

function nearest(typed: string, targets: readonly Target[]): string | null {
  const letters = lettersOf(typed)
  let best: string[] = []
  let fewest = 2
  for (const target of targets) {
    const most = Math.min(target.slips, fewest)
    if (lettersApart(target.letters, letters) > 2 * most || !startsAlike(typed, target.word)) continue
    const slips = slipsBetween(typed, target.word, most)
    if (slips > most) continue
    if (slips < fewest) best = []
    fewest = slips
    best.push(target.word)
  }
  return best.length < 2 ? (best[0] ?? null) : firstShared(typed, best)
}

/** Of words that lie as near: the one with which the typed word shares most of its letters in their order. */
function firstShared(typed: string, words: readonly string[]): string | null {
  for (const form of shortened(typed, slipsAllowed(typed) || 1))
    for (const word of words)
      if (word.length - form.length <= slipsAllowed(word) && holds(word, form)) return word
  return null
}

/** Whether the letters stand in the word in the same order, others between them or not. */
function holds(word: string, letters: string): boolean {
  let at = 0
  for (let i = 0; i < word.length && at < letters.length; i++) if (word[i] === letters[at]) at += 1
  return at === letters.length
}
