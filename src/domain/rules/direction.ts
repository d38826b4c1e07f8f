import { median } from '../trend/median.ts'
import { TREND_DAYS, TREND_NEED } from '../trend/weekly-word.ts'
import type { Direction } from './assessment.ts'
import { episodesOf, openOn } from './episode.ts'
import { reachSpread } from './reach-spread.ts'
import { type View, valuesBack } from './view.ts'
import { baseline, firm, weekMedian, wordOf } from './weeks.ts'

/** Fewest answers in the 7 days before the last 3 for their median to count (as in the comparison of rules). */
const BEFORE_NEED = 3

/** The week's median is at least a zone nearer than the baseline, and none of the last 3 days goes against it. */
function nearerThanBaseline(view: View): boolean {
  const now = firm(weekMedian(view, 'reach'))
  const began = firm(baseline(view, 'reach'))
  if (now === null || began === null || began - now < 1) return false
  const lastThree = valuesBack(view, 'reach', 2, 0)
  const sevenBefore = valuesBack(view, 'reach', 9, 3)
  if (lastThree.length === 0 || sevenBefore.length < BEFORE_NEED) return false
  const usual = median(sevenBefore)!
  return lastThree.every((value) => value <= usual)
}

/**
 * Where the reach is going on the last day of the view. Both the weekly word and the baseline are asked: a slow
 * drawing-in shows in the word of only one week in eight, against the baseline in 40 % (by simulation).
 */
export function directionOf(view: View): Direction {
  const word = wordOf(view, 'reach')
  const spreads = openOn(episodesOf(reachSpread, view), view.on) !== null
  if (spreads || word === 'worsening') return 'peripheralising'
  if (valuesBack(view, 'reach', TREND_DAYS - 1, 0).length < TREND_NEED) return 'unclear'
  return word === 'improving' || nearerThanBaseline(view) ? 'centralising' : 'steady'
}
