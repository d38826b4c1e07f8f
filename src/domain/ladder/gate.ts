import type { CheckIn } from '../checkin.ts'
import { addDays, type Day, daysBetween } from '../day.ts'
import { type Reach, rank } from '../reach.ts'
import type { HistoryDay } from '../rules/assessment.ts'
import { drillAt, type Ladder, ladderOf, lastRung } from './ladders.ts'
import type { GateSettings, LadderId, Rungs } from './plan.ts'
import { type Stay, stayOn, timelyAnswers } from './stay.ts'

/** Looked at for sessions and pain: the last answered days on the rung, 7 at most. */
const LAST_ANSWERS = 7
/** The reach of so many last answered days must not be further than when the rung began. */
const REACH_ANSWERS = 3
/** `lift` opens on reach and pain of so many answered days in a row ... */
const LIFT_ANSWERS = 7
/** ... with the reach back or none and pain at most this, and these ladders at their last rung. */
const LIFT_REACH = rank('back')
const LIFT_PAIN = 3
const LIFT_NEEDS: readonly LadderId[] = ['extension', 'extend-hip']

/** What may be missing for the next rung. */
export type GateNeed =
  | 'check-ins'
  | 'days'
  | 'sessions'
  | 'pain'
  | 'reach'
  | 'rung-days'
  | 'apart'
  | 'opening'
  | 'comfort'

export interface GateFacts {
  readonly on: Day
  /** Days up to `on`, in order. */
  readonly days: readonly HistoryDay[]
  /** The latest day on which any ladder moved up; null where none did. */
  readonly advanced: Day | null
  readonly settings: GateSettings
  readonly ladders: readonly Ladder[]
}

export interface GateFigures {
  readonly ladder: LadderId
  readonly rung: number
  readonly next: number
  /** First known day on the rung. */
  readonly began: Day
  readonly checkIns: number
  readonly done: number
  readonly planned: number
  /** Highest of the days looked at; null where none is known. */
  readonly worstPain: number | null
  readonly reachBegan: Reach | null
  readonly reachNow: Reach | null
}

export interface GateVerdict {
  readonly ladder: LadderId
  readonly rung: number
  readonly missing: readonly GateNeed[]
  /** True where nothing but the client's own word is missing. */
  readonly askComfort: boolean
  readonly figures: GateFigures
}

/** The rungs in force on the last known day; null where none are known. */
export const rungsNow = (days: readonly HistoryDay[]): Rungs | null =>
  days.findLast((day) => day.rungs !== undefined)?.rungs ?? null

/** What is the same for every ladder, looked up once. */
interface Standing {
  readonly rungs: Rungs
  readonly resting: readonly LadderId[]
}

function standingOf(days: readonly HistoryDay[]): Standing | null {
  const now = days.findLast((day) => day.rungs !== undefined)
  return now?.rungs === undefined ? null : { rungs: now.rungs, resting: now.resting ?? [] }
}

/** Only what is known counts for an advance: a check-in with a value left out is not one of the five. */
const complete = (c: CheckIn): boolean =>
  c.pain !== null && c.reach !== null && (c.sessions !== null || c.planned === 0)

const recorded = ({ checkIn }: HistoryDay): boolean => checkIn !== null && checkIn.reach !== null

/** The reach when the rung began: the last recorded up to that day, else the first after it. */
function reachWhen(days: readonly HistoryDay[], began: Day): Reach | null {
  const found = days.findLast((d) => d.day <= began && recorded(d)) ?? days.find(recorded)
  return found?.checkIn?.reach ?? null
}

/** The client's latest word on "comfortable" that can be about this rung. */
function comfortable({ days, advanced }: GateFacts, began: Day): boolean {
  for (let n = days.length - 1; n >= 0; n -= 1) {
    const { day, checkIn } = days[n]!
    if (day < began || (advanced !== null && day <= advanced)) return false
    if (checkIn?.comfort != null) return checkIn.comfort
  }
  return false
}

function worst(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null)
  return known.length === 0 ? null : Math.max(...known)
}

/** True where two advances would come too close together. */
const tooSoon = ({ on, advanced, settings }: GateFacts): boolean =>
  advanced !== null && daysBetween(advanced, on) < settings.apart

function figuresOf(facts: GateFacts, ladder: LadderId, rung: number, stay: Stay): GateFigures {
  const { began, answers } = stay
  const last = answers.slice(-LAST_ANSWERS)
  const trained = last.filter((c) => c.sessions !== null && c.planned > 0)
  return {
    ladder,
    rung,
    next: rung + 1,
    began,
    checkIns: answers.filter(complete).length,
    done: trained.reduce((sum, c) => sum + c.sessions!, 0),
    planned: trained.reduce((sum, c) => sum + c.planned, 0),
    worstPain: worst(last.map((c) => c.pain)),
    reachBegan: reachWhen(facts.days, began),
    reachNow: last.findLast((c) => c.reach !== null)?.reach ?? null,
  }
}

