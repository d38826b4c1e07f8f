import { rank } from '../reach.ts'
import { median } from '../trend/median.ts'
import { slidingWords } from '../trend/sliding-words.ts'
import { LEAST_CHANGE, type TrendWord, type WeeklyWord, weeklyWord } from '../trend/weekly-word.ts'
import type { HistoryDay } from './assessment.ts'
import { type Measure, onceOf, remembered, seriesOf, type View } from './view.ts'

/** Fewest answers of a week for its median to carry a claim (4 in the comparison of rules by simulation). */
const WEEK_NEED = 4
const WEEK_DAYS = 7

/** A median of 7 days and how many answers stand behind it. */
export interface WeekMedian {
  readonly median: number | null
  readonly n: number
}

/** Highest value of either scale: pain 0..10, ranks of the reach 0..6. */
const MOST = 10
const NOTHING: WeekMedian = { median: null, n: 0 }

/** The k-th smallest, from 0, of values given by how often each whole number occurs. */
function kth(counts: readonly number[], k: number): number {
  let below = 0
  for (let value = 0; value < MOST; value += 1) {
    below += counts[value]!
    if (below > k) return value
  }
  return MOST
}

/** The median of the 7 days that end on each date: one pass, since states are followed back over many of them. */
export function slidingWeeks(values: readonly (number | null)[]): WeekMedian[] {
  const counts: number[] = Array(MOST + 1).fill(0)
  let n = 0
  const count = (value: number | null | undefined, by: number): void => {
    if (value === null || value === undefined) return
    counts[value]! += by
    n += by
  }
  return values.map((value, at) => {
    count(value, 1)
    count(values[at - WEEK_DAYS], -1)
    return n === 0 ? NOTHING : { median: (kth(counts, (n - 1) >> 1) + kth(counts, n >> 1)) / 2, n }
  })
}

const sliding = (measure: Measure) => onceOf(({ sixty }) => slidingWeeks(sixty[measure]))
const WEEKS = { pain: sliding('pain'), reach: sliding('reach') }

/** Of the 7 days that end so many days before the last of the view. */
export const weekMedian = (view: View, measure: Measure, back = 0): WeekMedian =>
  WEEKS[measure](view)[view.at - back] ?? NOTHING

/** The median where enough answers stand behind it for a claim, else null. */
export const firm = (week: WeekMedian): number | null => (week.n >= WEEK_NEED ? week.median : null)

const measured = ({ checkIn }: HistoryDay, measure: Measure): number | null => {
  if (measure === 'pain') return checkIn?.pain ?? null
  return checkIn?.reach ? rank(checkIn.reach) : null
}

/** The median of the first one, two ... known days among the first 7 of the history. */
const beginnings = (measure: Measure) =>
  onceOf(({ sixty: { firstWeek } }): WeekMedian[] =>
    firstWeek.map((_, last) => {
      const values = firstWeek.slice(0, last + 1).flatMap((day) => measured(day, measure) ?? [])
      return { median: median(values), n: values.length }
    }),
  )
const BEGINNINGS = { pain: beginnings('pain'), reach: beginnings('reach') }

/** The first 7 days of the history, as far as they lie up to the view's last day. */
function firstWeek(view: View, measure: Measure): WeekMedian {
  const { firstWeek: days } = view.sixty
  let known = days.length
  while (known > 0 && days[known - 1]!.day > view.on) known -= 1
  return BEGINNINGS[measure](view)[known - 1] ?? NOTHING
}

/**
 * Where pain (0..10) or reach (rank 0..6) began: the baseline of screening, which carries a claim by itself,
 * else the median of the first 7 days.
 */
export const baseline = (view: View, measure: Measure): WeekMedian =>
  GIVEN[measure](view) ?? firstWeek(view, measure)

const given = (measure: Measure) =>
  onceOf(({ history }): WeekMedian | null => {
    const began = history.baseline
    const value = measure === 'pain' ? began?.pain : began?.reach && rank(began.reach)
    return value == null ? null : { median: value, n: WEEK_NEED }
  })
const GIVEN = { pain: given('pain'), reach: given('reach') }

const words = (measure: Measure) => onceOf(({ sixty }) => slidingWords(sixty[measure], LEAST_CHANGE[measure]))
const WORDS = { pain: words('pain'), reach: words('reach') }

/** The weekly word of the 28 days up to the view's last; null with too few answers. */
export const wordOf = (view: View, measure: Measure): TrendWord | null =>
  WORDS[measure](view)[view.at] ?? null

const trend = (measure: Measure) =>
  remembered((view) => weeklyWord(seriesOf(view, measure), view.on, LEAST_CHANGE[measure]))
const TRENDS = { pain: trend('pain'), reach: trend('reach') }

/** The same with its figures, which cost far more than the word. */
export const trendOf = (view: View, measure: Measure): WeeklyWord => TRENDS[measure](view)
