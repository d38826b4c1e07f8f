import { type Day, daysBetween } from '../day.ts'
import type { Series } from '../trend/series.ts'
import type { Alarm, AlarmRule } from './rule.ts'
import { seriesOf } from './view.ts'

const BELOW_KNEE = 5
const ABOVE_DAYS = 14
const ABOVE_ANSWERS = 7

/** The days on which the reach went below after it had stayed above for 14 days, 7 of them answered. */
function returns(reach: Series): Day[] {
  let above = 0
  return reach.flatMap(({ day, value }, n): Day[] => {
    if (value < BELOW_KNEE) {
      above += 1
      return []
    }
    const first = reach[n - above]!.day
    const long = above >= ABOVE_ANSWERS && daysBetween(first, day) >= ABOVE_DAYS
    above = 0
    return long ? [day] : []
  })
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
    const firsts = returns(reach)
    return reach.flatMap(({ day, value }): Alarm[] => {
      if (value < BELOW_KNEE) return []
      const firstDay = firsts.find((first) => first < day && daysBetween(first, day) <= ABOVE_DAYS)
      if (firstDay === undefined) return []
      return [{ day, level: 'hold', figures: { reach: value, firstDay } }]
    })
  },
}
