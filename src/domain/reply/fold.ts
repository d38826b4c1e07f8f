/** Characters of a message that are read; what comes after is kept but not understood. */
export const MOST_CHARACTERS = 2000

/** A message in one plain spelling, with the way back to the very words. */
export interface Folded {
  /** Lower case, no accents, plain digits, straight quotes; newlines kept, other controls are spaces. */
  readonly text: string
  readonly original: string
  /** The client's own words behind the folded positions start (included) to end (excluded). */
  quote(start: number, end: number): string
}

const KEYCAP = 0x20e3
const PLAIN_ASCII = /^[\n -~]*$/
const FRACTION = /^\p{No}$/u
const DROPPED = /[\p{M}\p{Cf}\u115f\u1160\u3164\uffa0]/gu
const UNREADABLE = /[\p{Cc}\p{Cs}\p{Z}]/gu
const DECIMAL_DIGIT = /^\p{Nd}$/u

/** What compatibility forms leave alone but a reader takes for the same thing. */
const LOOKS_LIKE: Readonly<Record<string, string>> = {
  '\n': '\n',
  '\r': '\n',
  ẞ: 'ss',
  '\u2028': '\n',
  '\u2029': '\n',
  '\u0085': '\n',
  '🔟': '10',
  ß: 'ss',
  ø: 'o',
  Ø: 'o',
  æ: 'ae',
  Æ: 'ae',
  œ: 'oe',
  Œ: 'oe',
  ł: 'l',
  Ł: 'l',
  đ: 'd',
  Đ: 'd',
  ı: 'i',
  '⓿': '0',
  // "nº 2" is no "no"
  º: '°',
}
const SAME_AS: readonly (readonly [string, string])[] = [
  ["'", '‘’‚‛′ʼʹ´`＇'],
  ['"', '“”„‟″«»'],
  ['-', '‐‑‒–—―−﹘﹣－'],
  ['/', '⁄∕÷'],
  // letters of other alphabets and small capitals that pass for Latin ones
  ['a', 'ᴀаАαΑ'],
  ['b', 'ʙВΒ'],
  ['c', 'ᴄсС'],
  ['d', 'ᴅ'],
  ['e', 'ᴇеЕΕ'],
  ['f', 'ꜰ'],
  ['g', 'ɢ'],
  ['h', 'ʜНΗ'],
  ['i', 'ɪіІΙ'],
  ['j', 'ᴊ'],
  ['k', 'ᴋкКΚ'],
  ['l', 'ʟ'],
  ['m', 'ᴍМΜ'],
  ['n', 'ɴΝ'],
  ['o', 'ᴏоОοΟ'],
  ['p', 'ᴘрРρΡ'],
  ['r', 'ʀ'],
  ['s', 'ꜱѕЅ'],
  ['t', 'ᴛтТΤ'],
  ['u', 'ᴜ'],
  ['v', 'ᴠ'],
  ['w', 'ᴡ'],
  ['x', 'хХΧ'],
  ['y', 'ʏуУΥ'],
  ['z', 'ᴢ'],
]
const REPLACED = new Map([
  ...Object.entries(LOOKS_LIKE),
  ...SAME_AS.flatMap(([plain, others]) => [...others].map((other): [string, string] => [other, plain])),
])

/** Digits and capitals in a dark circle or square, which compatibility forms leave as they are. */
function darkShape(code: number): string | null {
  for (const one of [0x2776, 0x2780, 0x278a])
    if (code >= one && code < one + 10) return String(code - one + 1)
  for (const a of [0x1f150, 0x1f170])
    if (code >= a && code < a + 26) return String.fromCharCode(97 + code - a)
  return null
}

/** The value of a digit of any script: their tables start at a code ending in 0 or in 6. */
function plainDigit(code: number): string {
  const low = code & 0xf
  return String(DECIMAL_DIGIT.test(String.fromCodePoint(code - low)) ? low : low - 6)
}

function foldCharacter(character: string): string {
  const code = character.codePointAt(0) ?? 0
  const fixed = REPLACED.get(character) ?? darkShape(code)
  if (fixed !== null) return fixed
  const apart = character.normalize('NFKD')
  // ½ stays one sign: written out, "2½" would turn into "21/2"
  if (apart.includes('⁄') && FRACTION.test(character)) return character
  const bare = apart.replace(DROPPED, '').replace(UNREADABLE, ' ').toLowerCase()
  if (bare !== ' ' && DECIMAL_DIGIT.test(bare) && bare.charCodeAt(0) > 127)
    return plainDigit(bare.codePointAt(0)!)
  return bare
}

/** Folding is a pure function of the character, so the answers seen before are kept, up to a bound. */
const REMEMBERED = 4096
const seen = new Map<string, string>()
function foldOnce(character: string): string {
  const known = seen.get(character)
  if (known !== undefined) return known
  const folded = foldCharacter(character)
  if (seen.size < REMEMBERED) seen.set(character, folded)
  return folded
}

/** Two keycaps in a row are two numbers, except 1 and 0, which is how ten is tapped. */
function keycapGap(soFar: string, rest: string): string {
  return soFar.endsWith('1') && rest.startsWith('0') ? '' : ' '
}

/** For each folded character the place in the original where it begins and ends; null where they are the same. */
type Places = { readonly from: readonly number[]; readonly to: readonly number[] } | null

class FoldedText implements Folded {
  readonly text: string
  readonly original: string
  readonly #places: Places

  constructor(text: string, original: string, places: Places) {
    this.text = text
    this.original = original
    this.#places = places
  }

  quote(start: number, end: number): string {
    if (this.#places === null) return this.original.slice(start, end)
    const { from, to } = this.#places
    if (start >= end) return ''
    return this.original.slice(from[start] ?? 0, to[Math.min(end, to.length) - 1] ?? 0)
  }
}

/** Reads at most 2,000 characters. Total: any string has a folded form. */
export function fold(original: string): Folded {
  if (original.length <= MOST_CHARACTERS && PLAIN_ASCII.test(original)) {
    const text = original.toLowerCase().replaceAll('`', "'")
    return new FoldedText(text, original, null)
  }
  let text = ''
  const from: number[] = []
  const to: number[] = []
  let at = 0
  let read = 0
  for (const character of original) {
    // a single sign can unfold into eighteen letters: what is read stays bounded all the same
    if (++read > MOST_CHARACTERS || text.length > 2 * MOST_CHARACTERS) break
    const next = at + character.length
    const isKeycap = character.codePointAt(0) === KEYCAP
    const plain = isKeycap ? keycapGap(text, original.slice(next, next + 1)) : foldOnce(character)
    for (let i = 0; i < plain.length; i++) {
      from.push(at)
      to.push(next)
    }
    text += plain
    at = next
  }
  return new FoldedText(text, original, { from, to })
}
