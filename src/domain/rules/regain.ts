import { daysBetween } from '../day.ts'
import type { Series } from '../trend/series.ts'
import type { Alarm, AlarmRule } from './rule.ts'
import { seriesOf } from './view.ts'

const BELOW_KNEE = 5
const ABOVE_DAYS = 14
const ABOVE_ANSWERS = 7

/** True where the reach had stayed above for 14 days, 7 of them answered, when it went below at point n. */
function afterStretchAbove(reach: Series, n: number): boolean {
  let first = n
  while (first > 0 && reach[first - 1]!.value < BELOW_KNEE) first -= 1
  const answers = n - first
  return answers >= ABOVE_ANSWERS && daysBetween(reach[first]!.day, reach[n]!.day) >= ABOVE_DAYS
}

export const regain: AlarmRule = {
  kind: 'alarm',
  id: 'regain',
  title: 'Below the knee after weeks above it',
  looksAt: 'reach',
  looksBack: 60,
  condition:
    'calf or foot on two answered days, no more than 14 days apart, after at least 14 days (7 answered) above',
  level: 'hold',
  source: 'common practice; May & Aina 2012, Man Ther 17:497',
  falseAlarms: 0.08,
  sees: (checkIn) => checkIn.reach !== null,
  alarms(view) {
    const reach = seriesOf(view, 'reach')
    return reach.flatMap(({ day, value }, n): Alarm[] => {
      if (value < BELOW_KNEE) return []
      const first = reach.findIndex(
        (point, m) =>
          m < n &&
          point.value >= BELOW_KNEE &&
          daysBetween(point.day, day) <= ABOVE_DAYS &&
          afterStretchAbove(reach, m),
      )
      if (first < 0) return []
      return [{ day, level: 'hold', figures: { reach: value, firstDay: reach[first]!.day } }]
    })
  },
}
