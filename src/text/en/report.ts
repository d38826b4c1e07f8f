import { isDay } from '../../domain/day.ts'
import type { ReportFacts, SignRow } from '../../domain/report/facts.ts'
import type { Item, ListBlock, Page, TableBlock } from '../../domain/report/page.ts'
import { DIRECTION } from './digest.ts'
import { screening } from './enrol.ts'
import { ladderName } from './names.ts'
import { REACH } from './reach.ts'
import { eventItem } from './report-events.ts'
import { count, fullDate, oneLine, who } from './report-words.ts'
import { SIGN_WORDS } from './signs.ts'
import { words } from './words.ts'

const NOT_ANSWERED = 'not answered'

/** Everything on the one page for a clinician, in words. */
export function reportPage(facts: ReportFacts): Page {
  return {
    title: 'Report for a clinician',
    name: oneLine(facts.ref, 36),
    made: `Made on ${fullDate(facts.made)}, for the days from ${fullDate(facts.begun)} to ${fullDate(facts.on)}`,
    notice: 'This is a record of self-reported check-ins and not a diagnosis.',
    left: [
      list('Client', about(facts)),
      list('Then and now', change(facts)),
      {
        ...list('Warning signs', signs(facts)),
        least: 8,
        more: (n) => `and ${n} more, earlier or less pressing: see the record`,
      },
      {
        ...list('Decisions and changes', events(facts)),
        drop: 'first',
        least: 4,
        more: (n) => `and ${n} earlier, see the record`,
      },
      list('Told before the plan', told(facts)),
    ],
    right: [
      { kind: 'picture', weeks: facts.picture },
      weeks(facts),
      list('Activities that matter, 0 easy to 10', activities(facts)),
    ],
    foot: FOOT,
  }
}

/** A list that is short by its nature: others give way before it does. */
const list = (title: string, items: readonly Item[]): ListBlock => ({
  kind: 'list',
  title,
  items,
  drop: 'last',
  least: items.length,
  more: (n) => `and ${n} more`,
})

const item = (lead: string, text: string, most = 2): Item => ({ lead, words: text, most })

function about({ side, standing, told, rungs, ...facts }: ReportFacts): Item[] {
  const age = told.age === null ? '' : `, ${told.age} years`
  const steps = rungs.map(
    ({ ladder, rung, last, resting }) =>
      `${oneLine(ladderName(ladder), 30)} ${last === null ? rung : `${rung} of ${last}`}${resting ? ' (resting)' : ''}`,
  )
  return [
    item('Side', `${side === null ? 'not known' : words.side(side)}${age}`),
    item('Episode began', onset(told.onset)),
    item('Plan since', `${fullDate(facts.begun)}; now ${words.status(standing)}`),
    item('Ladders (step)', steps.join(', ') || 'none', 3),
  ]
}

const onset = (given: string | null): string =>
  given === null ? NOT_ANSWERED : isDay(given) ? fullDate(given) : `“${oneLine(given, 100)}”`

const zone = (reach: ReportFacts['reach']['now']): string => (reach === null ? 'not known' : REACH[reach])
const known = (value: number | null): string => (value === null ? 'not known' : String(value))

function change({ reach, pain, adherence, replies }: ReportFacts): Item[] {
  const later =
    replies.later === 0 ? 'none filled in later' : `${replies.later} of them filled in after the day itself`
  const items = [
    item(
      'Reach',
      `${zone(reach.baseline)} at the start, ${zone(reach.now)} now: ${DIRECTION[reach.direction]}`,
    ),
    item(
      'Pain',
      `${known(pain.baseline)} at the start, ${known(pain.now)} now (median of 7 days)${changeWords(pain)}`,
      3,
    ),
    item('Sessions', sessions(adherence)),
    item('Replies', `${replies.answered} of ${count(replies.days, 'day')}; ${later}`),
  ]
  if (replies.signsNotSaid === 0) return items
  const days = count(replies.signsNotSaid, 'answered day')
  return [...items, item('Signs not said', `on ${days}, which is not the same as none`)]
}

function changeWords({ change, percent, meaningful }: ReportFacts['pain']): string {
  if (change === null) return ''
  if (change === 0) return ': no change'
  const share = percent === null ? '' : ` (${Math.abs(Math.round(percent))} %)`
  const size = `${count(Math.abs(change), 'point')}${share}`
  if (change > 0) return `: ${size} worse`
  if (meaningful === null) return `: ${size} better, too few answers to say whether it matters`
  return `: ${size} better, ${meaningful ? 'at least' : 'less than'} the least change that matters`
}

function sessions({ done, planned, percent, low, high }: ReportFacts['adherence']): string {
  if (planned === 0) return 'none planned on the days answered'
  const interval =
    low === null || high === null ? '' : `, 95 % interval ${Math.round(low)} to ${Math.round(high)} %`
  const share = percent === null ? '' : ` (${Math.round(percent)} %${interval})`
  return `${done} of ${planned} planned on the days answered${share}`
}

