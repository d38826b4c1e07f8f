/** Finds the lexicon word that a typing slip stands for, or null. */
export type Speller = (word: string) => string | null

/** Shorter words are never bent: too many others lie one slip away. */
const SHORTEST = 4
/** From this length on two slips are forgiven. */
const LONG = 8
/** Nobody types a word of the lexicon this long; longer strings are not looked at. */
const LONGEST = 18

const slipsAllowed = (word: string): number => (word.length < SHORTEST ? 0 : word.length < LONG ? 1 : 2)

/** "nuuumb" -> "numb", "tingliing" -> "tingling": repeats are the cheapest slip. */
const squeeze = (word: string): string => word.replace(/(.)\1+/g, '$1')

function withoutOne(word: string): string[] {
  return Array.from({ length: word.length }, (_, i) => word.slice(0, i) + word.slice(i + 1))
}

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
export function slipsBetween(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1
  let before: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let best = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, before[j - 2]! + 1)
      row.push(best)
    }
    before = last
    last = row
  }
  return last[b.length]!
}

/** People rarely miss the first letter of a short word; a swap of the first two is common. */
function startsAlike(typed: string, word: string): boolean {
  return typed[0] === word[0] || (typed[0] === word[1] && typed[1] === word[0])
}

/** Builds the look-up over forms with letters left out, so that one word costs a bounded number of look-ups. */
export function spellerOf(lexicon: ReadonlySet<string>, ordinary: ReadonlySet<string>): Speller {
  const known = new Set([...lexicon, ...ordinary])
  const words = [...lexicon].filter((word) => slipsAllowed(word) > 0 && /^\p{L}+$/u.test(word))
  const forms = new Map<string, string[]>()
  const squeezed = new Map<string, string>()
  for (const word of words) {
    if (!squeezed.has(squeeze(word))) squeezed.set(squeeze(word), word)
    for (const form of shortened(word, slipsAllowed(word))) {
      const of = forms.get(form)
      if (of) of.push(word)
      else forms.set(form, [word])
    }
  }
  return (typed) => {
    if (known.has(typed) || typed.length < SHORTEST - 1 || typed.length > LONGEST) return null
    const repeated = squeezed.get(squeeze(typed))
    if (repeated !== undefined) return repeated
    return nearest(typed, forms)
  }
}

function nearest(typed: string, forms: ReadonlyMap<string, readonly string[]>): string | null {
  let best: string | null = null
  let fewest = 3
  for (const form of shortened(typed, slipsAllowed(typed) || 1))
    for (const word of forms.get(form) ?? []) {
      const allowed = Math.min(slipsAllowed(word), fewest - 1)
      if (allowed < 1 || !startsAlike(typed, word)) continue
      const slips = slipsBetween(typed, word, allowed)
      if (slips > allowed) continue
      best = word
      fewest = slips
    }
  return best
}
