import type { CheckIn } from '../checkin.ts'
import type { Day } from '../day.ts'
import type { Figures, Level, RuleId } from './assessment.ts'
import type { View } from './view.ts'

/** What stands in the table about every rule. */
export interface RuleInfo {
  readonly id: RuleId
  readonly title: string
  readonly looksAt: string
  /** How many days back, the day itself included. */
  readonly looksBack: number
  /** When it fires, in words. */
  readonly condition: string
  /** The highest level that it can give. */
  readonly level: Level
  readonly source: string
  /** Episodes per client-month on stable made-up diaries (see the table); null: such diaries cannot set it off. */
  readonly falseAlarms: number | null
}

/** A day on which an alarm rule speaks. */
export interface Alarm {
  readonly day: Day
  readonly level: Level
  readonly figures: Figures
}

/** An alarm stays open until 7 answered days in a row without it. */
export interface AlarmRule extends RuleInfo {
  readonly kind: 'alarm'
  /** Every day of the view on which it speaks, in order; each judged by the days before it alone. */
  alarms(view: View): Alarm[]
  /** True where the check-in holds what the rule looks at: only such a day can count as a quiet one. */
  sees(checkIn: CheckIn): boolean
}

/** What a state rule found on a day. */
export interface Holding {
  readonly level: Level
  /** Made only for the day that is asked about: a state is followed back over many days by its key alone. */
  figures(): Figures
  /** A change of it begins a new episode (improving to worsening, another ladder). */
  readonly key?: string
}

/** Which alarms were open on a day, so that a state can depend on them. */
export interface OpenAlarm {
  readonly rule: RuleId
  readonly level: Level
}
export type AlarmsOn = (day: Day) => readonly OpenAlarm[]

/** A state is open while its condition holds. */
export interface StateRule extends RuleInfo {
  readonly kind: 'state'
  /** A break of fewer days than this belongs to the episode, so that it is not news again; absent: none does. */
  readonly bridges?: number
  /** The condition on the last day of the view; null where it does not hold. */
  holds(view: View, alarms: AlarmsOn): Holding | null
}

/** The rule of open signs; its episodes are the signs themselves. */
export interface SignRule extends RuleInfo {
  readonly kind: 'sign'
}

export type Rule = AlarmRule | StateRule | SignRule
