import { addDays, type Day, daysBetween, isDay, WEEKDAYS, weekday } from '../day.ts'
import { type Item, isBreak, isMark, makeItem } from './items.ts'
import type { Language } from './lexicon/compile.ts'
import type { ReadingContext } from './reading.ts'

const pad = (n: number): string => String(n).padStart(2, '0')

/** The last such date up to today. */
function lastDate(month: number, dayOfMonth: number, today: Day): Day | null {
  const year = Number(today.slice(0, 4))
  for (const y of [year, year - 1]) {
    const day = `${y}-${pad(month)}-${pad(dayOfMonth)}`
    if (isDay(day) && daysBetween(day, today) >= 0) return day
  }
  return null
}

const lastWeekday = (isoNumber: number, today: Day): Day => {
  const back = (WEEKDAYS.indexOf(weekday(today)) + 1 - isoNumber + 7) % 7
  return addDays(today, -back)
}

function isoDate(items: readonly Item[], at: number): Day | null {
  const y = items[at]
  const d1 = items[at + 1]
  const m = items[at + 2]
  const d2 = items[at + 3]
  const d = items[at + 4]
  if (y?.cue !== 'num' || y.text.length !== 4 || !isMark(d1, '-') || !isMark(d2, '-')) return null
  const day = `${y.text}-${m?.text}-${d?.text}`
  return isDay(day) ? day : null
}

const ENDINGS: readonly string[] = ['unit', 'nth', 'outOf', 'article', 'of']

/** "3 March", "3rd of March", "March 3": how many items it takes and the day of the month. */
function monthDate(items: readonly Item[], at: number, today: Day): readonly [number, Day] | null {
  const a = items[at]
  if (a?.cue === 'num' && Number.isInteger(a.value)) {
    let next = at + 1
    while (next < at + 4 && ENDINGS.includes(items[next]?.cue ?? '')) next += 1
    const month = items[next]
    const day = month?.cue === 'month' ? lastDate(month.value, a.value, today) : null
    return day ? [next - at + 1, day] : null
  }
  if (a?.cue !== 'month' || items[at + 1]?.cue !== 'num') return null
  const day = lastDate(a.value, items[at + 1]!.value, today)
  const ending = items[at + 2]?.cue === 'unit' && items[at + 2]!.tight ? 1 : 0
  return day ? [2 + ending, day] : null
}

/** "3/4/2026", "03/04", "3/4:": day, then month; a bare "3/4" may be two values. */
function slashDate(items: readonly Item[], at: number, today: Day): readonly [number, Day] | null {
  const d = items[at]
  const m = items[at + 2]
  if (d?.cue !== 'num' || m?.cue !== 'num' || !isMark(items[at + 1], '/') || !m.tight) return null
  const year = items[at + 4]
  if (isMark(items[at + 3], '/') && year?.cue === 'num' && year.tight) {
    const day = `${year.text.length === 2 ? '20' : ''}${year.text}-${pad(m.value)}-${pad(d.value)}`
    return isDay(day) ? [5, day] : null
  }
  // "10/10" is the top of a scale
  const scale = d.text === '10' && m.text === '10'
  const written = (d.text.length === 2 && m.text.length === 2 && !scale) || isMark(items[at + 3], ':')
  const day = written ? lastDate(m.value, d.value, today) : null
  return day ? [3, day] : null
}

/** "for the 2nd", "el dia 2": a day of this month or the last. */
function dayOfMonth(
  items: readonly Item[],
  at: number,
  today: Day,
  { dateOpeners, ordinals }: Language,
): readonly [number, Day] | null {
  const [opener, n] = [items[at], items[at + 1]]
  if (!opener || !dateOpeners.has(opener.text) || n?.cue !== 'num' || !Number.isInteger(n.value)) return null
  const ending = items[at + 2]
  const isOrdinal = ending?.tight === true && ordinals.has(ending.text)
  if (ordinals.size > 0 && !isOrdinal) return null
  const taken = isOrdinal ? 3 : 2
  if (!isBreak(items[at + taken]) && !isMark(items[at + taken], ':-')) return null
  const month = Number(today.slice(5, 7))
  const days = [month, month === 1 ? 12 : month - 1].flatMap((m) => lastDate(m, n.value, today) ?? [])
  const last = days.sort().at(-1)
  return last ? [taken, last] : null
}

