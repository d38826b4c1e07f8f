import type { Care } from '../care.ts'
import { addDays, type Day, daysBetween } from '../day.ts'
import type { LadderId, RungChange } from '../ladder/plan.ts'
import type {
  Figures,
  Flag,
  History,
  HistoryDay,
  HistoryDecision,
  Level,
  RuleId,
} from '../rules/assessment.ts'
import { openSigns } from '../rules/open-signs.ts'
import type { SignId } from '../signs/catalogue.ts'

/** Something that happened on a date. */
export type Mark =
  | { readonly kind: 'sign'; readonly day: Day; readonly sign: SignId; readonly care: Care }
  | {
      readonly kind: 'signs-ended'
      readonly day: Day
      readonly signs: readonly SignId[]
      readonly how: 'cleared' | 'noted'
    }
  | {
      readonly kind: 'flag'
      readonly day: Day
      readonly rule: RuleId
      readonly level: Level
      readonly figures: Figures
    }
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

/** What happened to a client beside the check-ins. */
export interface MarksLog {
  /** Every episode raised in the weeks shown, closed ones included. */
  readonly flags: readonly Omit<Flag, 'source'>[]
  readonly rungChanges: readonly RungChange[]
}

export const compareDays = (a: Day, b: Day): number => (a < b ? -1 : a > b ? 1 : 0)

/** All marks from `first` to `on`, in no order. */
export function marksOf(history: History, log: MarksLog, first: Day, on: Day): Mark[] {
  const start = history.start ?? history.days[0]?.day ?? on
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
    ...signMarks(history, first),
    ...flags.map(({ rule, level, day, figures }): Mark => ({ kind: 'flag', day, rule, level, figures })),
    ...decisions.map(({ day, decision, ladder }): Mark => ({ kind: 'decision', day, decision, ladder })),
    ...rungMarks(changes),
  ].filter(({ day }) => day >= first && day <= on)
}

/** The day on which each sign opens and the day on which it ends, as the rules see it. */
function signMarks(history: History, first: Day): Mark[] {
  return history.days.flatMap(({ day, checkIn, cleared, noted }): Mark[] => {
    if (day < first || (checkIn === null && cleared.length + noted.length === 0)) return []
    const before = openSigns(history, addDays(day, -1))
    // what is said and ended on one day leaves its two marks as well
    const said = openSigns(
      { ...history, days: history.days.map((d) => (d.day === day ? unended(d) : d)) },
      day,
    )
    const after = openSigns(history, day).map(({ sign }) => sign)
    const begun = said.filter(({ sign }) => !before.some((open) => open.sign === sign))
    const ended = said.map(({ sign }) => sign).filter((sign) => !after.includes(sign))
    return [
      ...begun.map(({ sign, care }): Mark => ({ kind: 'sign', day, sign, care })),
      ...endMark(
        day,
        'cleared',
        ended.filter((sign) => cleared.includes(sign)),
      ),
      ...endMark(
        day,
        'noted',
        ended.filter((sign) => !cleared.includes(sign)),
      ),
    ]
  })
}

const unended = (day: HistoryDay): HistoryDay => ({ ...day, cleared: [], noted: [] })
const endMark = (day: Day, how: 'cleared' | 'noted', signs: readonly SignId[]): Mark[] =>
  signs.length === 0 ? [] : [{ kind: 'signs-ended', day, signs, how }]

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
/** Higher is kept before lower where there are too many. */
export function weight(mark: Mark): number {
  if (mark.kind === 'sign') return mark.care === 'soon' ? 4 : 6
  if (mark.kind === 'signs-ended') return 5
  if (mark.kind === 'flag') return LEVEL_WEIGHT[mark.level]
  return mark.kind === 'rungs' && mark.why === 'plan' ? 2 : 3
}
