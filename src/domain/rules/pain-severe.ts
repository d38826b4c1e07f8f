import type { Alarm, AlarmRule } from './rule.ts'
import { seriesOf } from './view.ts'

const SEVERE = 8

export const painSevere: AlarmRule = {
  kind: 'alarm',
  id: 'pain-severe',
  title: 'Severe pain twice in a row',
  looksAt: 'pain of the last two check-ins that give it',
  looksBack: 60,
  condition: 'pain 8 or more on two check-ins in a row',
  level: 'hold',
  source: 'common practice',
  falseAlarms: 0.04,
  sees: (checkIn) => checkIn.pain !== null,
  alarms(view) {
    return seriesOf(view, 'pain').flatMap(({ day, value }, n, pain): Alarm[] => {
      const before = pain[n - 1]
      if (before === undefined || value < SEVERE || before.value < SEVERE) return []
      return [{ day, level: 'hold', figures: { pain: value, before: before.value, dayBefore: before.day } }]
    })
  },
}