/** "2 days ago" */
function daysAgo(items: readonly Item[], at: number, today: Day): readonly [number, Day] | null {
  const first = Number(items[at]?.cue === 'ago')
  const n = items[at + first]
  const unit = items[at + first + 1]
  const ago = first === 1 ? items[at] : items[at + 2]
  if (n?.cue !== 'num' || !Number.isInteger(n.value) || n.value > 60) return null
  if (unit?.cue === 'dayUnit' && ago?.cue === 'ago') return [3, addDays(today, -n.value)]
  return null
}

const REPORTED: readonly Item['cue'][] = ['pain', 'session', 'place', 'soft', 'zone', 'did', 'num']

/** "yesterday's drive" names the drive; "yesterday's pain", "yesterday's: 2 calf 4" name the day. */
function isOfThing(items: readonly Item[], at: number, { daysOfThings }: Language): boolean {
  // "el viaje de ayer"
  if (items[at]!.cue === 'day' && items[at - 1]?.cue === 'of' && items[at - 2]?.cue === 'word') return true
  if (!daysOfThings.has(items[at]!.text)) return false
  const next = items[at + 1]
  return next !== undefined && !isBreak(next) && next.cue !== 'mark' && !REPORTED.includes(next.cue)
}

/** "Sat 1 thigh 5, Sun ..." names a day; "sat 2 hours" and "sat" alone do not. */
function weekdayAmong(items: readonly Item[], at: number, { weekdaysAmong }: Language): number | null {
  const named = items[at]!.cue === 'word' ? weekdaysAmong.get(items[at]!.text) : undefined
  if (named === undefined || !isBreak(items[at - 1]) || items[at + 2]?.cue === 'unit') return null
  return items.some(({ cue }) => cue === 'weekday' || cue === 'day') ? named : null
}

/** Nothing else opens a date, but for small words before a number ("for the 2nd"). */
const DATES = new Set<Item['cue']>(['weekday', 'day', 'ago', 'num', 'month'])

function dateAt(
  items: readonly Item[],
  at: number,
  context: ReadingContext,
  language: Language,
): readonly [number, Day] | null {
  const { today, promptDay } = context
  const item = items[at]!
  if (!DATES.has(item.cue) && items[at + 1]?.cue !== 'num') return null
  if (isOfThing(items, at, language)) return null
  if (item.cue === 'weekday') return [1, lastWeekday(item.value, today)]
  // "today" after midnight is still the day of the latest prompt
  if (item.cue === 'day') return [1, item.value === 0 ? promptDay : addDays(today, -item.value)]
  const among = weekdayAmong(items, at, language)
  if (among !== null) return [1, lastWeekday(among, today)]
  const ofMonth = dayOfMonth(items, at, today, language)
  if (ofMonth) return ofMonth
  if (item.cue === 'ago') return daysAgo(items, at, today)
  if (item.cue !== 'num' && item.cue !== 'month') return null
  const iso = isoDate(items, at)
  if (iso) return [5, iso]
  const slashed = language.dayFirst ? slashDate(items, at, today) : null
  if (slashed) return slashed
  return monthDate(items, at, today) ?? daysAgo(items, at, today)
}

/** Value of a day item that was named by its weekday: it may lie ahead as well. */
export const A_WEEKDAY = 7

/** Day words and dates become one item each, with the calendar date meant. */
export function joinDates(items: readonly Item[], context: ReadingContext, language: Language): Item[] {
  const saysToday = items.some((item) => item.cue === 'day' && item.value === 0)
  const near = saysToday ? { ...context, today: context.promptDay } : context
  const out: Item[] = []
  for (let at = 0; at < items.length; ) {
    const found = dateAt(items, at, near, language)
    if (!found) {
      out.push(items[at]!)
      at += 1
      continue
    }
    const first = items[at]!
    const last = items[at + found[0] - 1]!
    const dated = makeItem(
      'day',
      first.cue === 'weekday' ? A_WEEKDAY : 0,
      first.text,
      first.start,
      last.end,
      first.tight,
    )
    dated.date = found[1]
    out.push(dated)
    at += found[0]
  }
  return out
}
