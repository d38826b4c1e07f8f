import { addDays, type Day } from '../day.ts'
import { usualLevel } from '../trend/usual-level.ts'
import type { Figures } from './assessment.ts'
import type { Alarm, AlarmRule } from './rule.ts'
import { answersOf, dayOn, daysOf, seriesOf, type View } from './view.ts'

const PAIN_FROM = 5
const OVER_USUAL = 2
const USUAL_NEED = 10

/** The figures of a day that counts as a flare: sessions done, pain 5 or more and at least 2 over the usual level. */
function flareOn(view: View, day: Day): Figures | null {
  const checkIn = dayOn(view, day)?.checkIn
  if (!checkIn || checkIn.pain === null || checkIn.pain < PAIN_FROM) return null
  if (checkIn.sessions === null || checkIn.sessions === 0) return null
  const usual = usualLevel(seriesOf(view, 'pain'), day, USUAL_NEED)
  if (usual === null || checkIn.pain - usual < OVER_USUAL) return null
  return { flareDay: day, pain: checkIn.pain, usual, sessions: checkIn.sessions }
}

/** True where the latest answered day is a flare that the next prompt has still to ask about. */
export function asksSettled(view: View): boolean {
  const last = answersOf(daysOf(view)).at(-1)?.day
  if (last === undefined || last < addDays(view.on, -1) || flareOn(view, last) === null) return false
  const next = dayOn(view, addDays(last, 1))
  return next?.checkIn?.settled == null
}

export const flare: AlarmRule = {
  kind: 'alarm',
  id: 'flare',
  title: 'A flare after sessions that had not settled by the next day',
  looksAt: 'pain and sessions of a day, the usual level of pain (10 values), the answer of the day after',
  looksBack: 18,
  condition:
    'sessions done, pain 5 or more and at least 2 over the usual level, and "no" to "back to how it was before?"',
  level: 'hold',
  source: 'Silbernagel 2007, AJSM 35:897 (settled by the next morning; borrowed from the Achilles tendon)',
  falseAlarms: null,
  sees: (checkIn) => checkIn.pain !== null,
  alarms(view) {
    return daysOf(view).flatMap(({ day, checkIn }): Alarm[] => {
      if (checkIn?.settled !== false) return []
      const figures = flareOn(view, addDays(day, -1))
      return figures === null ? [] : [{ day, level: 'hold', figures }]
    })
  },
}
