import type { Day } from '../day.ts'
import type { HistoryDay } from '../rules/assessment.ts'
import { type AdviceId, advised, type Screened } from './advice.ts'
import { gates } from './gate.ts'
import { type Drill, drillAt, type Ladder, ladderOf } from './ladders.ts'
import { isMoreThan } from './load.ts'
import { DEFAULT_GATE, type LadderId, type Rungs } from './plan.ts'

/** What may speak against a plan besides the screening: a coach may go on, but not without having read it. */
const PLAN_CONFLICT_IDS = [
  'rung-before',
  'lift-opening',
  'open-alarm',
  'anchor-check',
  'no-load',
  'load-step',
] as const
export type PlanConflictId = (typeof PLAN_CONFLICT_IDS)[number]

export interface Conflict {
  readonly id: PlanConflictId | AdviceId
  readonly ladder: LadderId
  readonly rung: number
}

/** All that is looked at before a plan is saved. */
export interface PlanFacts {
  readonly ladders: readonly Ladder[]
  /** As wished; every ladder known, every rung within it. */
  readonly rungs: Rungs
  /** In force before. */
  readonly before: Rungs
  /** By drill id (or ladder id), those in force and those wished for. */
  readonly loadsBefore: Readonly<Record<string, string>>
  readonly loads: Readonly<Record<string, string>>
  /** True where the plan in force is younger than a week: a load goes up one step a week at most. */
  readonly planIsYoung: boolean
  /** Ladders whose band and anchor the coach has confirmed before. */
  readonly checked: readonly LadderId[]
  readonly screened: Screened
  /** `lift` may open: its own conditions hold. */
  readonly liftOpens: boolean
  /** Something above a note is open. */
  readonly alarm: boolean
}

/** What speaks against a plan, ladder by ladder in their order. */
export function conflictsOf(facts: PlanFacts): Conflict[] {
  return [...facts.ladders]
    .sort((a, b) => a.number - b.number)
    .flatMap((ladder) => {
      const rung = facts.rungs[ladder.id]
      const drill = rung === undefined ? null : drillAt(ladder, rung)
      if (rung === undefined || drill === null) return []
      const raised = rung > (facts.before[ladder.id] ?? 0)
      const ids = [
        ...(raised ? raisedTo(facts, ladder, rung, drill) : []),
        ...needsOf(facts, ladder.id, drill),
      ]
      return ids.map((id) => ({ id, ladder: ladder.id, rung }))
    })
}

/** A ladder that is new in the plan, or stands higher than before. */
function raisedTo(facts: PlanFacts, ladder: Ladder, rung: number, drill: Drill): Conflict['id'][] {
  const before = facts.before[ladder.id] ?? 0
  const ids: Conflict['id'][] = []
  if (rung > before + 1) ids.push('rung-before')
  if (ladder.id === 'lift' && before === 0 && !facts.liftOpens) ids.push('lift-opening')
  if (facts.alarm) ids.push('open-alarm')
  return [...ids, ...advised(facts.screened, ladder, drill)]
}

function needsOf(facts: PlanFacts, ladder: LadderId, drill: Drill): PlanConflictId[] {
  const ids: PlanConflictId[] = []
  const load = facts.loads[drill.id] ?? facts.loads[ladder]
  const loadBefore = facts.loadsBefore[drill.id] ?? facts.loadsBefore[ladder]
  if (drill.needs.includes('anchor-check') && !facts.checked.includes(ladder)) ids.push('anchor-check')
  if (drill.needs.includes('coach-load') && load === undefined) ids.push('no-load')
  if (load && loadBefore && facts.planIsYoung && isMoreThan(load, loadBefore)) ids.push('load-step')
  return ids
}

/** True where `lift` might begin: asked of its gate as if it stood ready below its first rung. */
export function liftOpens(
  days: readonly HistoryDay[],
  rungs: Rungs,
  on: Day,
  ladders: readonly Ladder[],
): boolean {
  const last = days.at(-1)
  if (last === undefined || ladderOf('lift', ladders) === null) return false
  const ready = [...days.slice(0, -1), { ...last, rungs: { ...rungs, lift: 0 }, resting: [] }]
  const verdict = gates({ on, days: ready, advanced: null, settings: DEFAULT_GATE, ladders }).find(
    ({ ladder }) => ladder === 'lift',
  )
  return verdict !== undefined && !verdict.missing.includes('opening')
}
