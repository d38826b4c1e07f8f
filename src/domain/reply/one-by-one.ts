import { type Item, isBreak, isMark } from './items.ts'
import type { Language } from './lexicon/compile.ts'

type Told = 'done' | 'missed' | null

/** What the clause says of a session told by its place: the nearest verb before it decides. */
function toldOf(items: readonly Item[], at: number): { told: Told; only: boolean } {
  let told: Told = null
  let only = false
  for (let i = at - 1; i >= 0 && !isBreak(items[i]); i--) {
    const { cue } = items[i]!
    if (cue === 'only') only ||= told !== 'missed'
    // "didn't do the second": the denial stands before the verb
    if (cue === 'missed' || cue === 'no') told = 'missed'
    if (told !== null) continue
    if (cue === 'did' || cue === 'done') told = 'done'
  }
  return { told: told ?? toldAfter(items, at), only }
}

/** "morning one done, evening one skipped": the verb stands after it. */
function toldAfter(items: readonly Item[], at: number): Told {
  for (let i = at + 1; !isBreak(items[i]) && !isSession(items[i]!); i++) {
    const { cue } = items[i]!
    if (cue === 'missed' || cue === 'no') return 'missed'
    if (cue === 'did' || cue === 'done' || cue === 'yes') return 'done'
  }
  return null
}

const DOES: readonly Item['cue'][] = ['vagueCount', 'did', 'done', 'session']

/** "did them morning and night", "once in the morning and once in the evening": one each. */
export function toldByHour(items: readonly Item[]): { value: number; from: Item } | null {
  for (let at = 0; at + 2 < items.length; at++) {
    const [first, and] = [items[at]!, items[at + 1]!]
    if (first.cue !== 'dayPart' || first.unread || (and.cue !== 'and' && !isMark(and, '&+/'))) continue
    const before = items[at - 1]?.cue === 'article' ? items[at - 2] : items[at - 1]
    const counts = before?.cue === 'count' && items[at + 2]!.cue === 'count'
    if (counts && items[at + 3]?.cue === 'dayPart')
      return { value: before.value + items[at + 2]!.value, from: before }
    const does = before !== undefined && DOES.includes(before.cue) && !before.denied && !before.unread
    const named = items[at + 3]?.cue === 'session' ? 1 : 0
    if (does && items[at + 2]!.cue === 'dayPart' && isBreak(items[at + 3 + named]))
      return { value: 2, from: before }
  }
  return doneByHour(items)
}

/** A clock's number, set aside by now, may stand before its "am". */
const afterClock = (items: readonly Item[], at: number): number => (items[at]?.cue === 'none' ? at + 1 : at)

/** "morning and evening done", "8am and 6pm done"; "only the am session". */
function doneByHour(items: readonly Item[]): { value: number; from: Item } | null {
  for (let at = 0; at < items.length; at++) {
    if (!isBreak(items[at - 1])) continue
    const from = items[at]!
    const first = afterClock(items, at)
    const hour = items[at + 1]?.cue === 'article' ? at + 2 : at + 1
    if (from.cue === 'only' && items[hour]?.cue === 'dayPart' && items[hour + 1]?.cue === 'session')
      return isBreak(items[hour + 2]) ? { value: 1, from } : null
    const and = items[first + 1]
    const second = afterClock(items, first + 2)
    const hours = items[first]?.cue === 'dayPart' && items[second]?.cue === 'dayPart'
    if (!hours || !(and?.cue === 'and' || isMark(and, '&+'))) continue
    const told = items[second + 1]?.cue === 'both' ? second + 2 : second + 1
    if (items[told]?.cue === 'done') return { value: 2, from }
  }
  return null
}

const isSession = ({ cue, unread, denied }: Item): boolean =>
  (cue === 'oneSession' || cue === 'aSession' || cue === 'otherSide') && !unread && !denied

/**
 * Sessions told one by one ("skipped the morning one, did the evening one"): a number where all that were planned
 * are told, or where those done are the only ones; null asks back; undefined where none is told so.
 */
export function toldOneByOne(
  items: readonly Item[],
  planned: number,
  { firstOfRow }: Language,
): number | null | undefined {
  const heard = items.filter((item) => item.cue !== 'otherSide' && isSession(item))
  if (heard.length === 0 || heard[0]!.text.startsWith('another')) return undefined
  let done = 0
  let missed = 0
  let onlyThose = false
  items.forEach((item, at) => {
    if (!isSession(item)) return
    const { told, only } = toldOf(items, at)
    if (told === 'done') done += 1
    if (told === 'missed') missed += 1
    onlyThose ||= only && told !== 'missed'
    // "the morning one, calf 4"
    if (told === null && standsAlone(items, at)) done += 1
  })
  if (done + missed === planned && planned > 0) return done
  if (done > 0 && done <= planned && heard.every(({ cue }) => cue === 'aSession')) return done
  // "skipped the evening one": as "missed one", all but that
  if (missed === 1 && done === 0 && planned > 0 && !items.some(({ cue }) => cue === 'notYet'))
    return planned - 1
  const isFirst = heard.some(({ text }) => text.split(' ').some((word) => firstOfRow.has(word)))
  if (done === 1 && missed === 0 && !isFirst && !items.some(({ cue }) => cue === 'notYet')) return 1
  return onlyThose && missed === 0 && done <= 1 ? 1 : null
}

const standsAlone = (items: readonly Item[], at: number): boolean =>
  items[at]!.cue === 'oneSession' && isBreak(items[at - 1]) && isBreak(items[at + 1])
