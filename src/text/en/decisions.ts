import type { Day } from '../../domain/day.ts'
import type { Proposal } from '../../domain/rules/assessment.ts'
import { harmless } from '../harmless.ts'
import { date } from './dates.ts'
import { ladderName } from './names.ts'

const name = (ref: string): string => `**${harmless(ref)}**`

const DONE: Readonly<Record<string, string>> = {
  advance: 'advance',
  hold: 'hold',
  'ease-back': 'ease back',
  refer: 'refer to a clinician',
  stop: 'stop all drills',
  clear: 'clear',
}
const PROPOSAL: Readonly<Record<Proposal, string>> = {
  stop: 'stop: an urgent sign is open',
  refer: 'refer to a clinician',
  'ease-back': 'ease back',
  hold: 'hold',
  advance: 'advance',
  none: 'nothing to change',
}

function what(decision: string, ladder: string | null): string {
  const done = DONE[decision] ?? decision
  const about = decision === 'advance' || decision === 'ease-back'
  return ladder !== null && about ? `${done} on ${ladderName(ladder)}` : done
}

/** What a coach reads about decisions. */
export const decisions = {
  withReason: 'With a reason…',
  formTitle: (ref: string): string => `Decide for ${ref}`,
  field: {
    decision: 'Decision',
    reason: 'Your reason, in a line',
    show: 'Show the reason to the client?',
    by: 'Who has seen them: the profession',
    on: 'On which date, like 2026-03-13',
  },
  showYes: 'Yes, word for word',
  showNo: 'No, it is for the record alone',
  startAgain: 'Start again',
  clear: 'Record a clearance…',
  clearTitle: (ref: string): string => `Clearance for ${ref}`,
  decided: (facts: {
    readonly ref: string
    readonly decision: string
    readonly ladder: string | null
    readonly by: string
    readonly reason: string
    readonly shown: boolean
    readonly started: boolean
  }): string => {
    const { ref, decision, ladder, by, reason, shown, started } = facts
    const told = shown ? 'The client has been told, with the reason.' : 'The client has been told.'
    const kept =
      reason === '' ? '' : ` Reason: ${harmless(reason, 300)}${shown ? '' : ' (not shown to the client)'}.`
    const stopped =
      decision === 'stop'
        ? ' They stay stopped until somebody decides again: hold starts them where they were.'
        : ''
    return `Decided for ${name(ref)}: ${what(decision, ladder)}, by ${by}.${started ? ' The drills start again.' : ''}${stopped}${kept} ${told}`
  },
  already: (facts: {
    readonly ref: string
    readonly decision: string
    readonly ladder: string | null
    readonly by: string
    readonly at: string
  }): string =>
    `${facts.by} has decided for ${name(facts.ref)} already, ${facts.at}: ${what(facts.decision, facts.ladder)}. Nothing was changed now.`,
  stale: (facts: {
    readonly ref: string
    readonly day: Day
    readonly values: string
    readonly proposal: Proposal
    readonly same: boolean
  }): string =>
    `A newer reply of ${name(facts.ref)} has come since (${date(facts.day)}: ${facts.values || 'no numbers'}). The proposal is ${facts.same ? 'the same' : 'now'}: ${PROPOSAL[facts.proposal]}. Nothing was changed yet.`,
  allTheSame: (decision: string, ladder: string | null): string => `All the same: ${what(decision, ladder)}`,
  stoppedAlready: (ref: string): string =>
    `The drills of ${name(ref)} are stopped already. Hold starts them again where they were.`,
  noReason: 'The form lacks the decision. Nothing was changed.',
}

/** What a client hears of them. */
export const decided = {
  stopped:
    'Your coach has stopped all your drills for now. Please do none of them until you hear from your coach. Your check-ins go on. If a warning sign comes, get help at once and do not wait for us.',
  stoppedWork: 'No drills for now: your coach has stopped them and will tell you when you start again.',
  startedAgain: 'Your coach starts your drills again, at the same steps as before.',
  again: 'Your coach starts your drills again.',
  referredStopped:
    'Your coach would like a doctor or another clinician to look at this with you, and will write to you about it. Your drills stay stopped until then.',
  reason: (text: string): string => `Your coach adds: “${harmless(text, 300)}”`,
}
