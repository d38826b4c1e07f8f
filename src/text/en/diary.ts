import type { Problem, Unreadable } from '../../domain/history-csv/diary.ts'
import { REACHES, reachAt } from '../../domain/reach.ts'
import type { Assessment, Flag } from '../../domain/rules/assessment.ts'
import type { ReplayDay } from '../../domain/rules/replay.ts'
import { SIGN_IDS } from '../../domain/signs/catalogue.ts'
import { REACH } from './reach.ts'
import { why } from './rules.ts'

const SIGNS = SIGN_IDS.join(', ')

/** What a cell may hold, by what was wrong. */
const ALLOWED: Readonly<Record<Problem['what'], string>> = {
  date: 'date must be a real date like 2026-03-02',
  sessions: 'sessions must be a whole number from 0 to two more than planned',
  planned: 'planned must be a whole number from 0 to 6',
  reach: `reach must be one of ${REACHES.join(', ')}`,
  pain: 'pain must be a whole number from 0 to 10',
  signs: `signs must be empty, none, or ids with ";" between them (${SIGNS})`,
  note: 'the note cannot be read',
  rungs: 'rungs must look like "extension:2;glide:1", each ladder once and within its rungs',
  comfort: 'comfort must be yes or no',
  settled: 'settled must be yes or no',
  filled: 'filled must be a date, not before the day itself',
  cleared: `cleared must be ids with ";" between them (${SIGNS})`,
  noted: `noted must be ids with ";" between them (${SIGNS})`,
  side: 'side must be left, right or both',
  baseline: 'baseline must be a zone and a pain from 0 to 10, like "calf 6"',
  start: 'start must be a date like 2026-03-02',
  known: `known must be ids with ";" between them (${SIGNS})`,
  decisions:
    'decisions must be a date, advance, hold, ease-back or refer and, where it is about one, a ladder, with ";" between them',
  resting: 'resting must be a date and a ladder, with ";" between them, like "2026-03-09 glide"',
  gate: 'gate must be five numbers: check-ins, days, share from 0 to 1, pain at most, days apart, like "5 5 0.8 5 2"',
  late: 'late must be dates with ";" between them, or none',
  cells: 'there are more cells than columns; put a text with commas in quotes',
  quote: 'a quote is opened and never closed',
  entry: 'each entry of days must be an object with a date',
}

const UNREADABLE: Readonly<Record<Unreadable, string>> = {
  empty: 'The file is empty. It needs a header line: date,sessions,planned,reach,pain,signs,note',
  'no-header':
    'The first line must be a header with a column "date", like: date,sessions,planned,reach,pain,signs,note',
  'not-commas':
    'The columns must be parted by commas, not by ";" or tabs: save the file as CSV with commas (signs keep their ";")',
  'twice-in-header': 'A column stands twice in the header',
  'not-json': 'The file begins like JSON but cannot be read as such',
  'no-days': 'The JSON needs an object with a list "days", each with a date',
}

const short = (value: string): string => (value.length > 40 ? `${value.slice(0, 40)}…` : value)

/** One line about what cannot be right, where, and what to write instead. */
export function problemLine({ line, what, value, lostSigns }: Problem, form: 'csv' | 'json'): string {
  const place = form === 'csv' ? `line ${line}` : line === 0 ? 'in the facts' : `entry ${line} of days`
  const got = what === 'cells' || what === 'quote' ? '' : `, got "${short(value)}"`
  const lost = lostSigns
    ? ` This row names urgent signs (${lostSigns.join(', ')}) that cannot be placed on a day: put its date right first.`
    : ''
  return `${place}: ${ALLOWED[what]}${got}.${lost}`
}

export const unreadableLine = (why: Unreadable, detail: string): string =>
  `${UNREADABLE[why]}${detail === '' ? '' : ` (${short(detail)})`}.`

export const diaryTexts = {
  oneFile: 'Name one file: a diary as CSV or JSON, or "-" for standard input.',
  noFile: (file: string): string => `There is no file "${file}" that can be read. Check the name.`,
  badOn: (on: string): string => `--on must be a real date like 2026-03-02, got "${on}".`,
  badOption: (message: string): string => `${message}. See --help.`,
  noDay: 'The file holds no day that can be read. Add a row, or mend those named above.',
}

const signed = (value: number): string => (value > 0 ? `+${value}` : String(value))
const one = (value: number): string => String(Math.round(value * 10) / 10)

