import { addDays, type Day } from '../domain/day.ts'
import { drillAt, ladderOf, lastRung } from '../domain/ladder/ladders.ts'
import { DEFAULT_GATE } from '../domain/ladder/plan.ts'
import { dayAt, instantOf } from '../domain/local-time.ts'
import type { Draft } from './draft.ts'
import { moveRung, rungsOn } from './rungs.ts'
import { promptDue, schedulePrompt } from './schedule-prompt.ts'
import { isLocked } from './status.ts'
import { workOn } from './work.ts'

export interface PlanWish {
  readonly sessions: number
  readonly rungs: Readonly<Record<string, number>>
  readonly loads: Readonly<Record<string, string>>
  readonly from: Day | null
}

/** What stands against a plan, as ids of the sentences that say so; empty where nothing does. */
export function planConflicts(draft: Draft, wish: PlanWish): string[] {
  const { coach } = draft.forCoach
  const conflicts = Object.entries(wish.rungs).flatMap(([id, rung]) => {
    const ladder = ladderOf(id)
    if (!ladder) return [coach.unknownLadder(id)]
    return rung >= 1 && rung <= lastRung(ladder) ? [] : [coach.noSuchRung(id, rung, lastRung(ladder))]
  })
  if (Object.keys(wish.rungs).length === 0) conflicts.push(coach.emptyPlan)
  if (draft.client.stage !== 'enrolled') conflicts.push(coach.notScreened(draft.client.ref))
  if (isLocked(draft.file)) conflicts.push(coach.lockedNoPlan(draft.client.ref))
  if (wish.from !== null && wish.from < draft.today) conflicts.push(coach.planPast)
  return conflicts
}

/** Saves the plan; it is in force from its first day, today while the prompt is still to come, else tomorrow. */
export function setPlan(draft: Draft, wish: PlanWish, by: string): Day {
  const from = wish.from ?? firstDay(draft)
  draft.put('plan', {
    id: draft.id('plan', draft.cause),
    clientId: draft.client.id,
    day: from,
    at: draft.now,
    sessions: wish.sessions,
    loads: { ...draft.file.plan?.loads, ...wish.loads },
    gate: draft.file.plan?.gate ?? DEFAULT_GATE,
    checked: draft.file.plan?.checked ?? [],
    by,
  })
  const before = rungsOn(draft.file, from)
  for (const [ladder, to] of Object.entries(wish.rungs))
    if (before[ladder] !== to)
      moveRung(draft, { ladder, from: before[ladder] ?? 0, to, day: from, why: 'plan', by })
  for (const [ladder, rung] of Object.entries(before))
    if (wish.rungs[ladder] === undefined)
      moveRung(draft, { ladder, from: rung, to: 0, day: from, why: 'plan', by })
  const { start } = draft.client
  // a first plan that has not begun yet may be moved
  const begins = start === null || (start > draft.today && from !== start)
  if (begins) draft.put('client', { ...draft.client, start: from })
  if (begins || !promptDue(draft)) schedulePrompt(draft, from)
  tellPlan(draft, from)
  return from
}

function firstDay(draft: Draft): Day {
  const today = draft.today
  const passed = instantOf(today, draft.client.prompt, draft.client.zone) <= draft.now
  return passed ? addDays(today, 1) : today
}

/** A parked client hears that the plan waits; nobody is told of drills while a sign is open. */
export function tellPlan(draft: Draft, from: Day): void {
  const work = workOn(draft, from, 'full')
  if (work.drills.length === 0) return
  const later = from > dayAt(draft.now, draft.client.zone)
  draft.toClient({
    kind: 'plan',
    text: `${draft.texts.client.planSet(later ? from : null, draft.client.prompt)}\n\n${work.text}`,
    drills: work.drills,
  })
}

/** The needs of the rungs of a plan that a coach should have checked: a safe anchor, a load. */
export function planNeeds(wish: PlanWish): { ladder: string; need: string }[] {
  return Object.entries(wish.rungs).flatMap(([id, rung]) => {
    const ladder = ladderOf(id)
    const drill = ladder ? drillAt(ladder, rung) : null
    return drill?.needs.map((need) => ({ ladder: id, need })) ?? []
  })
}
