import { isDeepStrictEqual } from 'node:util'
import { addDays, type Day, type Weekday } from '../../domain/day.ts'
import { drillAt, inOrder, ladderOf } from '../../domain/ladder/ladders.ts'
import { readLoad } from '../../domain/ladder/load.ts'
import { DEFAULT_GATE, type LadderId } from '../../domain/ladder/plan.ts'
import { dayAt, instantOf } from '../../domain/local-time.ts'
import { promptDue, schedulePromptAhead } from '../check-in/schedule-prompt.ts'
import type { Draft } from '../draft.ts'
import { isStopped } from '../status.ts'
import { goneLadders, moveRung, rungsAhead, rungsOn } from './rungs.ts'
import { startAgain } from './stop.ts'
import { workOn } from './work.ts'

export interface PlanWish {
  readonly sessions: number
  readonly rungs: Readonly<Record<LadderId, number>>
  /** By drill id, as in "lift:2". */
  readonly loads: Readonly<Record<string, string>>
  readonly from: Day | null
  /** Days without sessions; null: as they are. */
  readonly off: readonly Weekday[] | null
}

/** Saves the plan; it is in force from its first day, today while the prompt is still to come, else tomorrow. */
export function setPlan(draft: Draft, wish: PlanWish, by: string): Day {
  const from = firstDay(draft, wish)
  const { plan } = draft.file
  startAgain(draft, by)
  draft.put('plan', {
    id: draft.id('plan', draft.cause),
    clientId: draft.client.id,
    day: from,
    at: draft.now,
    sessions: wish.sessions,
    loads: { ...plan?.loads, ...namedLoads(draft, wish) },
    gate: plan?.gate ?? DEFAULT_GATE,
    checked: [...new Set([...(plan?.checked ?? []), ...bandLadders(draft, wish)])],
    by,
  })
  moveRungs(draft, wish, from, by)
  if (wish.off !== null) draft.put('client', { ...draft.client, off: [...wish.off] })
  const { start } = draft.client
  // a first plan that has not begun yet may be moved
  const begins = start === null || (start > draft.today && from !== start)
  if (begins) draft.put('client', { ...draft.client, start: from })
  if (begins || !promptDue(draft)) schedulePromptAhead(draft, from)
  tellPlan(draft, from)
  return from
}

/** True where saving it would change nothing: sessions, rungs and those ahead, loads, days off, first day. */
export function isPlanAlready(draft: Draft, wish: PlanWish): boolean {
  const { file, client } = draft
  const { plan } = file
  const from = firstDay(draft, wish)
  if (!plan || plan.day > from || plan.sessions !== wish.sessions || isStopped(file)) return false
  // a first plan that has not begun yet may be moved
  if (client.start === null || (client.start > draft.today && client.start !== from)) return false
  const isOff = wish.off === null || isDeepStrictEqual([...wish.off].sort(), [...client.off].sort())
  const rungs = inOrder(wish.rungs)
  return (
    isOff &&
    [rungsOn(file, from), rungsAhead(file)].every((one) => isDeepStrictEqual(one, rungs)) &&
    Object.entries(namedLoads(draft, wish)).every(([key, load]) => plan.loads[key] === load) &&
    bandLadders(draft, wish).every((ladder) => plan.checked.includes(ladder))
  )
}

/** The day from which a plan is in force. */
export function firstDay(draft: Draft, { from }: Pick<PlanWish, 'from'>): Day {
  const today = draft.today
  const passed = instantOf(today, draft.client.prompt, draft.client.zone) <= draft.now
  return from ?? (passed ? addDays(today, 1) : today)
}

function moveRungs(draft: Draft, { rungs }: PlanWish, from: Day, by: string): void {
  const before = rungsOn(draft.file, from)
  // a step that another change has set for later does not come: the plan is what counts now
  const ahead = rungsAhead(draft.file)
  for (const [ladder, to] of Object.entries(rungs))
    if (before[ladder] !== to || ahead[ladder] !== to)
      moveRung(draft, { ladder, from: before[ladder] ?? 0, to, day: from, why: 'plan', by })
  for (const [ladder, rung] of Object.entries({ ...ahead, ...before }))
    if (rungs[ladder] === undefined)
      moveRung(draft, { ladder, from: rung, to: 0, day: from, why: 'plan', by })
}

/** A weight as a number with its unit; other loads (a light band) in the coach's own words. */
function namedLoads(draft: Draft, { loads }: PlanWish): Record<string, string> {
  return Object.fromEntries(
    Object.entries(loads).map(([key, load]) => {
      const [id, rung] = key.split(':')
      const ladder = ladderOf(id!, draft.ladders)
      const needs = (ladder && drillAt(ladder, Number(rung)))?.needs ?? []
      return [key, (needs.includes('coach-load') ? readLoad(load) : null) ?? load]
    }),
  )
}

/** Ladders of the plan on a rung with a band: by saving, the coach has said that band and anchor were checked. */
const bandLadders = (draft: Draft, { rungs }: PlanWish): LadderId[] =>
  Object.entries(rungs).flatMap(([id, rung]) => {
    const ladder = ladderOf(id, draft.ladders)
    return (ladder && drillAt(ladder, rung))?.needs.includes('anchor-check') ? [id] : []
  })

/** Ladders that stand in the plan though the practice no longer has them. */
export const goneFromPlan = (draft: Draft): LadderId[] => goneLadders(rungsAhead(draft.file), draft.ladders)

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
