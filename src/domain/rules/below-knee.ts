import { USUAL, usualLevels } from '../trend/usual-level.ts'
import type { Alarm, AlarmRule } from './rule.ts'
import { valuesOf } from './view.ts'

/** Ranks: calf and foot are below the knee; 3.5 lies between thigh and knee. */
const BELOW_KNEE = 5
const USUAL_BELOW = 3.5
const USUAL_NEED = 6

export const belowKneeRule: AlarmRule = {
  kind: 'alarm',
  id: 'below-knee',
  title: 'First day below the knee',
  looksAt: 'reach, and its usual level: the mean of the 14 days that end 3 days before, at least 6 values',
  looksBack: 17,
  condition: 'calf or foot while the usual level is thigh or nearer (below 3.5)',
  level: 'hold',
  source: 'May & Aina 2012, Man Ther 17:497 (symptoms moving down the leg); the limit is common practice',
  falseAlarms: 0.05,
  sees: (checkIn) => checkIn.reach !== null,
  alarms(view) {
    const reach = valuesOf(view, 'reach')
    const levels = usualLevels(reach, USUAL_NEED, USUAL)
    return reach.flatMap((value, at): Alarm[] => {
      const usual = levels[at]!
      if (value === null || value < BELOW_KNEE || usual === null || usual >= USUAL_BELOW) return []
      return [{ day: view.sixty.dates[at]!, level: 'hold', figures: { reach: value, usual } }]
    })
  },
}
