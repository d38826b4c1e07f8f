import { answered, type CheckIn } from '../checkin.ts'
import { addDays, type Day, daysBetween, daysFrom } from '../day.ts'
import { type Reach, rank } from '../reach.ts'
import type { Point, Series } from '../trend/series.ts'
import type { History, HistoryDay } from './assessment.ts'

/** No rule looks back further (open signs, plan start and baseline aside), so that a reply's cost never grows. */
export const LOOK_BACK_DAYS = 60

/** The last 60 dates with what is known of each, oldest first; undefined: nothing known. */
export interface Sixty {
  readonly dates: readonly Day[]
  readonly days: readonly (HistoryDay | undefined)[]
  /** Pain 0..10 and rank of the reach 0..6; null: not answered. */
  readonly pain: readonly (number | null)[]
  readonly reach: readonly (number | null)[]
  /** The known days of the first 7 dates of the history, by which a baseline is found where none is given. */
  readonly firstWeek: readonly HistoryDay[]
  /** What was found so far, by what found it (on the days themselves: weak maps keep the garbage collector busy). */
  readonly kept: Map<object, unknown>
}
export type Measure = 'pain' | 'reach'

/** What the rules see on a day: the last 60 days and nothing after it. */
export interface View {
  readonly history: History
  readonly on: Day
  /** Place of `on` among the dates; what lies behind it is not looked at. */
  readonly at: number
  readonly sixty: Sixty
  /** True where the history goes back further than the sixty days. */
  readonly cut: boolean
}

/** Index of the first of the days (in order) that is not before `day`. */
function indexFrom(days: readonly HistoryDay[], day: Day): number {
  let low = 0
  let high = days.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (days[middle]!.day < day) low = middle + 1
    else high = middle
  }
  return low
}

/** The known days from `first` to `last`, both included. */
export const knownDays = (days: readonly HistoryDay[], first: Day, last: Day): HistoryDay[] =>
  days.slice(indexFrom(days, first), indexFrom(days, addDays(last, 1)))

const reachRank = (reach: Reach | null | undefined): number | null => (reach ? rank(reach) : null)

export function viewOf(history: History, on: Day): View {
  const dates = daysFrom(addDays(on, 1 - LOOK_BACK_DAYS), on)
  const days: (HistoryDay | undefined)[] = Array(LOOK_BACK_DAYS).fill(undefined)
  let at = 0
  for (const day of knownDays(history.days, dates[0]!, on)) {
    while (dates[at]! < day.day) at += 1
    days[at] = day
  }
  const pain = days.map((day) => day?.checkIn?.pain ?? null)
  const reach = days.map((day) => reachRank(day?.checkIn?.reach))
  const begin = history.days[0]?.day
  const firstWeek = begin === undefined ? [] : knownDays(history.days, begin, addDays(begin, 6))
  const sixty = { dates, days, pain, reach, firstWeek, kept: new Map<object, unknown>() }
  return { history, on, at: LOOK_BACK_DAYS - 1, sixty, cut: begin !== undefined && begin < dates[0]! }
}

// spelt out: states are followed back day by day, and spreading an object costs more than the rule
const asOf = ({ history, sixty, cut }: View, at: number): View => ({
  history,
  on: sixty.dates[at]!,
  at,
  sixty,
  cut,
})

/** Place of a date among those of the view; -1 where it lies outside. */
function placeOf(view: View, day: Day): number {
  const at = daysBetween(view.sixty.dates[0]!, day)
  return at < 0 || at > view.at ? -1 : at
}

/** The same view as it was so many days before; null where that lies before the sixty days. */
export function before(view: View, back: number): View | null {
  const at = view.at - back
  return at < 0 ? null : asOf(view, at)
}

/** The same view as it was on one of its dates; null where it lies outside. */
export function viewOn(view: View, day: Day): View | null {
  const at = placeOf(view, day)
  return at < 0 ? null : asOf(view, at)
}

/** What is known of one of the view's dates. */
export const dayOn = (view: View, day: Day): HistoryDay | undefined => view.sixty.days[placeOf(view, day)]

