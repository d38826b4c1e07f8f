import type { Care } from '../care.ts'
import { answered, type CheckIn } from '../checkin.ts'
import { addDays, type Day, daysBetween, daysFrom } from '../day.ts'
import type { LadderId, RungChange } from '../ladder/plan.ts'
import type { Reach } from '../reach.ts'
import type { Direction, Flag, History, HistoryDecision, Level, RuleId } from '../rules/assessment.ts'
import { careOf, type SignId } from '../signs/catalogue.ts'

/** `before`: earlier than the plan, so that no reply could be expected. */
export type DayState = 'answered' | 'no-reply' | 'before'

/** One date of the picture. */
export interface WeeksDay {
  readonly day: Day
  readonly state: DayState
  readonly pain: number | null
  readonly reach: Reach | null
  readonly sessions: number | null
  /** 0 on a day off; null where not known. */
  readonly planned: number | null
  /** Written after the day itself. */
  readonly filledLater: boolean
}

/** Something that happened on a date. */
export type Mark =
  | { readonly kind: 'sign'; readonly day: Day; readonly sign: SignId; readonly care: Care }
  | {
      readonly kind: 'signs-ended'
      readonly day: Day
      readonly signs: readonly SignId[]
      readonly how: 'cleared' | 'noted'
    }
  | { readonly kind: 'flag'; readonly day: Day; readonly rule: RuleId; readonly level: Level }
  | {
      readonly kind: 'decision'
      readonly day: Day
      readonly decision: HistoryDecision['decision']
      readonly ladder: LadderId | null
    }
  | {
      readonly kind: 'rungs'
      readonly day: Day
      readonly why: RungChange['why']
      /** All ladders that changed that day for this reason. */
      readonly ladders: readonly { readonly ladder: LadderId; readonly from: number; readonly to: number }[]
    }

/** A client's last weeks as the picture shows them. Survives JSON unchanged. */
export interface Weeks {
  readonly ref: string
  readonly first: Day
  readonly on: Day
  readonly direction: Direction
  readonly baseline: { readonly reach: Reach | null; readonly pain: number | null }
  /** Every date from `first` to `on`: whole weeks that end on `on`. */
  readonly days: readonly WeeksDay[]
  /** In order of day, at most 9. */
  readonly marks: readonly Mark[]
  /** Lesser marks that were left out to keep the picture readable. */
  readonly marksLeftOut: number
}

/** What happened to a client beside the check-ins. */
export interface WeeksLog {
  readonly ref: string
  readonly direction: Direction
  readonly baseline: Weeks['baseline']
  /** Every episode raised in the weeks shown, closed ones included. */
  readonly flags: readonly Pick<Flag, 'rule' | 'level' | 'day'>[]
  readonly rungChanges: readonly RungChange[]
}

const WEEK = 7
/** More lines under a picture are not read on a phone. */
const MOST_MARKS = 9

/**
 * Whole weeks that end on `on`: as many as the plan is old, at most `most` (1 or more).
 * Of marks the weightier and later ones are kept.
 */
export function weeksOf(history: History, log: WeeksLog, on: Day, most = 6): Weeks {
  const start = history.start ?? history.days[0]?.day ?? on
  const old = Math.ceil((daysBetween(start, on) + 1) / WEEK)
  const first = addDays(on, 1 - WEEK * Math.max(1, Math.min(most, old)))
  const checkIns = new Map(history.days.map(({ day, checkIn }) => [day, checkIn]))
  const shown = allMarks(history, log, start).filter(({ day }) => day >= first && day <= on)
  const kept = shown.toSorted((a, b) => weight(b) - weight(a) || compare(b.day, a.day)).slice(0, MOST_MARKS)
  return {
    ref: log.ref,
    first,
    on,
    direction: log.direction,
    baseline: log.baseline,
    days: daysFrom(first, on).map((day) => weeksDay(day, checkIns.get(day) ?? null, start)),
    marks: kept.sort((a, b) => compare(a.day, b.day) || weight(b) - weight(a)),
    marksLeftOut: shown.length - kept.length,
  }
}

const compare = (a: Day, b: Day): number => (a < b ? -1 : a > b ? 1 : 0)

function weeksDay(day: Day, checkIn: CheckIn | null, start: Day): WeeksDay {
  const given = checkIn !== null && answered(checkIn)
  return {
    day,
    state: given ? 'answered' : day < start ? 'before' : 'no-reply',
    pain: checkIn?.pain ?? null,
    reach: checkIn?.reach ?? null,
    sessions: checkIn?.sessions ?? null,
    planned: checkIn?.planned ?? null,
    filledLater: given && checkIn.filled > checkIn.day,
  }
}

function allMarks(history: History, log: WeeksLog, start: Day): Mark[] {
  // the `sign` rule and an advance both leave two traces of one event; one mark is enough
  const flags = log.flags.filter(({ rule }) => rule !== 'sign')
  const changes = log.rungChanges.filter(({ why, day }) => why !== 'plan' || day > start)
  const decisions = history.decisions.filter(
    ({ day, decision, ladder }) =>
      !changes.some(
        (c) => c.why === decision && c.ladder === ladder && Math.abs(daysBetween(day, c.day)) <= 1,
      ),
  )
  return [
    ...signMarks(history),
    ...flags.map(({ rule, level, day }): Mark => ({ kind: 'flag', day, rule, level })),
    ...decisions.map(({ day, decision, ladder }): Mark => ({ kind: 'decision', day, decision, ladder })),
    ...rungMarks(changes),
  ]
}

/** The first day of each open spell of a sign, and its end. What was known at screening is no event. */
function signMarks({ days, known }: History): Mark[] {
  const open = new Set<SignId>()
  const marks: Mark[] = []
  for (const { day, checkIn, cleared, noted } of days) {
    for (const sign of checkIn?.signs ?? []) {
      if (open.has(sign) || known.includes(sign)) continue
      open.add(sign)
      marks.push({ kind: 'sign', day, sign, care: careOf(sign) })
    }
    const ended = {
      cleared: cleared.filter((sign) => open.delete(sign)),
      noted: noted.filter((sign) => open.delete(sign)),
    }
    for (const how of ['cleared', 'noted'] as const)
      if (ended[how].length > 0) marks.push({ kind: 'signs-ended', day, signs: ended[how], how })
  }
  return marks
}

function rungMarks(changes: readonly RungChange[]): Mark[] {
  const groups = new Map<string, RungChange[]>()
  for (const change of changes) {
    const key = `${change.day} ${change.why}`
    groups.set(key, [...(groups.get(key) ?? []), change])
  }
  return [...groups.values()].map((group) => ({
    kind: 'rungs',
    day: group[0]!.day,
    why: group[0]!.why,
    ladders: group.map(({ ladder, from, to }) => ({ ladder, from, to })),
  }))
}

const LEVEL_WEIGHT: Readonly<Record<Level, number>> = {
  note: 1,
  hold: 4,
  'ease-back': 4,
  'same-day': 5,
  emergency: 5,
}
function weight(mark: Mark): number {
  if (mark.kind === 'sign') return mark.care === 'soon' ? 4 : 6
  if (mark.kind === 'signs-ended') return 5
  if (mark.kind === 'flag') return LEVEL_WEIGHT[mark.level]
  return mark.kind === 'rungs' && mark.why === 'plan' ? 2 : 3
}
