import type { Day, Weekday } from '../../domain/day.ts'
import type { Conflict } from '../../domain/ladder/conflicts.ts'
import { plain } from '../answer.ts'
import type { Draft } from '../draft.ts'
import type { Act, Answer, Button } from '../message.ts'
import { firstDay, goneFromPlan, isPlanAlready, type PlanWish, setPlan } from './plan.ts'
import { planConflicts, planRefusals } from './plan-check.ts'

/** How a plan is asked for: as the command was typed, so that it can be said back for changing. */
export interface PlanAsked {
  readonly wish: PlanWish
  readonly by: string
  /** Conflicts that the coach has read and goes on with; 'all': whatever they are. */
  readonly accepts: readonly string[] | 'all'
}

export const keyOf = ({ id, ladder, rung }: Conflict): string => `${id}/${ladder}/${rung}`

/** Refused, the plan already, asked back with what speaks against it, or saved. */
export function planAnswer(draft: Draft, { wish, by, accepts }: PlanAsked): Answer {
  const { plan } = draft.forCoach
  const { ref } = draft.client
  const refusals = planRefusals(draft, wish)
  if (refusals.length > 0) return plain(refusals.join('\n'), ref)
  if (isPlanAlready(draft, wish)) return plain(plan.already(ref), ref)
  const conflicts = planConflicts(draft, wish, firstDay(draft, wish))
  const unread = conflicts.filter((one) => accepts !== 'all' && !accepts.includes(keyOf(one)))
  const gone = plan.gone(goneFromPlan(draft))
  if (unread.length > 0) {
    const text = plan.conflicts(ref, conflicts)
    return {
      ...plain(`${text}${gone}`, ref),
      choices: { buttons: buttonsFor(draft, wish, conflicts), pick: null },
    }
  }
  const day = setPlan(draft, wish, by)
  const text = plan.saved({
    ref,
    from: day,
    wish,
    loads: draft.file.plan!.loads,
    off: draft.client.off,
    although: conflicts,
  })
  return plain(`${text}${gone}`, ref)
}

function buttonsFor(draft: Draft, wish: PlanWish, conflicts: readonly Conflict[]): Button[] {
  const { plan } = draft.forCoach
  const act = { ...packed(wish), client: draft.client.ref, plan: draft.file.plan?.id ?? null }
  const seen = conflicts.map(keyOf).join(' ')
  return [
    { name: 'save-anyway', label: plan.saveAnyway(conflicts), act: { do: 'plan-save', ...act, seen } },
    { name: 'change', label: plan.change, act: { do: 'plan-change', ...act } },
  ]
}

const packed = ({ sessions, rungs, loads, from, off }: PlanWish) => ({
  sessions,
  rungs: JSON.stringify(rungs),
  loads: JSON.stringify(loads),
  from,
  off: off === null ? null : off.join(' '),
})

const unpacked = (act: Act): PlanWish => ({
  sessions: Number(act.sessions),
  rungs: JSON.parse(String(act.rungs)) as Record<string, number>,
  loads: JSON.parse(String(act.loads)) as Record<string, string>,
  from: act.from === null ? null : (String(act.from) as Day),
  off: act.off === null ? null : (String(act.off).split(' ').filter(Boolean) as Weekday[]),
})

/** "Save anyway": looked at afresh, since a sign, a reply or another coach may have come in between. */
export function savePressed(draft: Draft, act: Act, by: string): Answer {
  if ((draft.file.plan?.id ?? null) !== act.plan)
    return plain(draft.forCoach.plan.changedSince(draft.client.ref), draft.client.ref)
  return planAnswer(draft, { wish: unpacked(act), by, accepts: String(act.seen).split(' ') })
}

/** "Change": nothing is saved, and the command stands there to be sent again otherwise. */
export const changePressed = (draft: Draft, act: Act): Answer =>
  plain(draft.forCoach.plan.again(draft.client.ref, unpacked(act)), draft.client.ref)
