import { type Item, isBreak, isMark } from './items.ts'
import type { Language } from './lexicon/compile.ts'
import { isNum, type Join, merged, skipped } from './rewrite.ts'

const TOP_OF_PAIN = 10

/** "before 9", "since 6:" and nothing more; "after 2 sessions" and "after 3 knee lifts" go on. */
export const atHour: Join = (items, at) => {
  const [hour, n, next] = [items[at], items[at + 1], items[at + 2]]
  if (hour?.cue !== 'hour' || !isNum(n)) return null
  return isBreak(next) || next?.cue === 'and' || next?.cue === 'dayPart'
    ? [2, [skipped(items, at, at + 1)]]
    : null
}

/** "10/10 effort", "3/4 mile": a share of another thing. */
export const shareOfThing: Join = (items, at) => {
  const [n, of, top, thing] = [items[at], items[at + 1], items[at + 2], items[at + 3]]
  if (!isNum(n) || !isNum(top) || !(isMark(of, '/') || of?.cue === 'outOf')) return null
  const other =
    thing?.cue === 'unit' ||
    (thing?.cue === 'unitBefore' && !isNum(items[at + 4])) ||
    // "10/10 session": how it went
    (thing?.cue === 'session' && top.value === TOP_OF_PAIN)
  return other ? [4, [skipped(items, at, at + 3)]] : null
}

/** "2 ibuprofen at 8", "a 30 min row at 7": the hour of another thing. */
export const hourOfThing: Join = (items, at) => {
  const [thing, small, n] = [items[at], items[at + 1], items[at + 2]]
  const other = thing?.cue === 'unit' || (thing?.cue === 'none' && thing.text === '')
  if (!other || small?.cue !== 'article' || !isNum(n) || !isBreak(items[at + 3])) return null
  return [3, [skipped(items, at, at + 2)]]
}

const LATEST_HOUR = 12
const AT_HOUR: readonly Item['cue'][] = [
  'session',
  'oneSession',
  'aSession',
  'otherSide',
  'did',
  'done',
  'both',
  'num',
]

/** "first session at 7 this morning", "a 6 at 7 in the morning": when it was; "pain at 7 this morning" is pain. */
export function setHours(items: readonly Item[], { atHours }: Language): void {
  items.forEach((n, at) => {
    if (!isNum(n) || n.slot !== null || n.value > LATEST_HOUR || items[at + 1]?.cue !== 'dayPart') return
    const [thing, small] = [items[at - 2], items[at - 1]]
    if (thing && small && atHours.has(small.text) && AT_HOUR.includes(thing.cue)) n.unread = true
  })
}

/** From here on a falling range behind a word of no meaning to us is one of hours. */
const EARLIEST_START = 7
const LEAST_HOURS = 3

/** "meetings 9 to 5", "worked 8-4": from one hour to another. */
export const hoursOfThing: Join = (items, at) => {
  const [from, to, until] = [items[at], items[at + 1], items[at + 2]]
  if (!isNum(from) || !isNum(until) || !(to?.cue === 'to' || isMark(to, '-'))) return null
  // "reunión de 9 a 5"
  const thing = items[items[at - 1]?.cue === 'article' ? at - 2 : at - 1]?.cue
  const other = thing === 'unit' || thing === 'clock' || thing === 'word'
  if (!other || from.value > LATEST_HOUR) return null
  const falls = from.value >= EARLIEST_START && from.value - until.value >= LEAST_HOURS
  return falls ? [3, [skipped(items, at, at + 2)]] : null
}

/** "one session of the three", "3 from 10": the top stands after the name, or after another small word. */
export const outOfNamed: Join = (items, at, planned) => {
  const n = items[at]
  if (!isNum(n)) return null
  const named = items[at + 1]?.cue === 'session'
  const of = items[at + 1 + Number(named)]
  const top = items[at + 2 + Number(named)]
  if (!isNum(top)) return null
  if (named && of?.cue === 'outOf' && n.value <= top.value)
    return [4, [merged(n, top, n.value, { slot: 'sessions' })]]
  if (!named && (of?.cue === 'from' || of?.cue === 'onTen') && top.value === TOP_OF_PAIN)
    return [3, [merged(n, top, n.value, { slot: 'pain' })]]
  if (isRest(items, at, planned)) return [3, [merged(n, top, n.value, { slot: 'sessions' })]]
  return null
}

/** "2 from 2" */
function isRest(items: readonly Item[], at: number, planned: number): boolean {
  const [n, from, top] = [items[at]!, items[at + 1], items[at + 2]]
  const opens = isBreak(items[at - 1]) || ['did', 'done', 'article'].includes(items[at - 1]!.cue)
  return (
    opens && from?.cue === 'from' && top?.value === planned && n.value <= planned && isBreak(items[at + 3])
  )
}

/** "from four sessions I have done three": the number of all, then of those done. */
export const ofAll: Join = (items, at, planned) => {
  const [from, all, name] = [items[at], items[at + 1], items[at + 2]]
  const opens = from?.cue === 'from' || from?.cue === 'outOf'
  if (!opens || isNum(items[at - 1]) || !isNum(all) || all.value !== planned) return null
  if (['both', 'all', 'nothing'].includes(items[at - 1]?.cue ?? 'mark'))
    return [2, [skipped(items, at, at + 1)]]
  if (name?.cue !== 'session') return null
  return isNum(items[at + 3]) ? null : [3, [skipped(items, at, at + 2)]]
}

