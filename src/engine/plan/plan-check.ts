import type { Day } from '../../domain/day.ts'
import { daysBetween } from '../../domain/day.ts'
import { type Conflict, conflictsOf, liftOpens } from '../../domain/ladder/conflicts.ts'
import { drillAt, ladderOf, lastRung } from '../../domain/ladder/ladders.ts'
import { readLoad } from '../../domain/ladder/load.ts'
import { assessOn } from '../coach/watch.ts'
import type { Draft } from '../draft.ts'
import { historyOf, knownSigns } from '../history.ts'
import { hasEnded, isLocked, isPressing, openHold } from '../status.ts'
import type { PlanWish } from './plan.ts'
import { rungsAhead, rungsOn } from './rungs.ts'

// A load grows by no more than one step a week (common practice).
const WEEK = 7

/** Why a plan cannot be saved at all, in sentences; empty where it can. */
export function planRefusals(draft: Draft, wish: PlanWish): string[] {
  const { coach, plan } = draft.forCoach
  const { ref } = draft.client
  const refusals = [...standing(draft), ...rungRefusals(draft, wish), ...loadRefusals(draft, wish)]
  if (Object.keys(wish.rungs).length === 0) refusals.push(coach.emptyPlan)
  if (wish.from !== null && wish.from < draft.today) refusals.push(coach.planPast)
  return refusals.length === 0 ? [] : [plan.refused(ref), ...refusals]
}

/** Nothing about drills is set while a sign is open or asked about, or a clinician's word is waited for. */
function standing({ file, client, forCoach: { coach, courseForCoach, plan } }: Draft): string[] {
  const { ref } = client
  if (hasEnded(client)) return [courseForCoach.dischargedAlready(ref)]
  if (isLocked(file)) return [coach.lockedNoPlan(ref)]
  if (isPressing(file)) return [plan.asked(ref)]
  if (openHold(file, 'park')) return [plan.parked(ref)]
  return client.stage === 'enrolled' ? [] : [coach.notScreened(ref)]
}

function rungRefusals({ ladders, forCoach: { coach, plan } }: Draft, { rungs }: PlanWish): string[] {
  return Object.entries(rungs).flatMap(([id, rung]) => {
    const ladder = ladderOf(id, ladders)
    if (!ladder)
      return [
        plan.unknownLadder(
          id,
          ladders.map((one) => one.id),
        ),
      ]
    return rung >= 1 && rung <= lastRung(ladder) ? [] : [coach.noSuchRung(id, rung, lastRung(ladder))]
  })
}

/** A load stands for a rung of a ladder in the plan; where a weight is lifted it is a number with its unit. */
function loadRefusals({ ladders, forCoach: { plan } }: Draft, { rungs, loads }: PlanWish): string[] {
  return Object.entries(loads).flatMap(([key, load]) => {
    const [id, rung] = key.split(':')
    const ladder = ladderOf(id!, ladders)
    const drill = ladder ? drillAt(ladder, Number(rung)) : null
    if (!drill || rungs[id!] === undefined) return [plan.loadOfNothing(key)]
    return drill.needs.includes('coach-load') && readLoad(load) === null ? [plan.loadNoNumber(key, load)] : []
  })
}

/** What speaks against a plan that could be saved. */
export function planConflicts(draft: Draft, wish: PlanWish, from: Day): Conflict[] {
  const { file, ladders, today } = draft
  const { plan, screening } = file
  const answers = screening?.answers ?? {}
  const before = rungsOn(file, from)
  const history = historyOf(file)
  const loadsBefore = plan?.loads ?? {}
  return conflictsOf({
    ladders,
    rungs: wish.rungs,
    before,
    loadsBefore,
    loads: { ...loadsBefore, ...wish.loads },
    planIsYoung: plan !== null && daysBetween(plan.day, from) < WEEK,
    checked: plan?.checked ?? [],
    screened: {
      eases: typeof answers.eases === 'string' ? answers.eases : null,
      risks: Array.isArray(answers.risks) ? answers.risks : [],
      surgery: answers.earlier === 'surgery',
      known: knownSigns(file),
    },
    liftOpens: liftOpens(history.days, rungsAhead(file), today, ladders),
    alarm: assessOn(draft, today).flags.some(({ level }) => level !== 'note'),
  })
}
