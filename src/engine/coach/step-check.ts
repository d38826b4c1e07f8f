import { addDays } from '../../domain/day.ts'
import type { Conflict } from '../../domain/ladder/conflicts.ts'
import { drillAt, ladderOf } from '../../domain/ladder/ladders.ts'
import type { Draft } from '../draft.ts'
import { keyOf } from '../plan/plan-acts.ts'
import { planConflicts } from '../plan/plan-check.ts'
import { rungsOn } from '../plan/rungs.ts'
import type { Wish } from './decide.ts'

/** What the coach has read of a step and goes on with; 'all': whatever it is. */
export type Accepted = readonly string[] | 'all'

/**
 * What speaks against the rung that a decision leads to and has not been read yet, as before a plan is saved: a band
 * not looked at, a load not named, an open alarm, advice from the screening. Nothing where nobody advances.
 */
export function unreadBefore(draft: Draft, wish: Wish, accepted: Accepted): Conflict[] {
  const next = stepOf(draft, wish)
  if (!next || accepted === 'all') return []
  const { ladder, to, rungs } = next
  const plan = { sessions: draft.file.plan!.sessions, loads: {}, from: null, off: null }
  return planConflicts(draft, { ...plan, rungs: { ...rungs, [ladder]: to } }, tomorrow(draft)).filter(
    (one) => one.ladder === ladder && !accepted.includes(keyOf(one)),
  )
}

/** Going on, the coach has said that band and anchor are sound. */
export function keepChecked(draft: Draft, wish: Wish): void {
  const next = stepOf(draft, wish)
  const { plan } = draft.file
  if (!next || !plan || plan.checked.includes(next.ladder)) return
  const drill = drillAt(ladderOf(next.ladder, draft.ladders)!, next.to)
  if (drill?.needs.includes('anchor-check'))
    draft.put('plan', { ...plan, checked: [...plan.checked, next.ladder] })
}

function stepOf(draft: Draft, { decision, ladder }: Wish) {
  if (decision !== 'advance' || ladder === null) return null
  const rungs = rungsOn(draft.file, tomorrow(draft))
  return { ladder, rungs, to: (rungs[ladder] ?? 0) + 1 }
}

const tomorrow = (draft: Draft) => addDays(draft.today, 1)
