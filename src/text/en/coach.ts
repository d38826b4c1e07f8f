import type { Care } from '../../domain/care.ts'
import type { Day } from '../../domain/day.ts'
import type { Direction, Proposal } from '../../domain/rules/assessment.ts'
import { harmless } from '../harmless.ts'
import { date } from './dates.ts'
import { DIRECTION } from './digest.ts'
import { ladderName } from './names.ts'
import { urgent } from './urgent.ts'

const name = (ref: string): string => `**${harmless(ref)}**`
const steps = (moves: readonly { ladder: string; from: number; to: number }[]): string =>
  moves.map(({ ladder, from, to }) => `${ladderName(ladder)} ${from} → ${to}`).join(', ')

const ago = (minutes: number): string =>
  minutes < 120 ? `${minutes} minutes` : `${Math.round(minutes / 60)} hours`

const CARE: Readonly<Record<Care, string>> = {
  none: '',
  soon: 'to be seen in the next days',
  'same-day': 'to be seen today',
  emergency: 'emergency',
}
const PROPOSAL: Readonly<Record<Proposal, string>> = {
  stop: 'stop: an urgent sign is open',
  refer: 'refer to a clinician',
  'ease-back': 'ease back',
  hold: 'hold',
  advance: 'advance',
  none: 'nothing to change',
}

const EASES: Readonly<Record<string, string>> = {
  flexion: 'bending forward',
  extension: 'arching back',
  neither: 'neither way',
}

const SOURCES_MOST = 140

/** Sources in one line: what speaks of the client comes first. */
export function oneLine(sources: readonly string[]): string {
  const parts = sources.flatMap((source) => source.split('; '))
  const fits = parts.filter((_, n) => parts.slice(0, n + 1).join('; ').length <= SOURCES_MOST)
  return fits.length < parts.length ? `${fits.join('; ')} …` : fits.join('; ')
}

interface AlertWords {
  readonly ref: string
  readonly care: Care
  readonly signs: readonly string[]
  readonly sources: readonly string[]
  readonly words: string | null
  readonly at: string
  readonly told: string
  readonly selfHarm: boolean
}

/** What the bot itself notes of how a sign was told; all else is the client's own words. */
const NOTED: readonly string[] = [urgent.ticked, urgent.notNamed, urgent.otherLegNamed]

const said = (words: string): string =>
  NOTED.includes(words) ? `The client ${words}.` : `Said: “${harmless(words, 400)}”`

