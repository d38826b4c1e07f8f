import { type Crossing, crossings, PAIN_ALARM } from '../trend/alarm-sum.ts'
import { LONG_USUAL } from '../trend/usual-level.ts'
import { directionOf } from './direction.ts'
import type { Alarm, AlarmRule } from './rule.ts'
import { before, type View, valuesOf } from './view.ts'
import { weekMedian } from './weeks.ts'

const { k, h, need } = PAIN_ALARM

/** Least change of pain that matters to a person (Ostelo 2008, Spine 33:90). */
const RISE_THAT_COUNTS = 2

/** The median of 7 days against that of the 7 before them; null where one of them is empty. */
function weekRise(view: View): number | null {
  const now = weekMedian(view, 'pain').median
  const then = weekMedian(view, 'pain', 7).median
  return now === null || then === null ? null : now - then
}

/** The back may complain more while the leg clears: a small rise under a retreating reach only informs. */
function alarmAt(view: View, { at, value, usual }: Crossing): Alarm {
  const then = before(view, view.at - at)!
  const rise = weekRise(then)
  const centralising = rise !== null && rise < RISE_THAT_COUNTS && directionOf(then) === 'centralising'
  const figures = { pain: value, usual, rise, centralising }
  return { day: then.on, level: centralising ? 'note' : 'hold', figures }
}

export const painUp: AlarmRule = {
  kind: 'alarm',
  id: 'pain-up',
  title: 'Pain rises',
  looksAt: `pain over the usual level: the mean of the ${LONG_USUAL.days} days that end ${LONG_USUAL.gap} days before, at least ${need} values`,
  looksBack: 60,
  condition: `one-sided sum of pain less usual level less ${k} passes ${h}; a note while reach is centralising and the weekly median rose by less than ${RISE_THAT_COUNTS}`,
  level: 'hold',
  source:
    'Page 1954, Biometrika 41:100 (cumulative sum), limits by simulation; May & Aina 2012, Man Ther 17:497 (centralisation)',
  falseAlarms: 0.16,
  sees: (checkIn) => checkIn.pain !== null,
  alarms(view) {
    return crossings(valuesOf(view, 'pain'), PAIN_ALARM).map((crossing) => alarmAt(view, crossing))
  },
}
