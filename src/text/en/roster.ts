import type { Day } from '../../domain/day.ts'
import type { AttentionGroup, RollCallEntry } from '../../domain/digest/attention.ts'
import type { WeekFacts } from '../../domain/digest/facts.ts'
import { harmless } from '../harmless.ts'
import { date } from './dates.ts'
import { attentionWords, DIRECTION, takenWords } from './digest.ts'
import { ladderName } from './names.ts'
import { REACH } from './reach.ts'
import { words } from './words.ts'

const HEADING: Readonly<Record<AttentionGroup, string>> = {
  needs: '**Needs you**',
  move: '**Can move on**',
  rest: '**The others**',
}

/** "6/7 replies, calf, pain 4, steady": the week in a few words. */
function week({ replies, reach, pain }: WeekFacts): string {
  const zone = reach.path.at(-1) ?? null
  return [
    `${replies.answered}/${replies.days} replies`,
    zone === null ? '' : REACH[zone],
    pain.now === null ? '' : `pain ${pain.now}`,
    reach.direction === 'unclear' ? '' : DIRECTION[reach.direction].split(',')[0]!,
  ]
    .filter((part) => part !== '')
    .join(', ')
}

function said(entry: RollCallEntry): string {
  const { facts, group } = entry
  if (group === 'needs') return attentionWords(entry)
  const standing = facts.standing === 'active' ? '' : words.status(facts.standing)
  const planless = facts.standing === 'active' && facts.rungs.length === 0 ? 'no plan yet' : ''
  const step =
    group === 'move' && facts.ladder ? `next step on ${harmless(ladderName(facts.ladder), 30)}` : ''
  const begun = facts.rungs.length > 0 && !['discharged', 'left'].includes(facts.standing)
  return [step, standing, planless, begun ? week(facts) : '', ...takenWords(facts)].filter(Boolean).join('; ')
}

/** The roster that a coach asks for, in private. */
export const roster = {
  head: (
    counts: Readonly<Record<AttentionGroup, number>>,
    on: Day,
    page: { readonly number: number; readonly of: number },
  ): string => {
    const { needs, move, rest } = counts
    const pages = page.of > 1 ? ` · page ${page.number} of ${page.of}` : ''
    return `**Roster, ${date(on)}** · ${needs} ${needs === 1 ? 'needs' : 'need'} you, ${move} can move on, ${rest} besides${pages}`
  },
  heading: (group: AttentionGroup): string => HEADING[group],
  line: (entry: RollCallEntry): string =>
    `• **${harmless(entry.facts.ref)}**: ${said(entry) || 'nothing new'}`,
  previous: '◀ Previous',
  next: 'Next ▶',
  open: 'Open a client’s record',
  gone: 'There is no such client here any more. Run /roster again.',
}
