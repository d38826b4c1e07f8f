import type { Care } from '../../domain/care.ts'
import type { Day } from '../../domain/day.ts'
import { harmless } from '../harmless.ts'
import { date } from './dates.ts'
import { ladderName } from './names.ts'

const VIA: Readonly<Record<string, string>> = {
  edit: 'changed to ',
  deleted: 'message taken back',
  import: 'imported ',
}

/** What a coach reads of one client's week, in private. */
export const record = {
  head: (facts: {
    readonly ref: string
    readonly status: string
    readonly week: string
    readonly first: Day
    readonly last: Day
    /** Week of the plan, from 1; null before it. */
    readonly planWeek: number | null
    readonly part: { readonly number: number; readonly of: number }
  }): string => {
    const { ref, status, week, first, last, planWeek, part } = facts
    const plan = planWeek === null ? '' : `, week ${planWeek} of the plan`
    const parts = part.of > 1 ? ` · part ${part.number} of ${part.of}` : ''
    return `**${harmless(ref)}** · ${status} · ${week}, ${date(first)} to ${date(last)}${plan}${parts}`
  },
  inCharge: (coach: string): string => `In charge: ${coach}`,
  alert: (facts: {
    readonly opened: string
    readonly signs: readonly string[]
    readonly takenBy: string | null
    readonly takenAt: string
    readonly had: readonly { readonly by: string; readonly at: string }[]
    readonly outcome: string | null
    readonly closed: string | null
  }): string => {
    const { opened, signs, takenBy, takenAt, had, outcome, closed } = facts
    const hands = had.map(({ by, at }) => `${by} since ${at}`)
    return [
      `Alert of ${opened}${signs.length > 0 ? ` (${signs.join('; ')})` : ''}`,
      takenBy === null ? 'nobody has taken it up' : `${takenBy} has had it since ${takenAt}`,
      hands.length > 0 ? `before: ${hands.join(', then ')}` : '',
      closed === null ? 'open' : `closed ${closed}${outcome ? `: ${outcome}` : ''}`,
    ]
      .filter((part) => part !== '')
      .join('; ')
  },
  day: (day: Day, values: string, more: readonly string[]): string =>
    `**${date(day)}** ${[values || 'nothing written', ...more].join('; ')}`,
  noReply: (day: Day): string => `**${date(day)}** no check-in`,
  later: (on: Day): string => `filled in later, ${date(on)}`,
  signsDenied: 'signs: none',
  signsNotSaid: 'signs not said',
  version: (facts: {
    readonly at: string
    readonly via: string
    /** Null where the practice keeps the client's own words out. */
    readonly words: string | null
    readonly later: boolean
  }): string => {
    const { at, via, words, later } = facts
    const said = words ? `“${harmless(words, 200)}”` : ''
    return `  ${at} ${VIA[via] ?? ''}${said || (VIA[via] ? '' : 'answered')}${later ? ' (filled in later)' : ''}`
  },
  sign: (short: string, care: Care, day: Day, end: string | null): string =>
    `Sign: ${short} (${care}), ${date(day)}${end === null ? ': open' : `: ${end}`}`,
  signEnd: {
    asked: 'asked, not answered yet',
    open: 'open',
    denied: 'denied when asked',
    cleared: 'cleared',
    noted: 'noted',
  } as Readonly<Record<string, string>>,
  ended: (how: string, by: string, on: string): string => `${how} ${on}${by ? ` (${harmless(by, 80)})` : ''}`,
  decision: (facts: {
    readonly at: string
    readonly decision: string
    readonly ladder: string | null
    readonly by: string
    readonly reason: string
  }): string => {
    const { at, decision, ladder, by, reason } = facts
    const what = ladder === null ? decision : `${decision}, ${ladderName(ladder)}`
    return `Decision ${at}: ${what}, by ${by}${reason ? `: ${harmless(reason, 300)}` : ''}`
  },
  step: (day: Day, ladder: string, from: number, to: number): string =>
    `Step ${date(day)}: ${ladderName(ladder)} ${from} → ${to}`,
  flag: (day: Day, words: string): string => `Flag ${date(day)}: ${words}`,
  notes: '**Notes of the coaches** (clients never see them)',
  note: (at: string, by: string, text: string): string => `${at}, ${by}: ${harmless(text, 800)}`,
  before: '◀ Week before',
  after: 'Week after ▶',
  more: 'More of this week',
  badWeek: (text: string): string =>
    `“${harmless(text, 40)}” is no week. Write it like 2026-W12, or as a date like 2026-03-16.`,
  noWeek: (ref: string, week: string): string =>
    `${harmless(ref)} was not here in ${week}. Nothing is kept of that week.`,
}
