import type { Folded } from './fold.ts'

/** A word (contractions stay one), a number or a mark (punctuation, emoji, newline); spaces are left out. */
export interface Token {
  readonly kind: 'word' | 'number' | 'mark'
  /** As folded; a mark repeated ("!!!") is one token holding it once. */
  readonly text: string
  /** Positions in the folded text, end excluded. */
  readonly start: number
  readonly end: number
  /** Of number tokens: decimals ("3.5", ".5") and fraction signs ("2½") included. */
  readonly value?: number
}

const LETTER = /^\p{L}$/u
/** Links, mentions and pictures of a chat carry digits that are nobody's pain. */
const NOT_WORDS = /<(?:a?:\w{1,40}:|@[!&]?|#|t:)\d{1,20}(?::\w)?>|https?:\/\/[^\s<>]{1,1990}/y

const isDigit = (code: number): boolean => code >= 48 && code <= 57
const isAsciiLetter = (code: number): boolean => code >= 97 && code <= 122

function isLetterAt(text: string, at: number): boolean {
  const code = text.charCodeAt(at)
  if (code < 128) return isAsciiLetter(code)
  return at < text.length && LETTER.test(String.fromCodePoint(text.codePointAt(at)!))
}

const isWide = (text: string, at: number): boolean => (text.codePointAt(at) ?? 0) > 0xffff

function wordEnd(text: string, start: number): number {
  let at = start
  while (at < text.length) {
    if (isLetterAt(text, at)) at += isWide(text, at) ? 2 : 1
    else if (text[at] === "'" && isLetterAt(text, at + 1)) at += 1
    else break
  }
  return at
}

function digitsEnd(text: string, start: number): number {
  let at = start
  while (isDigit(text.charCodeAt(at))) at++
  return at
}

/** The first of the fraction signs. */
const QUARTER = '¼'.charCodeAt(0)

/** The value of a fraction sign such as ½, or null. */
function fractionSignAt(text: string, at: number): number | null {
  if (!(text.charCodeAt(at) >= QUARTER)) return null
  const parts = text.charAt(at).normalize('NFKD').split('⁄')
  if (parts.length !== 2) return null
  const value = Number(parts[0]) / Number(parts[1])
  return Number.isFinite(value) ? value : null
}

function numberAt(text: string, start: number): Token {
  let end = digitsEnd(text, start)
  if (text[end] === '.' && isDigit(text.charCodeAt(end + 1))) end = digitsEnd(text, end + 1)
  let value = end > start ? Number(text.slice(start, end)) : 0
  const part = fractionSignAt(text, end)
  if (part !== null) {
    value += part
    end += 1
  }
  return { kind: 'number', text: text.slice(start, end), start, end, value }
}

const startsNumber = (text: string, at: number): boolean =>
  isDigit(text.charCodeAt(at)) ||
  (text[at] === '.' && isDigit(text.charCodeAt(at + 1)) && (at === 0 || text[at - 1] === ' ')) ||
  fractionSignAt(text, at) !== null

function markAt(text: string, start: number): Token {
  const width = isWide(text, start) ? 2 : 1
  const mark = text.slice(start, start + width)
  if (mark === '<' || mark === 'h') {
    NOT_WORDS.lastIndex = start
    const hit = NOT_WORDS.exec(text)
    if (hit) return { kind: 'mark', text: hit[0], start, end: start + hit[0].length }
  }
  let end = start + width
  while (text.startsWith(mark, end)) end += width
  return { kind: 'mark', text: mark, start, end }
}

const startsLink = (text: string, at: number): boolean => {
  if (text[at] !== 'h' || !text.startsWith('http', at)) return false
  NOT_WORDS.lastIndex = at
  return NOT_WORDS.test(text)
}

/** Total and linear in the length of the text. */
export function tokenise(folded: Folded): Token[] {
  const { text } = folded
  const tokens: Token[] = []
  let at = 0
  while (at < text.length) {
    if (text[at] === ' ') {
      at += 1
      continue
    }
    const token = tokenAt(text, at)
    tokens.push(token)
    at = token.end
  }
  return tokens
}

function tokenAt(text: string, at: number): Token {
  if (startsNumber(text, at)) return numberAt(text, at)
  if (!isLetterAt(text, at) || startsLink(text, at)) return markAt(text, at)
  const end = wordEnd(text, at)
  return { kind: 'word', text: text.slice(at, end), start: at, end }
}
