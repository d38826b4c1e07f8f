import { type GateVerdict, nextAdvance } from '../ladder/gate.ts'
import type { Ladder } from '../ladder/ladders.ts'
import { LADDERS } from '../ladder/ladders.ts'
import { lastAdvanceOf } from './last-advanced.ts'
import { signsOf } from './open-signs.ts'
import { QUIET_STEPS, silentDays } from './quiet.ts'
import type { AlarmsOn, StateRule } from './rule.ts'
import { daysOf, rememberedOf, type View } from './view.ts'

/** Nothing above a note may be open; pain-up and flare must be quiet altogether; and the client must be there. */
function somethingStandsAgainst(view: View, alarms: AlarmsOn): boolean {
  const against = alarms(view.on).some(
    ({ rule, level }) => level !== 'note' || rule === 'pain-up' || rule === 'flare',
  )
  if (against || silentDays(view) >= QUIET_STEPS.nudge) return true
  return signsOf(view).length > 0
}

/** Asked for twice in an assessment: by the rule, and for the question that is still to be put. */
const aheadOf = rememberedOf((ladders: readonly Ladder[], view: View): GateVerdict | null => {
  const advanced = lastAdvanceOf(view)?.day ?? null
  return nextAdvance({ on: view.on, days: daysOf(view), advanced, settings: view.history.gate, ladders })
})

/** The ladder whose turn it is, with all of its gate met but perhaps the client's own "comfortable". */
export const gateVerdict = (
  view: View,
  alarms: AlarmsOn,
  ladders: readonly Ladder[] = LADDERS,
): GateVerdict | null => (somethingStandsAgainst(view, alarms) ? null : aheadOf(ladders, view))

/** The rule for the ladders of a practice (those of the house by default). */
export const gateRule = (ladders: readonly Ladder[] = LADDERS): StateRule => ({
  kind: 'state',
  id: 'gate',
  title: 'The gate to the next rung is met',
  looksAt: 'check-ins since the rung began, the last 7 at most, days filled in over 36 hours later aside',
  looksBack: 21,
  condition:
    'at least 5 check-ins over 5 days, 80 % of sessions, pain at most 5 and not rising, reach no further than at the start of the rung on the last 3 answered days, nothing open above a note, 2 days since the last advance, and the client says it feels comfortable',
  level: 'note',
  source:
    'common practice; pain at most 5: Silbernagel 2007, AJSM 35:897 (borrowed from the Achilles tendon)',
  falseAlarms: null,
  holds(view, alarms) {
    const verdict = gateVerdict(view, alarms, ladders)
    if (verdict === null || verdict.askComfort) return null
    return {
      level: 'note',
      key: `${verdict.ladder}:${verdict.rung}`,
      figures: () => ({ ...verdict.figures }),
    }
  },
})
