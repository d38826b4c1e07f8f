import { CARES } from '../care.ts'
import { answered, type CheckIn, type Side } from '../checkin.ts'
import { type Day, daysBetween } from '../day.ts'
import type { RungFact, Standing } from '../digest/facts.ts'
import type { Weeks } from '../digest/weeks.ts'
import type { RungChange } from '../ladder/plan.ts'
import { reachAt } from '../reach.ts'
import { percentDone, sessionCount } from '../rules/adherence.ts'
import type { Assessment, History } from '../rules/assessment.ts'
import { wilson } from '../trend/wilson.ts'
import type { ActivityRow, Event, ReportFacts, SignRow, ToldAtStart } from './facts.ts'
import { weekRows, zone } from './weeks.ts'

/** What the report is made of: the whole course, not its last weeks alone. */
export interface Course {
  readonly ref: string
  readonly standing: Standing
  readonly side: Side | null
  readonly made: Day
  readonly history: History
  /** Of the last day looked at. */
  readonly assessment: Assessment
  readonly told: ToldAtStart
  readonly signs: readonly SignRow[]
  /** Scores by name: those of the screening, then the later ones in order of day. */
  readonly activitiesFirst: Readonly<Record<string, number>>
  readonly activities: readonly { readonly day: Day; readonly scores: Readonly<Record<string, number>> }[]
  readonly decisions: readonly Extract<Event, { kind: 'decision' }>[]
  readonly rungChanges: readonly RungChange[]
  readonly stops: readonly Extract<Event, { kind: 'stop' }>[]
  readonly rungs: readonly RungFact[]
  readonly picture: Weeks
}

/** The facts of the report for a clinician. What the rules have counted is taken from the assessment. */
export function reportFacts(course: Course): ReportFacts {
  const { history, assessment } = course
  const { on, pain, reach } = assessment
  const begun = history.start ?? history.days[0]?.day ?? on
  const answers = history.days.flatMap(({ checkIn }) =>
    checkIn !== null && answered(checkIn) && checkIn.day <= on ? [checkIn] : [],
  )
  return {
    ref: course.ref,
    standing: course.standing,
    side: course.side,
    begun,
    on,
    made: course.made,
    told: course.told,
    reach: {
      baseline: reach.baseline === null ? null : reachAt(reach.baseline),
      now: zone(reach.median7),
      direction: assessment.direction,
    },
    pain: {
      baseline: pain.medianBaseline,
      now: pain.median7,
      change: pain.change,
      percent: pain.percent,
      meaningful: pain.meaningful,
    },
    adherence: adherence(answers),
    replies: replies(answers, begun, on),
    weeks: weekRows(answers, begun, on),
    signs: [...course.signs].sort(byWeight),
    activities: activities(course),
    events: events(course, begun),
    rungs: course.rungs,
    picture: course.picture,
  }
}

function adherence(answers: readonly CheckIn[]): ReportFacts['adherence'] {
  const count = sessionCount(answers)
  const interval = wilson(count.done, count.planned)
  return {
    done: count.done,
    planned: count.planned,
    percent: percentDone(count),
    low: interval && interval.low * 100,
    high: interval && interval.high * 100,
  }
}

function replies(answers: readonly CheckIn[], begun: Day, on: Day): ReportFacts['replies'] {
  const since = answers.filter(({ day }) => day >= begun)
  return {
    answered: since.length,
    days: Math.max(0, daysBetween(begun, on) + 1),
    later: since.filter(({ filled, day }) => filled > day).length,
    signsNotSaid: since.filter(({ signs, denied }) => signs.length === 0 && (denied?.length ?? 0) === 0)
      .length,
  }
}

const STATES: readonly SignRow['state'][] = ['open', 'asked', 'cleared', 'noted', 'denied']

/** What still stands first, then the graver, then the later. */
const byWeight = (a: SignRow, b: SignRow): number =>
  settled(a) - settled(b) ||
  CARES.indexOf(b.care) - CARES.indexOf(a.care) ||
  compare(b.day, a.day) ||
  STATES.indexOf(a.state) - STATES.indexOf(b.state)
const settled = ({ state }: SignRow): number => (state === 'open' || state === 'asked' ? 0 : 1)
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

function activities({ activitiesFirst, activities }: Course): ActivityRow[] {
  const names = [
    ...new Set([activitiesFirst, ...activities.map(({ scores }) => scores)].flatMap(Object.keys)),
  ]
  return names.sort().map((name) => {
    const later = activities.filter(({ scores }) => scores[name] !== undefined)
    const last = later.at(-1)
    const first = activitiesFirst[name] ?? later[0]!.scores[name]!
    return { name, first, last: last?.scores[name] ?? first, day: last?.day ?? null }
  })
}

/** An advance leaves two traces, the decision and the rung: the decision is enough. */
function events({ decisions, rungChanges, stops }: Course, begun: Day): Event[] {
  const groups = new Map<string, RungChange[]>()
  for (const change of rungChanges) {
    if (change.why === 'plan' && change.day <= begun) continue
    if (decisions.some((decision) => isOf(decision, change))) continue
    const key = `${change.day} ${change.why}`
    groups.set(key, [...(groups.get(key) ?? []), change])
  }
  const rungs = [...groups.values()].map(
    (group): Event => ({
      kind: 'rungs',
      day: group[0]!.day,
      why: group[0]!.why,
      ladders: group.map(({ ladder }) => ladder),
    }),
  )
  return [...decisions, ...rungs, ...stops].sort((a, b) => compare(a.day, b.day))
}

const isOf = (decision: Course['decisions'][number], change: RungChange): boolean =>
  decision.decision === change.why &&
  decision.ladder === change.ladder &&
  Math.abs(daysBetween(decision.day, change.day)) <= 1