const DOES: readonly Item['cue'][] = ['did', 'done', 'vagueCount', 'exercise', 'session']

/** "did it 2 times", "two times I did"; "woke 2 times" counts something else. */
export const timesDone: Join = (items, at) => {
  const n = items[at]
  if (!isNum(n) || items[at + 1]?.cue !== 'countTimes') return null
  let from = at
  while (from > 0 && !isBreak(items[from - 1])) from -= 1
  let to = at + 2
  while (!isBreak(items[to])) to += 1
  // "2 times, calf, 4" answers the first question
  const answers = at === 0 && items.slice(2, to).every(({ cue }) => cue === 'day')
  const does = answers || items.slice(from, to).some((item) => DOES.includes(item.cue))
  return does
    ? [2, [merged(n, items[at + 1]!, n.value, { slot: 'sessions' })]]
    : [2, [skipped(items, at, at + 1)]]
}

/** "did session 2", "session 2 was hard"; "calf 4, session 2" is how many. */
function isOneOfRow(items: readonly Item[], at: number): boolean {
  const [before, after] = [items[at - 1]?.cue ?? 'mark', items[at + 2]?.cue ?? 'mark']
  return (
    ['did', 'done', 'only', 'article'].includes(before) ||
    ['be', 'was', 'word', 'done', 'clear'].includes(after)
  )
}

/** "did session 1 and 2": two of them; "session 2" alone is one of a row, or two: asked back. */
export const rowOfSessions =
  (language: Language): Join =>
  (items, at, planned) => {
    const [name, a, and, b] = [items[at], items[at + 1], items[at + 2], items[at + 3]]
    if (name?.cue !== 'session' || !isNum(a)) return null
    const joins = and?.cue === 'and' || isMark(and, '&+')
    const second = items[at + 4]
    if (a.value === 1 && joins && b?.cue === 'session' && isNum(second) && second.value === 2 && planned >= 2)
      return [5, [merged(name, second, 2, { slot: 'sessions' })]]
    if (a.value === 1 && joins && isNum(b) && b.value === 2 && planned >= 2)
      return [4, [merged(name, b, 2, { slot: 'sessions' })]]
    if (!language.singular.has(name.text) || a.value < 2 || !isOneOfRow(items, at)) return null
    return [2, [merged(name, a, a.value, { slot: 'sessions', unsure: true })]]
  }

/** "sleep 6/10", "weight 82" as a clause of its own, where pain has its name and number elsewhere. */
export function setNamedApart(items: readonly Item[]): void {
  const painNamed = items.some(
    ({ cue }, at) => cue === 'pain' && (isNum(items[at + 1]) || isNum(items[at - 1])),
  )
  items.forEach((n, at) => {
    if (!isNum(n) || n.slot === 'sessions' || !isBreak(items[at + 1])) return
    const wordAt = items[at - 1]?.cue === 'be' ? at - 2 : at - 1
    const word = items[wordAt]
    if (word?.cue !== 'word' || word.text.length < 3 || !isBreak(items[wordAt - 1])) return
    if (painNamed || n.value > TOP_OF_PAIN) n.unread = true
    else if (n.slot === 'pain') n.unsure = true
  })
}

/** "2 knee 4" as a clause of its own is the order asked for, whatever stands before it. */
export function settleOrder(items: readonly Item[], most: number): void {
  for (let at = 0; at + 2 < items.length; at++) {
    const [a, zone, b] = [items[at], items[at + 1], items[at + 2]]
    if (zone?.cue !== 'zone' || !isNum(a) || !isNum(b)) continue
    const alone = isBreak(items[at - 1]) && isBreak(items[at + 3])
    if (!alone || a.slot !== null || b.slot !== null || a.range || a.unsure || b.unsure) continue
    if (a.value > most || !Number.isInteger(a.value)) continue
    a.slot = 'sessions'
    b.slot = 'pain'
  }
}

/** "pain was ate": a name of pain and a verb right before. */
const tellsPain = (items: readonly Item[], at: number): boolean =>
  ['be', 'was'].includes(items[at - 1]?.cue ?? 'mark') && items[at - 2]?.cue === 'pain'

/** Where dictation wrote "to sessions" or "ate out of ten", no other word than the number can stand. */
export function settleHomophones(items: readonly Item[], language: Language): void {
  items.forEach((item, at) => {
    const [next, top] = [items[at + 1], items[at + 2]]
    const isLast = next === undefined && items[at - 1]?.cue === 'zone'
    const endsPain = isLast || (isBreak(next) && tellsPain(items, at))
    if (item.cue === 'num' || !(endsPain || next?.cue === 'session' || next?.cue === 'outOf')) return
    const value = language.homophones.get(item.text)
    if (value === undefined) return
    const opens = isBreak(items[at - 1]) || items[at - 1]!.cue === 'did'
    const sessions = opens && next?.cue === 'session'
    const scale = next?.cue === 'outOf' && isNum(top) && top.value === TOP_OF_PAIN && !isNum(items[at - 1])
    const ends = endsPain && value > 2
    if (!sessions && !scale && !ends) return
    item.cue = 'num'
    item.value = value
  })
}