function signs({ signs }: ReportFacts): Item[] {
  if (signs.length === 0)
    return [{ words: 'None was told of. Nobody has examined for them; this rules nothing out.', most: 2 }]
  return signs.map((row) =>
    item(
      `${SIGN_WORDS[row.sign].short} (${row.care}), ${fullDate(row.day)}`,
      `${cameOf(row)}${row.words ? ` “${oneLine(row.words, 120)}”` : ''}`,
      4,
    ),
  )
}

function cameOf({ state, ended, by }: SignRow): string {
  const on = ended === null ? '' : ` on ${fullDate(ended)}`
  if (state === 'open') return 'Still open.'
  if (state === 'asked') return 'Asked about, no answer yet.'
  if (state === 'denied') return `Asked about, and answered with no${on}.`
  const whom = by === null ? '' : ` (${who(by)})`
  return state === 'cleared' ? `Cleared${on}${whom}.` : `Noted by the coach${on}.`
}

function told({ told }: ReportFacts): Item[] {
  const named = (labels: Readonly<Record<string, string>>, id: string | null): string =>
    id === null ? NOT_ANSWERED : (labels[id] ?? oneLine(id, 60)).toLowerCase()
  const risks =
    told.risks === null
      ? NOT_ANSWERED
      : told.risks.map((risk) => named(screening.risk, risk)).join(', ') || 'none of those asked'
  return [
    item('Risks', risks, 3),
    item(
      'Earlier',
      `${named(screening.earlier, told.earlier)}; seen by a clinician: ${named(screening.seen, told.seen)}`,
    ),
    item('Old and known', told.known.map((sign) => SIGN_WORDS[sign].short).join(', ') || 'nothing named', 3),
    item('Eased by', named(screening.eases, told.eases)),
  ]
}

function activities({ activities, told }: ReportFacts): Item[] {
  const scores = activities.map(({ name, first, last, day }) =>
    item(
      oneLine(name, 60),
      day === null
        ? `${first} at the start, not asked since`
        : `${first} at the start, ${last} on ${fullDate(day)}`,
    ),
  )
  const lift = told.lift === null ? [] : [item('Lift wanted back', `“${oneLine(told.lift, 100)}”`)]
  if (scores.length + lift.length === 0) return [{ words: 'None named.', most: 1 }]
  return [...scores, ...lift]
}

function weeks({ weeks }: ReportFacts): TableBlock {
  const two = (middle: string | null, far: string | null): string =>
    middle === null ? '–' : `${middle} (${far})`
  return {
    kind: 'table',
    title: 'Week by week: median (farthest, worst)',
    columns: [0.15, 0.34, 0.14, 0.15, 0.22],
    head: ['from', 'reach', 'pain', 'sessions', 'replies'],
    rows: weeks.map(({ first, reach, farthest, pain, worst, sessions, replies }) => [
      fullDate(first, false),
      two(reach && REACH[reach], farthest && REACH[farthest]),
      two(pain === null ? null : String(pain), String(worst)),
      sessions.planned === 0 ? '–' : `${sessions.done}/${sessions.planned}`,
      `${replies.answered}/${replies.days}${replies.later === 0 ? '' : ` (${replies.later} later)`}`,
    ]),
    drop: 'first',
    least: 6,
    more: (n) => `${count(n, 'earlier week')}, see the record`,
  }
}

function events({ events }: ReportFacts): Item[] {
  return events.length === 0 ? [{ words: 'None yet.', most: 1 }] : events.map(eventItem)
}

const FOOT: readonly string[] = [
  'Cautions. Everything here was told by the client, in a line or a form; nobody examined the client for it. Reach is the farthest point from the spine at which symptoms were felt since the last check-in; pain is the worst since then, 0 to 10. Days filled in later rest on memory. A sign that was denied, or never told of, rules nothing out: single signs are found in 0.19 to 0.43 of those in whom imaging shows the cause (Dionne 2019, Musculoskelet Sci Pract 42:125).',
  'Least changes that matter. Pain: 2 points and 30 % of the start (Ostelo 2008, Spine 33:90; Farrar 2001, Pain 94:149); a single answer varies by as much as 2 points (Childs 2005, Spine 30:1331). Reach: one zone, common practice. Interval: Wilson score (Newcombe 1998, Stat Med 17:857). Days filled in later: Stone 2003, Control Clin Trials 24:182.',
]

/** The message with the report, and what is said around it. */
export const report = {
  page: reportPage,
  message: (ref: string): string =>
    `**Report for a clinician: ${ref}**\nOne page, as PDF and as a picture. It holds health information: hand it over only where ${ref} agrees.`,
  alt: (facts: ReportFacts): string => alt(reportPage(facts)),
  button: 'Report for a clinician',
  posted: 'The report is on its way to the coach channel.',
}

/** The page as text, in its order, as far as a description of a picture may go. */
const alt = ({ title, name, made, notice, left }: Page): string =>
  [
    `${title}: ${name}. ${made}. ${notice} The same facts stand in the PDF, as text.`,
    ...left.flatMap((block) =>
      block.kind === 'list'
        ? [
            `${block.title}: ${block.items.map(({ lead, words }) => `${lead ? `${lead}: ` : ''}${words}`).join('; ')}`,
          ]
        : [],
    ),
  ].join('\n')