/** True where each of the last 3 answered days is known to be no further than when the rung began. */
function reachHolds({ answers }: Stay, began: Reach | null): boolean {
  const last = answers.slice(-REACH_ANSWERS)
  if (began === null || last.length < REACH_ANSWERS) return false
  return last.every((c) => c.reach !== null && rank(c.reach) <= rank(began))
}

/** How one ladder of the plan stands before its next rung; null at the last rung, off the plan or resting. */
function gateOf(facts: GateFacts, standing: Standing, ladder: Ladder): GateVerdict | null {
  const rung = standing.rungs[ladder.id]
  if (rung === undefined || rung >= lastRung(ladder) || standing.resting.includes(ladder.id)) return null
  const stay = stayOn(facts.days, ladder.id, rung)
  if (stay === null) return null
  const figures = figuresOf(facts, ladder.id, rung, stay)
  const missing = rung === 0 ? [] : rungNeeds(facts, figures, stay)
  if (rung === 0 || ladder.id === 'lift') missing.push(...openingNeeds(facts, standing.rungs, ladder))
  const leastDays = drillAt(ladder, rung)?.leastDays ?? 0
  if (daysBetween(stay.began, facts.on) < leastDays) missing.push('rung-days')
  if (tooSoon(facts)) missing.push('apart')
  if (rung > 0 && !comfortable(facts, stay.began)) missing.push('comfort')
  return { ladder: ladder.id, rung, missing, askComfort: missing.join() === 'comfort', figures }
}

function rungNeeds(facts: GateFacts, figures: GateFigures, stay: Stay): GateNeed[] {
  const { settings } = facts
  const { checkIns, done, planned, worstPain, began } = figures
  const missing: GateNeed[] = []
  if (checkIns < settings.checkIns) missing.push('check-ins')
  if (daysBetween(began, facts.on) + 1 < settings.days) missing.push('days')
  // a small tolerance, so that 4 of 5 is 80 % whatever the rounding
  if (planned === 0 || done / planned < settings.share - 1e-9) missing.push('sessions')
  if (worstPain === null || worstPain > settings.painAtMost) missing.push('pain')
  if (!reachHolds(stay, figures.reachBegan)) missing.push('reach')
  return missing
}

/**
 * A ladder planned but not begun (rung 0): only `lift` waits so, and opens by its own conditions alone. They are
 * asked again for each of its steps: more load on less calm ground would be the less safe reading.
 */
function openingNeeds(facts: GateFacts, rungs: Rungs, ladder: Ladder): GateNeed[] {
  if (ladder.id !== 'lift') return ['opening']
  const others = LIFT_NEEDS.every((id) => {
    const needed = ladderOf(id, facts.ladders)
    return needed !== null && rungs[id] === lastRung(needed)
  })
  const answers = timelyAnswers(facts.days, ladder.id, addDays(facts.on, -2 * LIFT_ANSWERS)).slice(
    -LIFT_ANSWERS,
  )
  const calm = answers.every(
    (c) => c.reach !== null && rank(c.reach) <= LIFT_REACH && c.pain !== null && c.pain <= LIFT_PAIN,
  )
  return others && calm && answers.length === LIFT_ANSWERS ? [] : ['opening']
}

/** One after another, so that whoever looks for the first does not pay for the rest. */
function* inTurn(facts: GateFacts): Generator<GateVerdict> {
  const standing = standingOf(facts.days)
  if (standing === null) return
  const planned = facts.ladders.filter(({ id }) => id in standing.rungs)
  for (const ladder of planned.sort((a, b) => a.number - b.number)) {
    const verdict = gateOf(facts, standing, ladder)
    if (verdict !== null) yield verdict
  }
}

/** Every ladder of the plan that has a next rung, by number, with what is still missing for it. */
export const gates = (facts: GateFacts): GateVerdict[] => [...inTurn(facts)]

/**
 * The one ladder whose turn it is: the lowest number of which all holds but perhaps the client's own word.
 * Null where none is so far, or no rungs are known.
 */
export function nextAdvance(facts: GateFacts): GateVerdict | null {
  if (tooSoon(facts)) return null
  for (const verdict of inTurn(facts)) {
    if (verdict.missing.every((need) => need === 'comfort')) return verdict
  }
  return null
}
