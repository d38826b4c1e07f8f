/** A word of ours; two that mean the same are no rivals. */
interface Target {
  readonly word: string
  readonly letters: number
  readonly meaning: string
}

/** Words that a slip is measured against, with what makes the search cheap. */
export interface SlipTargets {
  readonly words: readonly Target[]
  readonly neighbours: ReadonlySet<string>
}

const SHORT = 4
const LONG = 8
/** Nothing of ours is as long. */
const LONGEST = 24
const LIKELY_SLIP = 0.5

/** One bit a letter: words that share few letters need no closer look. */
export function lettersOf(word: string): number {
  let bits = 0
  for (let i = 0; i < word.length; i++) bits |= 1 << (word.charCodeAt(i) % 31)
  return bits
}

/** How many letters only one of two words has, at least. */
export function lettersApart(letters: number, others: number): number {
  let left = letters ^ others
  let count = 0
  while (left !== 0) {
    left &= left - 1
    count++
  }
  return count
}

function neighboursOn(rows: readonly string[]): Set<string> {
  const pairs = new Set<string>()
  const add = (a: string | undefined, b: string | undefined): void => {
    if (a && b) pairs.add(a + b).add(b + a)
  }
  rows.forEach((row, r) => {
    for (let i = 0; i < row.length; i++) {
      add(row[i], row[i + 1])
      add(row[i], rows[r + 1]?.[i])
      add(row[i], rows[r + 1]?.[i - 1])
    }
  })
  return pairs
}

export function slipTargets(words: ReadonlyMap<string, string>, keyboard: readonly string[]): SlipTargets {
  return {
    words: [...words].map(([word, meaning]) => ({ word, meaning, letters: lettersOf(word) })),
    neighbours: neighboursOn(keyboard),
  }
}

/** Edits allowed: one for words of 4 to 7 letters, two for longer, none for shorter. */
const allowance = (length: number): number => (length < SHORT ? 0 : length < LONG ? 1 : 2)

/**
 * Weighted optimal string alignment (Damerau 1964): swapped letters count one; a neighbouring key or a doubled
 * letter half. Row by row, given up once nothing can stay within `most`.
 */
export function distance(a: string, b: string, most: number, neighbours: ReadonlySet<string>): number {
  let two: number[] = []
  let one = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    let least = i
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1]
      const swap = same ? 0 : neighbours.has(a[i - 1]! + b[j - 1]!) ? LIKELY_SLIP : 1
      const drop = i > 1 && a[i - 1] === a[i - 2] ? LIKELY_SLIP : 1
      const miss = j > 1 && b[j - 1] === b[j - 2] ? LIKELY_SLIP : 1
      let cost = Math.min(one[j]! + drop, row[j - 1]! + miss, one[j - 1]! + swap)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, two[j - 2]! + 1)
      row.push(cost)
      if (cost < least) least = cost
    }
    if (least > most) return Number.POSITIVE_INFINITY
    two = one
    one = row
  }
  return one[b.length]!
}

function search(written: string, targets: SlipTargets): string | null {
  const letters = lettersOf(written)
  let best: Target | null = null
  let least = Number.POSITIVE_INFINITY
  let tied = false
  for (const target of targets.words) {
    const allowed = allowance(target.word.length)
    // half-price doubled letters may stretch the length by twice the allowance
    if (Math.abs(target.word.length - written.length) > 2 * allowed) continue
    if (lettersApart(target.letters, letters) > 2 * allowed) continue
    const cost = distance(written, target.word, allowed, targets.neighbours)
    if (cost > allowed || cost > least) continue
    tied = (cost === least && tied) || (cost === least && best?.meaning !== target.meaning)
    best = target
    least = cost
  }
  return tied ? null : (best?.word ?? null)
}

/** The word of ours that was most likely meant, or null: none near enough, or two as near. */
export function meant(written: string, targets: SlipTargets): string | null {
  return written.length < SHORT - 1 || written.length > LONGEST ? null : search(written, targets)
}
