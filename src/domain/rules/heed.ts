import { addDays } from '../day.ts'
import type { HistoryDecision } from './assessment.ts'
import type { AlarmsOn, Holding, StateRule } from './rule.ts'
import { type View, viewOn } from './view.ts'

/** After a decision against it, a state is not put forward again for so many days. */
export interface Heed {
  readonly days: number
  /** True where the decision is about what the rule had put forward. */
  about(decision: HistoryDecision, holding: Holding): boolean
}

function decidedAgainst(rule: StateRule, heed: Heed, view: View, alarms: AlarmsOn): boolean {
  const from = addDays(view.on, -heed.days)
  return view.history.decisions.some((decision) => {
    if (decision.day < from || decision.day > view.on) return false
    const then = viewOn(view, decision.day)
    const holding = then && rule.holds(then, alarms)
    return holding !== null && heed.about(decision, holding)
  })
}

/** The same rule, silent on the day of the coach's decision on it and for some days after. */
export const heeding = (rule: StateRule, heed: Heed): StateRule => ({
  ...rule,
  holds(view, alarms) {
    const holding = rule.holds(view, alarms)
    return holding === null || decidedAgainst(rule, heed, view, alarms) ? null : holding
  },
})

/** A met gate that the coach left as it is: 4 days. Its key begins with the ladder. */
export const GATE_HEED: Heed = {
  days: 4,
  about: ({ decision, ladder }, { key }) =>
    decision !== 'advance' && (ladder === null || key?.startsWith(`${ladder}:`) === true),
}

/** Whatever the coach decided on a plateau, to refer or not: 14 days. */
export const PLATEAU_HEED: Heed = { days: 14, about: () => true }
