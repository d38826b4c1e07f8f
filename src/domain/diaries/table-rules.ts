import { addDays } from '../day.ts'
import type { Flag, RuleId } from '../rules/assessment.ts'
import { ALARM_RULES } from '../rules/table.ts'
import { type AlarmSettings, alarmSum, PAIN_ALARM, REACH_ALARM } from '../trend/alarm-sum.ts'
import { LONG_USUAL, type Span } from '../trend/usual-level.ts'
import { assessedDays } from './assessed.ts'
import type { DayRule } from './measure.ts'
import { diaryDays, FIRST_DAY, seriesOf } from './series.ts'

/** Rules of the table that pain and reach alone can set off: the others need signs, sessions or a plan's rungs. */
export const SIMULATED: readonly RuleId[] = [
  'reach-spread',
  'below-knee',
  'pain-up',
  'pain-severe',
  'regain',
  'trend-pain',
  'trend-reach',
  'meaningful',
  'quiet',
  'plateau',
]

const ALARM_IDS: readonly RuleId[] = ALARM_RULES.map((rule) => rule.id)

/** An alarm speaks on the days of its alarms, though its episode stays open; a state while it holds. */
const speaksOn = (flag: Flag, at: number): boolean =>
  !ALARM_IDS.includes(flag.rule) || flag.figures.latest === addDays(FIRST_DAY, at)

const tellsBetter = ({ rule, figures }: Flag): boolean =>
  rule === 'meaningful' || figures.word === 'improving'

/** A rule of the table, read from the full assessment of every day. */
export const tableRule =
  (id: RuleId): DayRule =>
  (diary, { from, to, worse }) =>
    assessedDays(diary, from, to).flatMap(({ at, flags }) => {
      const flag = flags.find(({ rule }) => rule === id)
      return flag && speaksOn(flag, at) && !(worse && tellsBetter(flag)) ? [at] : []
    })

/** Parameters of the two alarm sums. */
export interface Alarms {
  readonly pain: AlarmSettings
  readonly reach: AlarmSettings
  readonly usual: Span
}
export const ALARMS: Alarms = { pain: PAIN_ALARM, reach: REACH_ALARM, usual: LONG_USUAL }

/** The sums by themselves, each and both together; quick, since nothing else is assessed. */
export function alarmRules({ pain, reach, usual }: Alarms) {
  const painUp: DayRule = (diary) => diaryDays(alarmSum(seriesOf(diary.pain), pain, usual))
  const reachSpread: DayRule = (diary) => diaryDays(alarmSum(seriesOf(diary.reach), reach, usual))
  const alarms: DayRule = (diary, asked) => [...painUp(diary, asked), ...reachSpread(diary, asked)]
  return { alarms, 'reach-spread': reachSpread, 'pain-up': painUp }
}