/** The answered values of the days from so many days back to so many days back, both included, oldest first. */
export function valuesBack(view: View, measure: Measure, from: number, to: number): number[] {
  const all = view.sixty[measure]
  const values: number[] = []
  for (let n = Math.max(0, view.at - from); n <= view.at - to; n += 1) {
    const value = all[n] ?? null
    if (value !== null) values.push(value)
  }
  return values
}

/** One value a date of the view, oldest first; null: not answered. */
export function valuesOf(view: View, measure: Measure): readonly (number | null)[] {
  const all = view.sixty[measure]
  return view.at === all.length - 1 ? all : all.slice(0, view.at + 1)
}

/** The answered check-ins among the days, in order. */
export const answersOf = (days: readonly HistoryDay[]): CheckIn[] =>
  days.map((day) => day.checkIn).filter((checkIn) => checkIn !== null && answered(checkIn)) as CheckIn[]

/** Anything at all was said that day, be it only of signs or comfort. */
export const replied = (c: CheckIn): boolean =>
  answered(c) || c.signs.length > 0 || c.denied !== null || c.comfort !== null || c.settled !== null

/** First day on which the client was followed: the plan's start or the first known day; null where neither is. */
export function beginOf(history: History): Day | null {
  const first = history.days[0]?.day ?? null
  if (history.start === null || first === null) return history.start ?? first
  return [first, history.start].sort()[0]!
}

/** Keeps what was found for a day of a view. Every assessment has its own sixty days, so nothing goes stale. */
export function remembered<T extends object | null>(find: (view: View) => T): (view: View) => T {
  return (view) => {
    const { kept } = view.sixty
    let byPlace = kept.get(find) as T[] | undefined
    if (byPlace === undefined) {
      byPlace = []
      kept.set(find, byPlace)
    }
    const known = byPlace[view.at]
    if (known !== undefined) return known
    const fresh = find(view)
    byPlace[view.at] = fresh
    return fresh
  }
}

/** Keeps what was found for all sixty days at once, whichever of them is asked about. */
export function onceOf<T extends object | null>(find: (whole: View) => T): (view: View) => T {
  return (view) => {
    const { kept } = view.sixty
    const known = kept.get(find) as T | undefined
    if (known !== undefined) return known
    const fresh = find(asOf(view, LOOK_BACK_DAYS - 1))
    kept.set(find, fresh)
    return fresh
  }
}

/** A function of its own for each thing (a rule, the ladders of a practice), made at its first use. */
function forEach<K extends object, T>(make: (of: K) => (view: View) => T): (of: K, view: View) => T {
  const made = new WeakMap<K, (view: View) => T>()
  return (of, view) => {
    const known = made.get(of)
    if (known) return known(view)
    const fresh = make(of)
    made.set(of, fresh)
    return fresh(view)
  }
}

/** As `remembered`, of something else as well. */
export const rememberedOf = <K extends object, T extends object | null>(find: (of: K, view: View) => T) =>
  forEach((of: K) => remembered((view) => find(of, view)))

/** As `onceOf`, of something else as well. */
export const onceOfEach = <K extends object, T extends object | null>(find: (of: K, whole: View) => T) =>
  forEach((of: K) => onceOf((whole) => find(of, whole)))

const allDays = onceOf(({ sixty }) => sixty.days.filter((day) => day !== undefined))

/** The known days of the view, in order. */
export const daysOf = remembered((view): readonly HistoryDay[] => {
  const all = allDays(view)
  return view.at === LOOK_BACK_DAYS - 1 ? all : all.slice(0, indexFrom(all, view.sixty.dates[view.at + 1]!))
})

const series = (measure: Measure) =>
  remembered((view): Series => {
    const points: Point[] = []
    for (let n = 0; n <= view.at; n += 1) {
      const value = view.sixty[measure][n] ?? null
      if (value !== null) points.push({ day: view.sixty.dates[n]!, value })
    }
    return points
  })
const SERIES = { pain: series('pain'), reach: series('reach') }

/** The answered values of the view, in order. */
export const seriesOf = (view: View, measure: Measure): Series => SERIES[measure](view)
