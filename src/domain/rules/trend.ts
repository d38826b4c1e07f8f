import { TREND_DAYS, type TrendWord, type WeeklyWord } from '../trend/weekly-word.ts'
import type { Figures } from './assessment.ts'
import type { Holding, StateRule } from './rule.ts'
import type { Measure, View } from './view.ts'
import { trendOf, wordOf } from './weeks.ts'

/** Same spelling for both trends, so that they cannot drift apart. */
const COMMON = {
  kind: 'state',
  looksBack: TREND_DAYS,
  level: 'note',
  source:
    'Mann 1945, Econometrica 13:245; Kendall 1975; Sen 1968, JASA 63:1379; factor and least change by simulation',
} as const

const figuresOf = (word: TrendWord, { slope, z, p, n }: WeeklyWord): Figures => ({
  word,
  slopePerWeek: slope,
  z,
  p,
  n,
})

function spoken(view: View, measure: Measure): Holding | null {
  const word = wordOf(view, measure)
  if (word === null || word === 'steady') return null
  return { level: 'note', key: word, figures: () => figuresOf(word, trendOf(view, measure)) }
}

export const trendPain: StateRule = {
  ...COMMON,
  id: 'trend-pain',
  title: 'Pain of four weeks rises or falls',
  looksAt: 'pain of 28 days, at least 10 values',
  condition:
    'Mann-Kendall |z| over 1.96 with variance times 1.7, and the mean of the last 7 days at least 1 point from that of the first 7',
  falseAlarms: 0.29,
  holds: (view) => spoken(view, 'pain'),
}

export const trendReach: StateRule = {
  ...COMMON,
  id: 'trend-reach',
  title: 'Reach of four weeks draws in or spreads',
  looksAt: 'reach of 28 days, at least 10 values',
  condition:
    'Mann-Kendall |z| over 1.96 with variance times 1.7, and the mean of the last 7 days at least half a zone from that of the first 7',
  falseAlarms: 0.23,
  holds: (view) => spoken(view, 'reach'),
}