function painLine({
  median7,
  medianBaseline,
  change,
  percent,
  meaningful,
  slopePerWeek,
  ci,
  n,
}: Assessment['pain']) {
  if (median7 === null) return 'Pain: nothing recorded in the last 7 days.'
  const share = percent === null ? '' : ` (${signed(Math.round(percent))} %)`
  const matters = meaningful === true ? ', enough to matter' : ''
  const against =
    change === null ? '' : `, baseline ${one(medianBaseline!)}, change ${signed(change)}${share}${matters}`
  const slope =
    slopePerWeek === null || ci === null
      ? ''
      : `; ${signed(Number(one(slopePerWeek)))} a week (${one(ci[0])} to ${one(ci[1])}) from ${n} answers`
  return `Pain: weekly median ${one(median7)}${against}${slope}.`
}

function reachLine({ median7, baseline, path }: Assessment['reach']): string {
  if (median7 === null) return 'Reach: nothing recorded in the last 7 days.'
  const began = baseline === null ? '' : `, baseline ${REACH[reachAt(baseline)]}`
  return `Reach: ${REACH[reachAt(median7)]}${began}; week by week ${path.map((zone) => REACH[zone]).join(', ')}.`
}

function sessionsLine({ done, planned, percent, low, high, replies, days }: Assessment['adherence']): string {
  const share =
    percent === null ? '' : ` (${Math.round(percent)} %, ${Math.round(low ?? 0)}-${Math.round(high ?? 0)} %)`
  return `Sessions: ${done} of ${planned} on the days answered${share}; replies ${replies} of ${days} days.`
}

const flagLine = (flag: Flag): string =>
  `- ${flag.rule} (${flag.level}, since ${flag.day}): ${why(flag)} [${flag.source}]`

/** The assessment in a few lines of words. */
export function assessmentLines(a: Assessment): string[] {
  const reasons = a.reasons.length > 0 ? ` because of ${a.reasons.join(', ')}` : ''
  const about = a.ladder === null ? '' : ` (${a.ladder})`
  return [
    `${a.on}: ${a.direction}. Proposal: ${a.proposal}${about}${reasons}.`,
    painLine(a.pain),
    reachLine(a.reach),
    sessionsLine(a.adherence),
    ...(a.flags.length > 0 ? ['Open:', ...a.flags.map(flagLine)] : ['No rule stands out.']),
    ...(a.askComfort ? ['To ask: does this rung feel comfortable?'] : []),
    ...(a.askSettled ? ['To ask: is it back to how it was before?'] : []),
  ]
}

/** One day of a replay in words; empty where nothing changed. */
export function replayLines({ day, raised, closed, proposal }: ReplayDay, before: string): string[] {
  if (raised.length === 0 && closed.length === 0 && proposal === before) return []
  const over = closed.length > 0 ? `; over: ${closed.join(', ')}` : ''
  return [`${day}: proposal ${proposal}${over}`, ...raised.map((flag) => `  ${flagLine(flag)}`)]
}

/** What `ebb import` says of a past diary. */
export const importTexts = {
  noConsent: (ref: string): string =>
    `${ref} has not agreed to anything being kept, so no diary can be taken in. Invite them first.`,
  notTaken: ({ line, day, why }: { line: number; day: string; why: keyof typeof NOT_TAKEN }): string =>
    `line ${line}: ${day} ${NOT_TAKEN[why]}.`,
  signs: ({ line, day, signs }: { line: number; day: string; signs: readonly string[] }): string =>
    `line ${line}: ${day} names ${signs.join(', ')}: no alert is raised for a past day. Ask the client whether it is still there or has been looked at.`,
  outcome: ({
    days,
    replaced,
    bad,
    written,
    dry,
  }: {
    days: readonly string[]
    replaced: number
    bad: number
    written: boolean
    dry: boolean
  }): string => {
    const span = days.length === 0 ? '' : `, ${days[0]} to ${days.at(-1)}`
    const what = `${days.length} ${days.length === 1 ? 'day' : 'days'}${span}${replaced > 0 ? ` (${replaced} replaced)` : ''}`
    const left = bad > 0 ? `; ${bad} ${bad === 1 ? 'line' : 'lines'} cannot be taken` : ''
    if (written) return `Taken: ${what}${left}.`
    if (dry) return `Would be taken: ${what}${left}. Nothing was changed.`
    if (bad === 0) return 'The file holds no day to take. Nothing was changed.'
    return `Nothing was changed: mend the lines named${days.length > 0 ? `, or take the other ${what} with --partly` : ''}.`
  },
}

const NOT_TAKEN = {
  exists: 'is there already; to put it right by the file, use --replace',
  future: 'lies in the future',
  twice: 'stands twice in the file; keep one line of it',
  nothing: 'holds no answer',
} as const
