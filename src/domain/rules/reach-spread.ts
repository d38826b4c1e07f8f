import { crossings, REACH_ALARM } from '../trend/alarm-sum.ts'
import { LONG_USUAL } from '../trend/usual-level.ts'
import type { AlarmRule } from './rule.ts'
import { valuesOf } from './view.ts'

const { k, h, need } = REACH_ALARM

export const reachSpread: AlarmRule = {
  kind: 'alarm',
  id: 'reach-spread',
  title: 'Reach moves away from the spine',
  looksAt: `reach over the usual level: the mean of the ${LONG_USUAL.days} days that end ${LONG_USUAL.gap} days before, at least ${need} values`,
  looksBack: 60,
  condition: `one-sided sum of reach less usual level less ${k} passes ${h}; it then starts again at 0`,
  level: 'ease-back',
  source:
    'Page 1954, Biometrika 41:100 (cumulative sum), limits by simulation; Albert 2012, Eur Spine J 21:630 (a reason to ease off, no doom)',
  falseAlarms: 0.23,
  sees: (checkIn) => checkIn.reach !== null,
  alarms(view) {
    return crossings(valuesOf(view, 'reach'), REACH_ALARM).map(({ at, value, usual }) => ({
      day: view.sixty.dates[at]!,
      level: 'ease-back',
      figures: { reach: value, usual },
    }))
  },
}
