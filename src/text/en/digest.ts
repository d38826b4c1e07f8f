import type { Day } from '../../domain/day.ts'
import {
  type AttentionReason,
  attention,
  type RollCall,
  type RollCallEntry,
} from '../../domain/digest/attention.ts'
import type { RungFact, WeekFacts } from '../../domain/digest/facts.ts'
import type { Direction, Flag, RuleId } from '../../domain/rules/assessment.ts'
import { harmless } from '../harmless.ts'
import { cutLines, paged, rows } from '../lines.ts'
import { date } from './dates.ts'
import { inWords, ladderName } from './names.ts'
import { REACH } from './reach.ts'
import { SIGN_WORDS } from './signs.ts'

const LIST_MOST = 8

const dates = (days: readonly Day[]): string => listed(days.map(date))
const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`

export const DIRECTION: Readonly<Record<Direction, string>> = {
  centralising: 'centralising, toward the back',
  peripheralising: 'peripheralising, away from the back',
  steady: 'steady',
  unclear: 'direction unclear',
}
export const RULE: Readonly<Record<RuleId, string>> = {
  sign: 'warning sign open',
  'reach-spread': 'reach moving away from the back',
  'below-knee': 'first day below the knee',
  'pain-up': 'pain above the usual level',
  'pain-severe': 'pain 8 or more twice in a row',
  flare: 'flare after sessions',
  'trend-pain': 'pain has a trend over 28 days',
  'trend-reach': 'reach has a trend over 28 days',
  meaningful: 'better by what matters',
  adherence: 'under 60 % of sessions done',
  quiet: 'no replies',
  plateau: 'no change that matters in six weeks',
  gate: 'gate to the next rung met',
  regain: 'below the knee again',
}
const REASON: Readonly<Record<Exclude<AttentionReason, 'quiet'>, string>> = {
  'alert-open': 'nobody has taken up the alert',
  urgent: 'urgent sign open',
  spreading: 'symptoms moving away from the back',
  'severe-pain': 'severe pain',
  refer: 'referral proposed',
  parked: "a risk answer waits for a clinician's word",
  'soon-sign': 'a sign to have looked at in the next days',
  worsening: 'a worsening to look at',
}
const BARRIER: Readonly<Record<string, string>> = {
  time: 'time',
  pain: 'pain',
  unsure: 'unsure how',
  'no-kit': 'no kit',
  other: 'something else',
}

const listed = (items: readonly string[]): string =>
  items.length > LIST_MOST
    ? `${items.slice(0, LIST_MOST).join(', ')} and ${items.length - LIST_MOST} more`
    : items.join(', ')
/** One client's week for the coach's channel, at most 1,800 characters, facts in the order a coach scans them. */
export function digestCard(facts: WeekFacts): string {
  const lines = [
    `**${harmless(facts.ref)}** · week ${facts.week}, ${date(facts.first)} to ${date(facts.on)}${standing(facts)}`,
    needs(facts),
    signs(facts),
    `Replies ${facts.replies.answered}/${facts.replies.days} · ${sessions(facts)}`,
    reach(facts),
    pain(facts),
    facts.flags.length === 0 ? '' : `Flags: ${listed(facts.flags.map(flag))}`,
    facts.rungs.length === 0 ? '' : `Rungs: ${listed(facts.rungs.map(rung))}`,
    facts.barrier === null ? '' : `In the way: ${BARRIER[facts.barrier] ?? harmless(facts.barrier, 200)}`,
    facts.filledLater.length === 0 ? '' : `Filled in later: ${dates(facts.filledLater)}`,
    facts.signsNotSaid.length === 0
      ? ''
      : `Warning signs not said (which is not "none"): ${dates(facts.signsNotSaid)}`,
    proposal(facts),
  ]
  return cutLines(lines.filter((line) => line !== ''))
}

const standing = (facts: WeekFacts): string => (facts.standing === 'active' ? '' : ` · ${facts.standing}`)

function needs(facts: WeekFacts): string {
  const { group } = attention(facts)
  if (group === 'needs') return `**Needs you:** ${attentionWords({ facts, ...attention(facts) })}`
  return group === 'move' ? '**Can move on**' : ''
}

function signs({ signs, cleared, urgentOpen }: WeekFacts): string {
  const open = signs.map(({ sign, care, day }) => `${SIGN_WORDS[sign].short} (${care}) since ${date(day)}`)
  const stopped = urgentOpen ? "Drills are stopped until a clinician's clearance is recorded." : ''
  const past = cleared.map(
    (one) =>
      `${SIGN_WORDS[one.sign].short} (${one.care}) from ${date(one.day)}, cleared ${date(one.cleared)}`,
  )
  return [
    open.length === 0 ? '' : `Signs open: ${listed(open)}.`,
    past.length === 0 ? '' : `Signs cleared: ${listed(past)}.`,
    stopped,
  ]
    .filter(Boolean)
    .join(' ')
}

function sessions({ replies, sessions: { done, planned, percent, low, high } }: WeekFacts): string {
  if (replies.answered === 0) return 'sessions not known'
  if (planned === 0)
    return done === 0 ? 'no sessions planned on the days answered' : `sessions ${done}, none planned`
  const shares = percent === null ? '' : `${Math.round(percent)} %`
  const interval = low === null || high === null ? '' : `, likely ${Math.round(low)}-${Math.round(high)} %`
  return `sessions ${done}/${planned} of the days answered${shares && ` (${shares}${interval})`}`
}

function reach({ reach: { path, direction, baseline } }: WeekFacts): string {
  const weeks = path.map((zone) => (zone === null ? 'no answer' : REACH[zone])).join(', ')
  const from = baseline === null ? '' : ` (baseline ${REACH[baseline]})`
  return `Reach week by week${from}: ${weeks || 'no answer'}: ${DIRECTION[direction]}`
}

function pain({ pain }: WeekFacts): string {
  const known = (value: number | null): string => (value === null ? 'not known' : String(value))
  const medians = `${known(pain.now)} now, ${known(pain.weekAgo)} a week ago, ${known(pain.baseline)} at baseline`
  const worst = pain.worst === null ? '' : `; worst ${pain.worst.pain} on ${date(pain.worst.day)}`
  return `Pain, median of 7 days: ${medians}${change(pain)}${worst}`
}

function change({ change, percent, meaningful }: WeekFacts['pain']): string {
  if (change === null) return ''
  if (change === 0) return ', no change'
  const share = percent === null ? '' : ` (${Math.abs(Math.round(percent))} %)`
  const size = `${count(Math.abs(change), 'point')}${share} ${change < 0 ? 'better' : 'worse'}`
  if (change > 0) return `, ${size}`
  if (meaningful === null) return `, ${size}: too few answers to say whether it matters`
  return `, ${size}: ${meaningful ? 'enough to matter' : 'less than matters'} (2 points and 30 %)`
}

/** What a rule found, in a few words. */
export function flagWords({ rule, figures }: Pick<Flag, 'rule' | 'figures'>): string {
  if (rule === 'trend-pain') return `pain ${figures.word} over 28 days`
  if (rule === 'trend-reach') return `reach ${figures.word} over 28 days`
  if (rule === 'pain-up' && figures.centralising === true) return 'pain up while the reach draws in'
  if (rule !== 'meaningful') return RULE[rule]
  const better = [...('painTo' in figures ? ['pain'] : []), ...('reachTo' in figures ? ['reach'] : [])]
  return `${better.join(' and ')} better by what matters`
}

const flag = ({ rule, level, day, figures }: Flag): string =>
  `${flagWords({ rule, figures })} (${level === 'note' ? '' : `${inWords(level)}, `}since ${date(day)})`
const rung = ({ ladder, rung, last, resting }: RungFact): string =>
  `${harmless(ladderName(ladder), 30)} ${last === null ? rung : `${rung}/${last}`}${resting ? ' (resting)' : ''}`

function proposal({ proposal, ladder, reasons }: WeekFacts): string {
  if (proposal === 'none') return 'Proposal: none'
  const said = inWords(proposal)
  const what = ladder === null ? said : `${said}, ${harmless(ladderName(ladder), 30)}`
  const because = reasons.map(({ rule, day }) => RULE[rule] + (day === null ? '' : ` since ${date(day)}`))
  return `**Proposal: ${what}**${because.length === 0 ? '' : `, because of ${listed(because)}`}`
}

/** Why a client needs the coach, and who has the alert where somebody does. */
export function attentionWords({ facts, reasons }: RollCallEntry): string {
  const words = reasons.map(({ reason, since }) => {
    if (reason === 'quiet') return `no reply for ${count(facts.silentDays, 'day')}`
    const word = reason === 'alert-open' ? 'of' : 'since'
    return REASON[reason] + (since === null ? '' : ` ${word} ${date(since)}`)
  })
  return [...words, ...takenWords(facts)].join('; ')
}

export const takenWords = ({ taken }: WeekFacts): string[] =>
  taken === null ? [] : [`${taken.by} has it since ${date(taken.day)} ${taken.time}`]

/** The line of counts, then names by group, in messages of at most 1,800 characters (one, for most practices). */
export function rollCallText({ needs, move, rest }: RollCall, on: Day): string[] {
  const all = needs.length + move.length + rest.length
  if (all === 0) return [`**Roll-call, ${date(on)}** · no clients at present`]
  const head =
    `**Roll-call, ${date(on)}** · ${count(all, 'client')}: ` +
    `${needs.length} ${needs.length === 1 ? 'needs' : 'need'} you, ${move.length} can move on, ${rest.length} besides`
  const lines = [
    head,
    ...(needs.length === 0 ? [] : ['**Needs you**', ...needs.map(waiting)]),
    ...(move.length === 0 ? [] : ['**Can move on**', ...rows(move.map(ready))]),
    ...(rest.length === 0 ? [] : ['**The others**', ...rows(rest.map(other))]),
  ]
  return paged(lines)
}

const waiting = (entry: RollCallEntry): string => `• ${harmless(entry.facts.ref)}: ${attentionWords(entry)}`
const ready = ({ facts: { ref, ladder } }: RollCallEntry): string =>
  harmless(ref) + (ladder === null ? '' : ` (${harmless(ladderName(ladder), 30)})`)
const other = ({ facts: { ref, standing } }: RollCallEntry): string =>
  harmless(ref) + (standing === 'active' ? '' : ` (${standing})`)
