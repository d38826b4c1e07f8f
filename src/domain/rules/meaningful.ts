import { meaningfulPain, substantialPain } from '../trend/change.ts'
import type { Figures } from './assessment.ts'
import type { StateRule } from './rule.ts'
import type { Measure, View } from './view.ts'
import { baseline, firm, weekMedian } from './weeks.ts'

/** The least change of the reach that matters: one zone. */
const ZONE = 1

/** Weekly medians now against where it began; each null with too few answers for a claim. */
export interface AgainstBaseline {
  readonly pain: { readonly now: number; readonly baseline: number } | null
  readonly reach: { readonly now: number; readonly baseline: number } | null
}

export const againstBaseline = (view: View): AgainstBaseline => ({
  pain: pair(view, 'pain'),
  reach: pair(view, 'reach'),
})

function pair(view: View, measure: Measure): { now: number; baseline: number } | null {
  const now = firm(weekMedian(view, measure))
  const began = firm(baseline(view, measure))
  return now === null || began === null ? null : { now, baseline: began }
}

/** True where pain or reach is better by at least the least change that matters. */
export function betterThanBaseline({ pain, reach }: AgainstBaseline): { pain: boolean; reach: boolean } {
  return {
    pain: pain !== null && meaningfulPain(pain.baseline, pain.now),
    reach: reach !== null && reach.baseline - reach.now >= ZONE,
  }
}

function figuresOf({ pain, reach }: AgainstBaseline, better: { pain: boolean; reach: boolean }): Figures {
  return {
    ...(better.pain && pain
      ? { painFrom: pain.baseline, painTo: pain.now, substantial: substantialPain(pain.baseline, pain.now) }
      : {}),
    ...(better.reach && reach ? { reachFrom: reach.baseline, reachTo: reach.now } : {}),
  }
}

export const meaningful: StateRule = {
  kind: 'state',
  id: 'meaningful',
  title: 'Better by more than the least change that matters',
  looksAt: 'the median of the last 7 days (4 values) against the baseline',
  looksBack: 7,
  condition: 'pain better by at least 2 points and 30 % (50 %: substantial), or reach nearer by a zone',
  level: 'note',
  source: 'Ostelo 2008, Spine 33:90; Farrar 2001, Pain 94:149 (2 points, or 30 %; both are asked for here)',
  falseAlarms: 0.43,
  holds(view) {
    const against = againstBaseline(view)
    const better = betterThanBaseline(against)
    if (!better.pain && !better.reach) return null
    return { level: 'note', figures: () => figuresOf(against, better) }
  },
}
