/** What may stand at one place of a phrase, each choice as the numbers of its words; a choice may be empty. */
export type Place = readonly (readonly number[])[]

/** A phrase with its choices, cut at its spaces: "can't (feel/sense) it" has three places. */
export interface Phrase {
  readonly places: readonly Place[]
  /** The classes that it belongs to, by itself and by their groups. */
  readonly classes: readonly number[]
  /** Written as people do who leave apostrophes out: it stands only where no other phrase does. */
  readonly isBare: boolean
}

export interface ClassIds {
  of(name: string): number
}

/** "swol(len/e)" -> "swollen", "swole". */
function spread(text: string): string[] {
  const open = text.indexOf('(')
  if (open < 0) return [text]
  const close = text.indexOf(')', open)
  const choices = text.slice(open + 1, close).split('/')
  return choices.flatMap((choice) => spread(text.slice(0, open) + choice + text.slice(close + 1)))
}

/** What stands between spaces, those within brackets aside. */
const PLACES = /(?:\([^)]*\)|[^ (])+/g

/** Cuts at the spaces outside brackets, so that choices are never multiplied with each other. */
const placesOf = (phrase: string): Place[] =>
  phrase.includes('(') ? phrase.match(PLACES)!.map(placeOf) : phrase.split(' ').map(aloneOf)

const placeOf = (text: string): Place => (text.includes('(') ? spread(text).map(wordsOf) : aloneOf(text))

/** The words of all phrases by their numbers, which are looked up without their letters being read. */
const written: string[] = []
const numbers = new Map<string, number>()
const NO_WORD = -1

/** The number of a word that stands in some phrase, -1 for any other. */
export const numberOf = (word: string): number => numbers.get(word) ?? NO_WORD

/** One of 32 bits for a word: a set of words that lacks the bit does not hold the word. */
export const bitOf = (number: number): number => (number === NO_WORD ? 0 : 1 << number)

function numbered(word: string): number {
  const known = numbers.get(word)
  if (known !== undefined) return known
  numbers.set(word, written.length)
  return written.push(word) - 1
}

function wordsOf(text: string): number[] {
  const words: number[] = []
  for (const word of text.split(' ')) if (word !== '') words.push(numbered(word))
  return words
}

/** Places of one word and no choice, by the word: most places are, and share them. */
const alone: Place[] = []
function aloneOf(word: string): Place {
  const number = numbered(word)
  alone[number] ??= [[number]]
  return alone[number]
}

const bare = (place: Place): Place =>
  place.map((choice) => choice.flatMap((word) => wordsOf(written[word]!.replaceAll("'", ''))))

/** All phrases of the classes, and after them those with an apostrophe once more without. */
export function phrasesOf(
  words: Readonly<Record<string, readonly string[]>>,
  groups: Readonly<Record<string, readonly string[]>>,
  ids: ClassIds,
): Phrase[] {
  const found: Phrase[] = []
  const bares: Phrase[] = []
  for (const [name, list] of Object.entries(words)) {
    const names = [name, ...Object.keys(groups).filter((group) => groups[group]!.includes(name))]
    const classes = names.map((one) => ids.of(one))
    for (const phrase of list) {
      const places = placesOf(phrase)
      found.push({ places, classes, isBare: false })
      if (phrase.includes("'")) bares.push({ places: places.map(bare), classes, isBare: true })
    }
  }
  return [...found, ...bares]
}

/** The single words that the phrases are made of. */
export function wordsIn(phrases: Iterable<Phrase>): string[] {
  const seen = new Uint8Array(written.length)
  const words: string[] = []
  for (const { places, isBare } of phrases)
    if (!isBare)
      for (const place of places)
        for (const choice of place)
          for (const word of choice) {
            if (seen[word] === 0) words.push(written[word]!)
            seen[word] = 1
          }
  return words
}