/** Everything a coach reads besides digest and rules. */
export const coach = {
  alert: ({ ref, care, signs, sources, words, at, told, selfHarm }: AlertWords): string =>
    [
      `**Urgent sign: ${harmless(ref)}** (${CARE[care]}), ${at}`,
      signs.length > 0
        ? `Sign: ${signs.join('; ')}`
        : 'Written before a yes to checking in: the words are not kept.',
      words === null || words === '' ? '' : said(words),
      signs.length > 0
        ? `Told at ${at} to stop and seek care; drills stopped, plan locked:`
        : `Told at ${at} to seek care:`,
      `> ${(told.split('\n')[0] ?? '').replaceAll('**', '')}`,
      sources.length > 0 ? `Why it counts: ${oneLine(sources)}` : '',
      selfHarm
        ? 'Please take it up and reach them now, by voice if you can. When you have spoken with them, record it with /spoken-with.'
        : 'Please take it up and reach the client. You are not asked to judge it: a clinician does.',
    ]
      .filter((line) => line !== '')
      .join('\n'),
  alertRepeat: ({
    ref,
    care,
    signs,
    minutes,
  }: {
    ref: string
    care: Care
    signs: readonly string[]
    minutes: number
  }): string =>
    `**Still open: ${harmless(ref)}** (${CARE[care]})${signs.length > 0 ? `: ${signs.join('; ')}` : ''}. ${ago(minutes)}, and nobody has taken it up.`,
  takeUp: 'I take it up',
  taken: (by: string, at = ''): string =>
    `Taken up by ${by}. The client has been told.${at && ` Since ${at}; to hand it over: /hand-over.`}`,
  alertHad: (by: string, at = ''): string =>
    `${by} has it already${at && `, since ${at}`}. To take it over: /hand-over to yourself.`,
  alertClosed: 'This alert is closed already.',
  noAlert: (ref: string): string => `There is no open alert about ${name(ref)}.`,
  whatCame: (ref: string, by: string): string =>
    `${name(ref)}, taken up by ${by}. What came of it? This closes the alert, never the lock.`,
  outcome: {
    reached: 'Reached by phone',
    hospital: 'Going to hospital',
    seen: 'Seen by a clinician',
    'no-answer': 'No answer',
    'false-alarm': 'False alarm',
  },
  closed: (outcome: string): string =>
    `Alert closed: ${outcome}. The plan stays locked until you record a clearance with /clear.`,
  saysSeen: (ref: string): string =>
    `${name(ref)} says that a medical person has seen them. The plan stays locked until you record the clearance with /clear.`,
  soon: (ref: string, signs: readonly string[], sources: readonly string[]): string =>
    `${name(ref)} told me of: ${signs.join('; ')}. The client was asked to have it looked at in the next days; no advancing meanwhile.\nSource: ${[...new Set(sources)].join('; ')}`,
  noted: (sign: string): string => `Noted: ${sign}`.slice(0, 80),
  notedBy: (by: string): string => `Noted by ${by}.`,
  nothingToNote: 'There is nothing open to note.',
  declined: (ref: string): string => `${name(ref)} said no to checking in. Nothing is kept but that.`,
  minor: (ref: string): string => `${name(ref)} gave an age under 18 and was refused politely.`,
  screened: (
    ref: string,
    answers: Readonly<Record<string, unknown>>,
    risks: readonly string[],
    known: readonly string[],
  ): string => {
    const activities = Object.entries((answers.activities ?? {}) as Record<string, number>)
      .map(([what, hard]) => `${harmless(what)} ${hard}`)
      .sort()
    return [
      `${name(ref)} has answered the first questions.`,
      `Onset: ${harmless(String(answers.onset ?? 'not said'), 60)} · age ${answers.age ?? 'not said'} · earlier: ${answers.earlier ?? 'not said'} · seen by a clinician: ${answers.seen ?? 'not said'}`,
      `Baseline: ${answers.reach ?? '?'}, pain ${answers.pain ?? '?'}, side ${answers.side ?? '?'}; eased by ${EASES[String(answers.eases)] ?? '?'}`,
      known.length > 0 ? `Old, unchanged, known to a clinician: ${known.join('; ')}` : '',
      activities.length > 0 ? `Matters (0-10): ${activities.join(', ')}` : '',
      answers.lift ? `Wants back: ${harmless(String(answers.lift), 60)}` : '',
      risks.length > 0
        ? `**Parked:** ${risks.join('; ')}. Record with /release that a clinician has agreed.`
        : 'Set the plan with /plan.',
    ]
      .filter((line) => line !== '')
      .join('\n')
  },
  barrier: (ref: string, barrier: string): string =>
    `${name(ref)} says what gets in the way of sessions: ${barrier.toLowerCase()}.`,
  quiet: (ref: string, days: number): string =>
    `${name(ref)} has not checked in for ${days} days. A nudge went out on day 3.`,
  lapse: (ref: string, days: number): string =>
    `${name(ref)} has not checked in for ${days} days and is paused. Any check-in starts it again.`,
  returned: (
    ref: string,
    days: number,
    moves: readonly { ladder: string; from: number; to: number }[],
  ): string =>
    `${name(ref)} is back after ${days} days without a reply.${moves.length > 0 ? ` Each ladder starts a rung lower: ${steps(moves)}.` : ' All ladders stand on their first rung.'}`,
  left: (ref: string, sign: 'open' | 'asked' | null): string =>
    `${name(ref)} has left. Prompts have ended.${sign === 'open' ? ' An urgent sign is still open: please reach them.' : sign === 'asked' ? ' I have asked about an urgent sign and have no answer yet: please reach them.' : ''}`,
  unreachable: (ref: string, reason: string, urgent: boolean): string =>
    urgent
      ? `**${harmless(ref)} did not get my urgent message** (${reason}). Please reach them another way, now.`
      : reason === 'closed'
        ? `${name(ref)} cannot be reached: their private messages are closed. Ask them to allow private messages from members of this server.`
        : `${name(ref)} cannot be reached (${reason}). Please write to them another way.`,
  proposal: ({
    ref,
    flags,
    proposal,
    ladder,
    direction,
    eased,
    rested,
  }: {
    ref: string
    flags: readonly string[]
    proposal: Proposal
    ladder: string | null
    direction: Direction
    eased: readonly { ladder: string; from: number; to: number }[]
    rested: readonly string[]
  }): string =>
    [
      `${name(ref)}: proposal **${PROPOSAL[proposal]}**${ladder ? ` (${ladderName(ladder)})` : ''} · ${DIRECTION[direction]}`,
      ...flags.map((flag) => `• ${flag}`),
      eased.length > 0 ? `Done already, the safer move: ${steps(eased)}.` : '',
      rested.length > 0 ? `Done already, the safer move: ${rested.map(ladderName).join(', ')} rests.` : '',
    ]
      .filter((line) => line !== '')
      .join('\n'),
  allRest: (ref: string): string =>
    `${name(ref)}: eased back, and after 3 answered days the reach is no nearer. All ladders but settle rest; please decide.`,
  decision: {
    advance: 'Advance',
    hold: 'Hold',
    'ease-back': 'Ease back',
    refer: 'Refer',
    stop: 'Stop',
    clear: 'Clear',
  },
  why: 'Why?',
  record: 'Record',
  undo: 'Undo',
  undone: 'Put back; the client has been told.',
  cannotUndo: 'There is nothing left to undo here.',
  source: (source: string): string => `(Source: ${source})`,
  whyText: (ref: string, on: Day, proposal: Proposal, lines: readonly string[]): string =>
    [
      `${name(ref)}, ${date(on)}: ${PROPOSAL[proposal]}`,
      ...(lines.length > 0 ? lines.map((line) => `• ${line}`) : ['No rule stands out.']),
    ]
      .join('\n')
      .slice(0, 1900),
  unknownClient: (ref: string, known: readonly string[]): string =>
    `There is no client “${harmless(ref)}” here. ${known.length > 0 ? `Known: ${known.map((one) => harmless(one)).join(', ')}.` : 'Invite one with /enrol.'}`.slice(
      0,
      1900,
    ),
  unknownLadder: (id: string): string => `There is no ladder “${harmless(id)}”.`,
  noSuchRung: (id: string, rung: number, last: number): string =>
    `${ladderName(id)} has rungs 1 to ${last}, not ${rung}.`,
  emptyPlan: 'A plan needs at least one ladder, like “extension:1 glide:1”.',
  notScreened: (ref: string): string => `${name(ref)} has not answered the first questions yet.`,
  lockedNoPlan: (ref: string): string =>
    `${name(ref)} is locked by an urgent sign. Record a clearance with /clear first.`,
  lockedNoDecision: (ref: string): string =>
    `${name(ref)} is locked by an urgent sign: nothing about drills can be decided. Record a clearance with /clear first.`,
  askedNoDecision: (ref: string): string =>
    `${name(ref)} is being asked about a warning sign; drills wait until that is answered (10 minutes at most). Please decide after that.`,
  parkedNoDecision: (ref: string): string =>
    `${name(ref)} is parked: record with /release that a clinician has agreed, then decide.`,
  planPast: 'A plan cannot begin on a day that has gone.',
  paused: (ref: string): string => `${name(ref)} is on a break already.`,
  notPaused: (ref: string): string => `${name(ref)} is not on a break.`,
  noPlan: (ref: string): string => `${name(ref)} has no plan yet. Set it with /plan.`,
  whichLadder: (known: readonly string[]): string => `Name the ladder: ${known.join(', ')}.`,
  notInPlan: (ladder: string): string => `${ladderName(ladder)} is not in the plan.`,
  lastRung: (ladder: string): string => `${ladderName(ladder)} stands on its last rung already.`,
  firstRung: (ladder: string): string => `${ladderName(ladder)} stands on its first rung already.`,
  notLocked: (ref: string): string => `${name(ref)} is not locked; there is nothing to clear.`,
  /** Who is no clinician, as a coach may type it. */
  noClinician: 'me, myself, i, coach, the coach, my coach, client, the client, nobody, no one, none',
  whoCleared:
    'Say who has seen the client; the profession is enough: general practitioner, emergency physician, hospital doctor, surgeon, physiotherapist, nurse practitioner, or another clinician in words.',
  clearDate: (first: Day, today: Day): string => `The date must lie between ${first} and ${today}.`,
  notYet: (today: Day): string => `The date cannot lie after ${today}.`,
  useSpokenWith: 'For this one use /spoken-with once you have spoken with the client.',
}
