import type { Day } from '../day.ts'
import { A_WEEKDAY } from './dates.ts'
import { type Item, isBreak, isMark } from './items.ts'

/** What a message says of one day; `date` null where no day was named. */
export interface DayGroup {
  readonly date: Day | null
  readonly items: Item[]
}

const CONTENT = new Set<Item['cue']>([
  ...([
    'zone',
    'num',
    'leg',
    'legs',
    'all',
    'both',
    'half',
    'nothing',
    'noSession',
    'missed',
    'painFree',
    'noSymptoms',
  ] as const),
  ...(['painVague', 'count', 'vagueCount', 'same', 'done'] as const),
])
export const hasContent = (items: readonly Item[]): boolean =>
  items.some((i) => CONTENT.has(i.cue) && !i.unread && !i.denied)

/** "than yesterday", "since Monday", "not yesterday": a day to compare with, no date of a report. */
function onlyCompares(items: readonly Item[], at: number): boolean {
  for (let i = at - 1; i >= 0 && i >= at - 4; i--) {
    const { cue } = items[i]!
    if (
      cue === 'compare' ||
      cue === 'hour' ||
      cue === 'limit' ||
      cue === 'beyond' ||
      cue === 'from' ||
      cue === 'same' ||
      cue === 'no'
    )
      return true
    if (cue === 'better' || cue === 'moved') return false
    if (isBreak(items[i]) || CONTENT.has(cue)) return false
  }
  return false
}

interface Chunk {
  readonly items: Item[]
  readonly days: number[]
}

/** "see you on Friday": a weekday among other words, without a value, may lie ahead. */
const isAppointment = ({ items, days }: Chunk): boolean =>
  days.some((day) => items[day]!.value === A_WEEKDAY) &&
  !hasContent(items) &&
  items.some((item) => item.cue === 'word' || item.cue === 'onTen')

/** Clauses, with the places of the day words in each. */
function chunksOf(items: readonly Item[]): Chunk[] {
  const chunks: Chunk[] = [{ items: [], days: [] }]
  items.forEach((item, at) => {
    if (isMark(item, '(')) chunks.push({ items: [], days: [] })
    const chunk = chunks.at(-1)!
    if (item.date !== null && !item.unread && !onlyCompares(items, at)) chunk.days.push(chunk.items.length)
    chunk.items.push(item)
    if (isBreak(item) || isMark(item, ')') || (item.cue === 'and' && items[at + 1]?.date != null))
      chunks.push({ items: [], days: [] })
  })
  chunks.forEach((chunk, n) => {
    // "a race on saturday and sunday"
    const before = chunks[n - 1]
    const goesOn = before?.items.at(-1)?.cue === 'and' && before.days.length === 0 && !hasContent(chunk.items)
    if (isAppointment(chunk) || (goesOn && before.items.some(({ date }) => date !== null)))
      chunk.days.length = 0
  })
  return chunks
}

/** Cuts one clause at its day words: each opens a part, or closes one where the clause starts with content. */
function partsOf(chunk: Chunk): { date: Day; items: Item[]; closes: boolean }[] {
  const { items, days } = chunk
  const closes = hasContent(items.slice(0, days[0]))
  return days.map((day, n) => {
    const from = closes ? (n === 0 ? 0 : days[n - 1]! + 1) : n === 0 ? 0 : day
    const to = closes ? (n === days.length - 1 ? items.length : day + 1) : (days[n + 1] ?? items.length)
    return { date: items[day]!.date!, items: items.slice(from, to), closes }
  })
}

/** Splits the message by the days it names; what stands before any day word belongs to the day of the prompt. */
export function groupByDay(items: readonly Item[], promptDay: Day): DayGroup[] {
  if (!items.some((item) => item.date !== null)) return [{ date: null, items: [...items] }]
  const groups: { date: Day | null; items: Item[] }[] = []
  let open: { date: Day | null; items: Item[] } = { date: null, items: [] }
  const close = (): void => {
    if (open.items.length > 0) groups.push(open)
  }
  const chunks = chunksOf(items)
  chunks.forEach((chunk, n) => {
    if (chunk.days.length === 0) {
      open.items.push(...chunk.items)
      return
    }
    const trails = !hasContent(chunk.items) && !chunks.slice(n + 1).some((c) => hasContent(c.items))
    // "3 (yesterday 5), calf": what stands in the brackets is of its day, what follows is not
    if (isMark(chunk.items[0], '(') && isMark(chunk.items.at(-1), ')') && hasContent(chunk.items)) {
      for (const part of partsOf(chunk)) groups.push({ date: part.date, items: part.items })
      return
    }
    for (const part of partsOf(chunk)) {
      // a day word at the end of its clause dates what came before it
      if (part.closes && part.items.some((item) => item.cue === 'was')) {
        groups.push({ date: part.date, items: part.items })
        continue
      }
      const dates = open.date === null && (trails ? isBareDay(part.items) : part.closes)
      if (dates) {
        groups.push({ date: part.date, items: [...open.items, ...part.items] })
        open = { date: null, items: [] }
        continue
      }
      if (trails) {
        open.items.push(...part.items)
        continue
      }
      close()
      open = { date: part.date, items: [...part.items] }
    }
  })
  close()
  return shared(joined(groups, promptDay))
}

/** What is told of several days together stands for each of them that is not told apart. */
function shared(groups: DayGroup[]): DayGroup[] {
  for (const { items } of [...groups])
    for (const date of items.flatMap(({ also }) => also))
      if (!groups.some((group) => group.date === date))
        groups.push({ date, items: items.map((item) => ({ ...item })) })
  return groups
}

/** A clause that holds a day word and small words, nothing else ("for yesterday"). */
const isBareDay = (items: readonly Item[]): boolean =>
  items.every((i) => i.date !== null || i.cue !== 'word') && items.filter((i) => i.cue !== 'mark').length <= 4

/** Parts of one day together; a part without content goes with its neighbour. */
function joined(groups: readonly DayGroup[], promptDay: Day): DayGroup[] {
  const today = groups.some(({ date }) => date === promptDay) ? promptDay : null
  const byDate = new Map<Day | null, Item[]>()
  for (const { date, items } of groups) {
    const key = date ?? today
    byDate.set(key, [...(byDate.get(key) ?? []), ...items])
  }
  const all = [...byDate].map(([date, items]): DayGroup => ({ date, items }))
  const full = all.filter(({ items }) => hasContent(items))
  if (full.length > 0) return full
  return all.length > 0 ? all.slice(0, 1) : [{ date: null, items: [] }]
}
