import { type Reach, reachAt } from '../reach.ts'
import { changeAgainst } from '../trend/change.ts'
import type { Assessment } from './assessment.ts'
import { againstBaseline, betterThanBaseline } from './meaningful.ts'
import type { View } from './view.ts'
import { baseline, trendOf, weekMedian } from './weeks.ts'

/** Weeks of the path: as many as lie whole within what is looked back on. */
const PATH_WEEKS = 8

export function painFigures(view: View): Assessment['pain'] {
  const { median: median7 } = weekMedian(view, 'pain')
  const { median: medianBaseline } = baseline(view, 'pain')
  const against = changeAgainst(medianBaseline, median7)
  const trend = trendOf(view, 'pain')
  const claim = againstBaseline(view)
  return {
    median7,
    medianBaseline,
    change: against?.change ?? null,
    percent: against?.percent ?? null,
    meaningful: claim.pain === null ? null : betterThanBaseline(claim).pain,
    slopePerWeek: trend.slope,
    ci: trend.low === null || trend.high === null ? null : [trend.low, trend.high],
    p: trend.p,
    n: trend.n,
  }
}

/** The median zone of each week back from the view's last day, oldest first; weeks without any are left out. */
function reachPath(view: View): Reach[] {
  const path: Reach[] = []
  for (let back = PATH_WEEKS - 1; back >= 0; back -= 1) {
    const { median } = weekMedian(view, 'reach', 7 * back)
    if (median !== null) path.push(reachAt(median))
  }
  return path
}

export function reachFigures(view: View): Assessment['reach'] {
  const { median: median7 } = weekMedian(view, 'reach')
  const { median: began } = baseline(view, 'reach')
  const trend = trendOf(view, 'reach')
  return {
    median7,
    baseline: began,
    change: changeAgainst(began, median7)?.change ?? null,
    slopePerWeek: trend.slope,
    p: trend.p,
    path: reachPath(view),
  }
}
