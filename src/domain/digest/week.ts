import { answered, type CheckIn } from '../checkin.ts'
import { addDays, type Day, daysBetween } from '../day.ts'
import { LADDERS, ladderOf, lastRung } from '../ladder/ladders.ts'
import { type Reach, rank, reachAt } from '../reach.ts'
import { type Assessment, type Flag, type History, LEVELS, type RuleId } from '../rules/assessment.ts'
import { median } from '../trend/median.ts'
import type { RungFact, WeekExtra, WeekFacts } from './facts.ts'

const WEEK = 7
/** A coach looks back over six weeks: the time after which a plateau is named. */
const PATH_WEEKS = 6

/**
 * The facts of the client's 7 local dates up to `on`. What the rules have counted is taken from the
 * assessment, so that the digest never says otherwise than "why" does.
 * @throws RangeError where the assessment is of another day
 */
export function weekFacts(history: History, assessment: Assessment, on: Day, extra: WeekExtra): WeekFacts {
  if (assessment.on !== on) throw new RangeError(`assessment is of ${assessment.on}, facts asked for ${on}`)
  const checkIns = answeredUpTo(history, on)
  const week = weekOf(checkIns, on)
  const { adherence, pain } = assessment
  const start = history.start ?? history.days[0]?.day ?? on
  return {
    ref: extra.ref,
    standing: extra.standing,
    first: addDays(on, 1 - WEEK),
    on,
    week: Math.floor(Math.max(0, daysBetween(start, on)) / WEEK) + 1,
    urgentOpen: extra.urgentOpen,
    alertOpen: extra.alertOpen,
    taken: extra.taken ?? null,
    signs: assessment.openSigns,
    cleared: extra.cleared ?? [],
    replies: { answered: adherence.replies, days: adherence.days },
    silentDays: silentDays(checkIns, start, on),
    sessions: {
      done: adherence.done,
      planned: adherence.planned,
      percent: adherence.percent,
      low: adherence.low,
      high: adherence.high,
    },
    reach: {
      path: reachPath(checkIns, on),
      direction: assessment.direction,
      baseline: assessment.reach.baseline === null ? null : reachAt(assessment.reach.baseline),
    },
    pain: {
      now: pain.median7,
      weekAgo: painMedian(weekOf(checkIns, addDays(on, -WEEK))),
      baseline: pain.medianBaseline,
      change: pain.change,
      percent: pain.percent,
      meaningful: pain.meaningful,
      worst: worstPain(week),
    },
    flags: byWeight(assessment.flags.filter((flag) => flag.rule !== 'sign')),
    rungs: rungFacts(extra),
    barrier: extra.barrier,
    filledLater: week.filter((checkIn) => checkIn.filled > checkIn.day).map((checkIn) => checkIn.day),
    signsNotSaid: week.filter(saidNothingOfSigns).map((checkIn) => checkIn.day),
    proposal: assessment.proposal,
    ladder: assessment.ladder,
    reasons: assessment.reasons.map((rule) => ({ rule, day: firstDay(rule, assessment) })),
  }
}

function answeredUpTo(history: History, on: Day): CheckIn[] {
  return history.days.flatMap(({ checkIn }) =>
    checkIn !== null && checkIn.day <= on && answered(checkIn) ? [checkIn] : [],
  )
}

const weekOf = (checkIns: readonly CheckIn[], last: Day): CheckIn[] =>
  checkIns.filter(({ day }) => day <= last && day > addDays(last, -WEEK))

const painMedian = (checkIns: readonly CheckIn[]): number | null =>
  median(checkIns.flatMap(({ pain }) => (pain === null ? [] : [pain])))

/** Median zone of each week back from `on`, from the first week that has any; a later week without any is null. */
function reachPath(checkIns: readonly CheckIn[], on: Day): (Reach | null)[] {
  const path: (Reach | null)[] = []
  for (let back = PATH_WEEKS - 1; back >= 0; back--) {
    const week = weekOf(checkIns, addDays(on, -WEEK * back))
    const middle = median(week.flatMap(({ reach }) => (reach === null ? [] : [rank(reach)])))
    if (middle === null && path.length === 0) continue
    path.push(middle === null ? null : reachAt(middle))
  }
  return path
}

function silentDays(checkIns: readonly CheckIn[], start: Day, on: Day): number {
  const last = checkIns.reduce<Day | null>((latest, { day }) => (latest && latest > day ? latest : day), null)
  return last === null ? Math.max(0, daysBetween(start, on) + 1) : daysBetween(last, on)
}

/** The latest of the worst days. */
function worstPain(week: readonly CheckIn[]): WeekFacts['pain']['worst'] {
  let worst: WeekFacts['pain']['worst'] = null
  for (const { pain, day } of week)
    if (pain !== null && (worst === null || pain >= worst.pain)) worst = { pain, day }
  return worst
}

// silence about the signs is never taken for a no
const saidNothingOfSigns = ({ signs, denied }: CheckIn): boolean =>
  signs.length === 0 && (denied === null || denied.length === 0)

const byWeight = (flags: readonly Flag[]): Flag[] =>
  [...flags].sort(
    (a, b) =>
      LEVELS.indexOf(b.level) - LEVELS.indexOf(a.level) || (a.day < b.day ? -1 : a.day > b.day ? 1 : 0),
  )

/** In the order of the ladders' numbers; a practice's own come last, by id. */
function rungFacts({ rungs, resting, lastRungs }: WeekExtra): RungFact[] {
  const number = (id: string): number => ladderOf(id)?.number ?? LADDERS.length + 1
  return Object.entries(rungs)
    .sort(([a], [b]) => number(a) - number(b) || (a < b ? -1 : 1))
    .map(([ladder, rung]) => {
      const known = ladderOf(ladder)
      const last = known === null ? (lastRungs?.[ladder] ?? null) : lastRung(known)
      return { ladder, rung, last, resting: resting.includes(ladder) }
    })
}

function firstDay(rule: RuleId, { flags, openSigns }: Assessment): Day | null {
  const days = rule === 'sign' ? openSigns.map(({ day }) => day) : []
  const flagged = flags.filter((flag) => flag.rule === rule).map(({ day }) => day)
  return [...days, ...flagged].sort()[0] ?? null
}
