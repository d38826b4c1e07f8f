import type { Day } from '../day.ts'
import type { RuleId } from '../rules/assessment.ts'
import type { WeekFacts } from './facts.ts'

/** Why a client needs the coach, the most pressing first. */
const ATTENTION_REASONS = [
  'alert-open',
  'urgent',
  'spreading',
  'severe-pain',
  'refer',
  'parked',
  'soon-sign',
  'quiet',
  'worsening',
] as const
export type AttentionReason = (typeof ATTENTION_REASONS)[number]

export const ATTENTION_GROUPS = ['needs', 'move', 'rest'] as const
/** Who needs the coach, who can move on, the rest. */
export type AttentionGroup = (typeof ATTENTION_GROUPS)[number]

export interface Attention {
  readonly group: AttentionGroup
  /** Empty outside `needs`; otherwise the most pressing first, each with the day since when it has held. */
  readonly reasons: readonly { readonly reason: AttentionReason; readonly since: Day | null }[]
}

export interface RollCallEntry extends Attention {
  readonly facts: WeekFacts
}
export type RollCall = Readonly<Record<AttentionGroup, readonly RollCallEntry[]>>

const SPREADING: readonly RuleId[] = ['reach-spread', 'below-knee', 'regain']
const NAMED: readonly RuleId[] = [...SPREADING, 'pain-severe']

/** What one client's week asks of the coach. */
export function attention(facts: WeekFacts): Attention {
  const ended = facts.standing === 'discharged' || facts.standing === 'left'
  // whoever has ended is waited for no more, but a sign of theirs is
  const asked = ended ? (['alert-open', 'urgent', 'soon-sign'] as const) : ATTENTION_REASONS
  const reasons = asked.flatMap((reason) => {
    const found = FINDERS[reason](facts)
    return found === null ? [] : [{ reason, since: found.since }]
  })
  if (reasons.length > 0) return { group: 'needs', reasons }
  return { group: facts.proposal === 'advance' && facts.standing === 'active' ? 'move' : 'rest', reasons }
}

/** All clients by group; who needs the coach by how pressing it is, then for how long, the others by alias. */
export function rollCall(facts: readonly WeekFacts[]): RollCall {
  const entries = facts.map((facts) => ({ facts, ...attention(facts) })).sort(byPressure)
  const of = (group: AttentionGroup): RollCallEntry[] => entries.filter((entry) => entry.group === group)
  return { needs: of('needs'), move: of('move'), rest: of('rest') }
}

type Found = { readonly since: Day | null } | null
const since = (days: readonly Day[]): Found => (days.length === 0 ? null : { since: [...days].sort()[0]! })
const flagged = ({ flags }: WeekFacts, rules: readonly RuleId[]): Found =>
  since(flags.filter(({ rule }) => rules.includes(rule)).map(({ day }) => day))
const when = (holds: boolean, day: Day | null): Found => (holds ? { since: day } : null)

const firstUrgentDay = ({ signs }: WeekFacts): Day | null =>
  since(signs.filter(({ care }) => care !== 'soon').map(({ day }) => day))?.since ?? null

const FINDERS: Readonly<Record<AttentionReason, (facts: WeekFacts) => Found>> = {
  'alert-open': (facts) => when(facts.alertOpen, firstUrgentDay(facts)),
  urgent: (facts) => when(facts.urgentOpen, firstUrgentDay(facts)),
  spreading: (facts) => flagged(facts, SPREADING),
  'severe-pain': (facts) => flagged(facts, ['pain-severe']),
  refer: (facts) => when(facts.proposal === 'refer', null),
  parked: (facts) => when(facts.standing === 'parked', null),
  'soon-sign': ({ signs }) => since(signs.filter(({ care }) => care === 'soon').map(({ day }) => day)),
  // somebody on a pause is silent on purpose, and a locked or parked one is not prompted
  quiet: (facts) => (facts.standing === 'active' ? flagged(facts, ['quiet']) : null),
  worsening: ({ flags }) =>
    since(
      flags
        .filter(({ rule, level }) => level !== 'note' && rule !== 'sign' && !NAMED.includes(rule))
        .map(({ day }) => day),
    ),
}

function byPressure(a: RollCallEntry, b: RollCallEntry): number {
  const order = pressure(a) - pressure(b)
  if (order !== 0) return order
  const sinceA = a.reasons[0]?.since ?? a.facts.on
  const sinceB = b.reasons[0]?.since ?? b.facts.on
  if (a.group === 'needs' && sinceA !== sinceB) return sinceA < sinceB ? -1 : 1
  return a.facts.ref < b.facts.ref ? -1 : a.facts.ref > b.facts.ref ? 1 : 0
}

function pressure({ group, reasons }: RollCallEntry): number {
  const first = reasons[0]
  return first === undefined
    ? ATTENTION_REASONS.length + ATTENTION_GROUPS.indexOf(group)
    : ATTENTION_REASONS.indexOf(first.reason)
}
