import { addDays } from '../day.ts'
import { LEAST_CHANGE, TREND_DAYS, type TrendWord, weeklyWord } from '../trend/weekly-word.ts'
import type { Diary } from './diary.ts'
import { FIRST_DAY, seriesOf } from './series.ts'

/** Shares of weeks, 0..1. */
export interface WordFigures {
  readonly pain: number
  readonly reach: number
}

/** Words of all full weeks, the first one after 28 days. */
function wordsOf(diary: Diary, scale: 'pain' | 'reach'): (TrendWord | null)[] {
  const series = seriesOf(diary[scale])
  const words: (TrendWord | null)[] = []
  for (let day = TREND_DAYS - 1; day < diary[scale].length; day += 7) {
    words.push(weeklyWord(series, addDays(FIRST_DAY, day), LEAST_CHANGE[scale]).word)
  }
  return words
}

/** Where nothing changes, how often the weekly word says so falsely: the more frequent of its two ways. */
export function wrongWords(stable: readonly Diary[]): WordFigures {
  const worse = (scale: 'pain' | 'reach'): number => {
    const words = stable.flatMap((diary) => wordsOf(diary, scale))
    const named = (word: TrendWord): number => words.filter((w) => w === word).length
    return words.length === 0 ? 0 : Math.max(named('worsening'), named('improving')) / words.length
  }
  return { pain: worse('pain'), reach: worse('reach') }
}
