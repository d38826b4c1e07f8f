import type { Assessment, Flag } from './domain/rules/assessment.ts'
import { why } from './text/en/rules.ts'

/** Rounds to so many decimals and leaves null alone; never -0. */
const to = (decimals: number, value: number | null): number | null => {
  if (value === null) return null
  const scale = 10 ** decimals
  return Math.round(value * scale) / scale + 0
}

export const flagJson = (flag: Flag) => ({
  rule: flag.rule,
  level: flag.level,
  day: flag.day,
  why: why(flag),
  source: flag.source,
})

/** The assessment as others read it: names and their order are binding. Percents 0..100 to one decimal. */
export function assessmentJson({
  on,
  direction,
  pain,
  reach,
  adherence,
  flags,
  proposal,
  reasons,
}: Assessment) {
  return {
    on,
    direction,
    pain: {
      median7: pain.median7,
      medianBaseline: pain.medianBaseline,
      change: pain.change,
      percent: to(1, pain.percent),
      meaningful: pain.meaningful,
      slopePerWeek: to(3, pain.slopePerWeek),
      ci: pain.ci && [to(3, pain.ci[0]), to(3, pain.ci[1])],
      p: to(5, pain.p),
      n: pain.n,
    },
    reach: {
      median7: reach.median7,
      baseline: reach.baseline,
      change: reach.change,
      slopePerWeek: to(3, reach.slopePerWeek),
      p: to(5, reach.p),
      path: reach.path,
    },
    adherence: {
      done: adherence.done,
      planned: adherence.planned,
      percent: to(1, adherence.percent),
      low: to(1, adherence.low),
      high: to(1, adherence.high),
      replies: adherence.replies,
      days: adherence.days,
    },
    flags: flags.map(flagJson),
    proposal,
    reasons,
  }
}
