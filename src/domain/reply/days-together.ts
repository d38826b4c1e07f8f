import { addDays, type Day, daysBetween } from '../day.ts'
import { hasContent } from './groups.ts'
import { type Item, isBreak, isMark, isStrong } from './items.ts'

const LONGEST_SPAN = 6

const SMALL = new Set<Item['cue']>(['soft', 'article', 'be', 'from', 'of', 'inside', 'both', 'sorry', 'mark'])
/** Before a day these make it one to compare with, and after it they tell of a change. */
const COMPARES = new Set<Item['cue']>(['compare', 'hour', 'limit', 'beyond', 'same', 'no'])
/** "none done yesterday or today" */
const DENIES = new Set<Item['cue']>(['no', 'nothing', 'noSession', 'dayOff'])
const TELLS = new Set<Item['cue']>(['better', 'moved', 'painVague'])

/** Between two days; "and the" is a small word. */
const JOINTS = new Set<Item['cue']>(['and', 'or', 'soft'])

interface List {
  readonly days: readonly Day[]
  readonly end: number
  readonly commas: boolean
  readonly or: boolean
}

function between(from: Day, to: Day): Day[] {
  const span = daysBetween(from, to)
  return span > 0 && span <= LONGEST_SPAN ? Array.from({ length: span }, (_, n) => addDays(from, n + 1)) : []
}

/** "monday and tuesday", "mon/tue/wed", "from sunday to tuesday", from the first of them on. */
function listAt(items: readonly Item[], at: number, overCommas: boolean): List | null {
  const days: Day[] = [items[at]!.date!]
  let end = at
  let commas = false
  let or = false
  const opened = items[at - 1]?.cue === 'inside'
  for (;;) {
    const joint = items[end + 1]
    const next = items[end + 2]?.cue === 'article' ? end + 3 : end + 2
    const named = items[next]?.date ?? null
    if (named === null) break
    // "yesterday and the day before"
    const date = named === days.at(-1) ? addDays(named, -1) : named
    const through = joint?.cue === 'to' || isMark(joint, '-') || (joint?.cue === 'inside' && opened)
    if (through) {
      const more = between(days.at(-1)!, date)
      if (more.length === 0) break
      days.push(...more)
    } else if (joint && (JOINTS.has(joint.cue) || isMark(joint, overCommas ? '&+/,' : '&+/'))) days.push(date)
    else break
    commas ||= isMark(joint, ',')
    or ||= joint?.cue === 'or'
    end = next
  }
  return end > at ? { days, end, commas, or } : null
}

const tells = (items: readonly Item[]): boolean =>
  hasContent(items) || items.some(({ cue }) => cue === 'dayOff')

const untilBreak = (items: readonly Item[]): readonly Item[] => {
  const end = items.findIndex((item) => isBreak(item))
  return end < 0 ? items : items.slice(0, end)
}
/** "monday and tuesday I'm away", "a race on saturday and sunday": something else falls on those days. */
const isElsewhere = (clause: readonly Item[]): boolean =>
  clause.some(({ cue }) => cue === 'word') && !tells(clause)

/** Whether one report stands beside the list: all of it before, or all of it after. */
function shares(items: readonly Item[], at: number, { end, commas, or }: List): boolean {
  const from = items.findLastIndex((item, i) => i < at && (isStrong(item) || item.date !== null)) + 1
  const next = items.findIndex((item, i) => i > end && item.date !== null)
  const after = items.slice(end + 1, next < 0 ? items.length : next)
  const before = items.slice(from, at)
  const told = tells(after)
  if (before.every(({ cue }) => SMALL.has(cue))) {
    const named = isMark(items[end + 1], ':-')
    return told && !or && (!commas || named) && !isStrong(items[end + 1]) && !isElsewhere(untilBreak(after))
  }
  const last = before.at(-1)!
  const clause = before.slice(before.findLastIndex((item) => isBreak(item)) + 1)
  if (told || COMPARES.has(last.cue) || isElsewhere(clause) || after.some(({ cue }) => TELLS.has(cue)))
    return false
  return tells(before) && (!or || before.some(({ cue }) => DENIES.has(cue)))
}

/** Days that share one report become one item, which holds the others of them as well. */
export function joinDays(items: readonly Item[]): readonly Item[] {
  if (items.filter(({ date }) => date !== null).length < 2) return items
  const out: Item[] = []
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!
    out.push(item)
    if (item.date === null) continue
    const list = [true, false]
      .map((overCommas) => listAt(items, at, overCommas))
      .find((one) => one !== null && shares(items, at, one))
    if (!list) continue
    item.also = list.days.slice(1)
    // "both Monday and Tuesday" counts the days, "from Sunday to Tuesday" names them
    if (out.at(-2)?.cue === 'both' || out.at(-2)?.cue === 'from') out.splice(-2, 1)
    at = list.end
  }
  return out
}
