import { stopsDrills } from '../care.ts'
import { daysBetween } from '../day.ts'
import { signsOf } from './open-signs.ts'
import type { StateRule } from './rule.ts'
import { beginOf, daysOf, LOOK_BACK_DAYS, onceOf, replied, type View } from './view.ts'

/**
 * Days without reply, days off included: a nudge, then the coach is told, then a return starts each ladder a rung
 * lower, then the client is paused (common practice).
 */
export const QUIET_STEPS = { nudge: 3, coach: 5, lower: 7, pause: 14 } as const

/** For each of the sixty days the place of the last reply up to it; -1 where there is none. */
const lastReplies = onceOf(({ sixty }) => {
  let last = -1
  return sixty.days.map((day, at) => {
    if (day?.checkIn && replied(day.checkIn)) last = at
    return last
  })
})

/** Days without any reply up to and with the last of the view, 60 at most; days off are days too. */
export function silentDays(view: View): number {
  const begin = beginOf(view.history)
  if (begin === null || begin > view.on) return 0
  const last = lastReplies(view)[view.at]!
  const silent = last >= 0 ? view.at - last : daysBetween(begin, view.on) + 1
  return Math.min(silent, LOOK_BACK_DAYS)
}

/** Locked clients are followed up in another way; the days count anew from the clearance. */
function silentSinceLock(view: View): number {
  const silent = silentDays(view)
  if (silent < QUIET_STEPS.nudge) return silent
  if (signsOf(view).some((sign) => stopsDrills(sign.care))) return 0
  const cleared = daysOf(view).findLast((day) => day.cleared.length > 0)
  return cleared ? Math.min(silent, daysBetween(cleared.day, view.on)) : silent
}

export const quiet: StateRule = {
  kind: 'state',
  id: 'quiet',
  title: 'No reply',
  looksAt: 'days without any reply, days off included, while nothing is locked',
  looksBack: QUIET_STEPS.nudge,
  condition: '3 days or more (3: nudge; 5: coach told; 14: paused)',
  level: 'note',
  source: 'common practice; Ono 2019, JMIR 21:e11398 (replies fall day by day)',
  falseAlarms: 0.65,
  holds(view) {
    const days = silentSinceLock(view)
    return days < QUIET_STEPS.nudge ? null : { level: 'note', figures: () => ({ days }) }
  },
}
