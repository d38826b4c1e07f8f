import { settleAgreeing, settleOnlyOne } from './agreeing.ts'
import { counted, foreign, glued, outstanding } from './foreign.ts'
import { type Item, isBreak, isMark } from './items.ts'
import type { Language } from './lexicon/compile.ts'
import { bound, change, changeBack, range } from './ranges.ts'
import { isNum, type Join, merged, rewrite } from './rewrite.ts'
import {
  atHour,
  hourOfThing,
  hoursOfThing,
  ofAll,
  outOfNamed,
  rowOfSessions,
  setHours,
  setNamedApart,
  settleHomophones,
  settleOrder,
  shareOfThing,
  timesDone,
} from './roles.ts'
import { missedAfter, percentDone, scaleItself } from './sessions-joined.ts'
import { EXTRA_SESSIONS } from './taken.ts'

/** "four point five" */
const decimal: Join = (items, at) => {
  const a = items[at]
  const point = items[at + 1]
  const b = items[at + 2]
  if (!isNum(a) || point?.cue !== 'point' || !isNum(b) || b.value > 9) return null
  return [3, [merged(a, b, a.value + b.value / 10)]]
}

/** "4,5" as written on the continent; only after a name, since "2,5" may be two numbers. */
const decimalComma: Join = (items, at) => {
  const a = items[at]
  const comma = items[at + 1]
  const b = items[at + 2]
  if (!isNum(a) || !isMark(comma, ',') || !comma!.tight || !isNum(b) || !b.tight || b.text !== '5')
    return null
  const named = ['pain', 'be', 'article', 'zone', 'painLetter', 'was'].includes(items[at - 1]?.cue ?? '')
  return named ? [3, [merged(a, b, a.value + 0.5)]] : null
}

/** "3,5" and "3,25" where the comma is the decimal sign of the language. */
const commaAlways: Join = (items, at) => {
  const a = items[at]
  const comma = items[at + 1]
  const b = items[at + 2]
  const touches = isMark(comma, ',') && comma!.tight && b?.tight
  if (!isNum(a) || !touches || !isNum(b) || !Number.isInteger(b.value) || b.text.length > 2) return null
  return [3, [merged(a, b, a.value + b.value / 10 ** b.text.length)]]
}

/** "4 and a half", "four-and-a-half", "4 1/2" is left to its parts. */
const andHalf: Join = (items, at) => {
  const a = items[at]
  if (!isNum(a)) return null
  let next = at + 1
  if (items[next]?.cue === 'andPart') return [2, [merged(a, items[next]!, a.value + 0.5)]]
  if (isMark(items[next], '-')) next += 1
  if (items[next]?.cue !== 'and' && !isMark(items[next], '&+')) return null
  next += isMark(items[next + 1], '-') ? 2 : 1
  if (items[next]?.cue === 'article') next += 1
  const half = items[next]
  // "pain 4 and half done": of the sessions
  if (half?.cue !== 'half' || half.text.indexOf(' ') > 1) return null
  return [next - at + 1, [merged(a, half, a.value + 0.5)]]
}

/** "8 out of 10", "4/10", "2 of 2": the number below tells what is counted. */
const outOf: Join = (items, at, planned) => {
  const a = items[at]
  const of = items[at + 1]
  const top = items[at + 2]
  if (!isNum(a) || !isNum(top)) return null
  if (
    isMark(of, '(') &&
    items[at + 2]?.cue === 'outOf' &&
    isNum(items[at + 3]) &&
    isMark(items[at + 4], ')')
  ) {
    const inner = outOf([a, ...items.slice(at + 2, at + 4)], 0, planned)
    return inner && [5, inner[1]]
  }
  const slash = isMark(of, '/')
  if (!slash && of?.cue !== 'outOf') return null
  if (slash && (isMark(items[at - 1], '/') || isMark(items[at + 3], '/'))) return null
  if (top.value === 10) return [3, [merged(a, top, a.value, { slot: 'pain' })]]
  if (items[at + 3]?.cue === 'session' || (top.value === planned && planned > 0))
    return [3, [merged(a, top, a.value, { slot: 'sessions' })]]
  // in "2/4" the second may be the pain; on any other scale ("4 of 5") nothing can be told
  if (slash && a.value <= planned && top.value > planned) return null
  return [3, [merged(a, top, a.value, { unsure: true })]]
}

/** "all 3" */
const allOf: Join = (items, at) => {
  const all = items[at]
  const n = items[at + 1]
  const next = items[at + 2]
  if (all?.cue !== 'all' || !isNum(n) || n.slot !== null || next?.cue === 'outOf') return null
  return [2, [merged(all, n, n.value, { slot: 'sessions' })]]
}

/** Each pass sees what the one before has joined. */
const passesOf = (language: Language): readonly (readonly Join[])[] => [
  [glued, decimal, decimalComma, andHalf, rowOfSessions(language)],
  [
    scaleItself,
    percentDone,
    missedAfter,
    shareOfThing,
    timesDone,
    outstanding,
    foreign,
    atHour,
    hoursOfThing,
  ],
  [hourOfThing],
  [outOfNamed, ofAll, outOf],
  [change, changeBack, range],
  [bound, allOf, counted(language)],
]

const passesBefore = new WeakMap<Language, ReturnType<typeof passesOf>>()

/** Put together once a language. */
function passes(language: Language): ReturnType<typeof passesOf> {
  const before = passesBefore.get(language)
  if (before) return before
  const made = passesOf(language)
  passesBefore.set(language, made)
  return made
}

/** "2 de 2" and "una sesión de dos" count out of two; in "dolor de 4" the same word is small. */
function settleOf(items: readonly Item[]): void {
  items.forEach((item, at) => {
    if (item.cue !== 'of') return
    const before = items[at - 1]?.cue === 'session' ? items[at - 2] : items[at - 1]
    item.cue = isNum(before) && isNum(items[at + 1]) ? 'outOf' : 'article'
  })
}

/** "fue de 6 a 4" is a change, "fue de 4" is not. */
function settleWasOf(items: readonly Item[]): void {
  items.forEach((item, at) => {
    if (item.cue !== 'wasOf') return
    const goesOn = isNum(items[at + 1]) && items[at + 2]?.cue === 'to' && isNum(items[at + 3])
    item.cue = goesOn ? 'change' : 'was'
  })
}

/** "2 mostly, 5 once": how often it was so bad, where the number ends its clause with it. */
function settleOnce(items: readonly Item[]): void {
  items.forEach((item, at) => {
    if (item.cue !== 'count' || !isNum(items[at - 1]) || !isBreak(items[at + 1])) return
    if (isBreak(items[at - 2]) || items[at - 2]?.cue === 'article') item.cue = 'times'
  })
}

/** Numbers as they are meant: decimals, scales, ranges and changes joined, numbers of other things set aside. */
export function joinNumbers(items: readonly Item[], planned: number, language: Language): Item[] {
  settleOf(items)
  settleOnce(items)
  settleWasOf(items)
  settleAgreeing(items, language)
  settleOnlyOne(items, planned)
  settleHomophones(items, language)
  if (!items.some(isNum)) return [...items]
  const commas = language.decimalComma ? rewrite(items, [commaAlways], planned) : items
  const joined = [...passes(language).reduce((all, rules) => rewrite(all, rules, planned), commas)]
  setHours(joined, language)
  setNamedApart(joined)
  settleOrder(joined, planned + EXTRA_SESSIONS)
  return joined
}
