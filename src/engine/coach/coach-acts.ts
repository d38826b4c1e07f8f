import type { Day } from '../../domain/day.ts'
import { isSignId } from '../../domain/signs/catalogue.ts'
import { answerQuestion } from '../course/questions.ts'
import type { Draft } from '../draft.ts'
import type { Filled } from '../event.ts'
import type { Act, Answer, Choices, Message } from '../message.ts'
import { changePressed, savePressed } from '../plan/plan-acts.ts'
import type { AlertRow } from '../rows.ts'
import { isLocked } from '../status.ts'
import { closeAlert, OUTCOMES, type Outcome, openAlerts, takeUp } from '../urgent/alert.ts'
import { clearWith, noteSign } from '../urgent/clear.ts'
import { askOutcome, stamp, takeOver } from '../urgent/hand-over.ts'
import { undo } from './decide.ts'
import { decidePressed } from './decision-press.ts'
import { assessOn } from './watch.ts'

/** What a coach's press came to: the words under the message, and the buttons that stay. */
export interface CoachNoted {
  readonly text: string
  /** True where it only shows something, in private: the message itself stays as it is. */
  readonly shows: boolean
  /** Take the place of those that the message had. */
  readonly choices?: Choices
}
const said = (text: string): CoachNoted => ({ text, shows: false })
const shown = (text: string): CoachNoted => ({ text, shows: true })
/** Takes the place of the message; its own choices, or none, take the place of those pressed. */
const answered = ({ text, choices = { buttons: [], pick: null } }: Answer): CoachNoted => ({
  text,
  shows: false,
  choices,
})

/** A press by somebody with the coach role on a message about a client. */
export function coachAct(draft: Draft, act: Act, by: string, filled: Filled | null): CoachNoted | null {
  switch (act.do) {
    case 'take-up':
      return takeUpPressed(draft, String(act.alert), by)
    case 'take-over':
      return takeOverPressed(draft, String(act.alert), by)
    case 'outcome':
      return outcome(draft, String(act.alert), String(act.outcome), by)
    case 'decide':
      return decided(draft, act, filled, by)
    case 'clear':
      return clearPressed(draft, filled, by)
    case 'undo':
      return undoPressed(draft, `${act.rungs} ${act.rests ?? ''}`.split(' ').filter(Boolean), by)
    case 'noted':
      return notedPressed(draft, String(act.sign), by)
    case 'answer-question':
      return said(answerQuestion(draft, String(act.question), String(filled?.text ?? ''), by))
    case 'plan-save':
      return answered(savePressed(draft, act, by))
    case 'plan-change':
      return answered(changePressed(draft, act))
    case 'why':
      return shown(why(draft, act.on as Day))
    default:
      return null
  }
}

function takeUpPressed(draft: Draft, id: string, by: string): CoachNoted {
  const alert = draft.file.alerts.find((row) => row.id === id)
  if (!alert || alert.closedAt) return said(draft.forCoach.coach.alertClosed)
  if (takeUp(draft, alert, by) === 'had') return said(had(draft, alert))
  askOutcome(draft, alert, by)
  return said(draft.forCoach.coach.taken(by, stamp(draft, draft.now)))
}

const had = (draft: Draft, { takenBy, takenAt }: AlertRow): string =>
  draft.forCoach.coach.alertHad(takenBy ?? '', takenAt ? stamp(draft, takenAt) : '')

function takeOverPressed(draft: Draft, id: string, by: string): CoachNoted {
  const alert = draft.file.alerts.find((row) => row.id === id)
  return said(alert ? takeOver(draft, alert, by) : draft.forCoach.coach.alertClosed)
}

/** Take-up and outcome of all that is open about a client, as the command gives them. */
export function takeUpWith(draft: Draft, outcome: Outcome | null, by: string): string {
  const open = openAlerts(draft)
  if (open.length === 0) return draft.forCoach.coach.noAlert(draft.client.ref)
  const untaken = open.filter((alert) => alert.takenBy === null)
  for (const alert of untaken) takeUp(draft, alert, by)
  const owners = open.flatMap(({ takenBy }) => (takenBy === null || takenBy === by ? [] : [takenBy]))
  if (outcome) for (const alert of open) closeAlert(draft, alert, outcome, by)
  if (untaken.length === 0 && !outcome) return had(draft, open[0]!)
  // the other coaches see it where the alert stands
  if (!outcome) askOutcome(draft, untaken[0]!, by)
  else draft.toAlerts({ kind: 'notice', text: closedBy(draft, outcome, by), mentions: calling(owners) })
  return outcome
    ? draft.forCoach.coach.closed(draft.forCoach.coach.outcome[outcome])
    : draft.forCoach.coach.taken(by, stamp(draft, draft.now))
}

/** Whoever had an alert hears that another has closed it. */
const calling = (owners: readonly string[]): Message['mentions'] => ({
  roles: [],
  users: [...new Set(owners.map((one) => one.slice(2, -1)))],
})

const closedBy = ({ client, forCoach }: Draft, outcome: Outcome, by: string): string =>
  forCoach.alerts.closedBy(client.ref, by, forCoach.coach.outcome[outcome])

function outcome(draft: Draft, id: string, value: string, by: string): CoachNoted {
  const alert = draft.file.alerts.find((row) => row.id === id)
  const known = OUTCOMES.find((one) => one === value)
  if (!alert || alert.closedAt || !known) return said(draft.forCoach.coach.alertClosed)
  const owner = alert.takenBy
  closeAlert(draft, alert, known, by)
  if (owner !== null && owner !== by)
    draft.toAlerts({ kind: 'notice', text: closedBy(draft, known, by), mentions: calling([owner]) })
  return said(draft.forCoach.coach.closed(draft.forCoach.coach.outcome[known]))
}

function decided(draft: Draft, act: Act, filled: Filled | null, by: string): CoachNoted {
  const { privately, ...rest } = decidePressed(draft, act, filled, by)
  return { ...rest, shows: privately }
}

/** A clearance by the form: who has seen the client, and when. */
function clearPressed(draft: Draft, filled: Filled | null, by: string): CoachNoted {
  const line = (name: string): string => String(filled?.[name] ?? '')
  const { text, done } = clearWith(draft, { by: line('by'), on: line('on'), reason: line('reason') }, by)
  return done ? said(text) : shown(text)
}

function undoPressed(draft: Draft, ids: readonly string[], by: string): CoachNoted {
  const { coach } = draft.forCoach
  if (isLocked(draft.file)) return said(coach.lockedNoDecision(draft.client.ref))
  if (draft.client.stage !== 'enrolled') return said(coach.cannotUndo)
  return said(undo(draft, ids, by) ? coach.undone : coach.cannotUndo)
}

function notedPressed(draft: Draft, sign: string, by: string): CoachNoted {
  const done = isSignId(sign) && noteSign(draft, sign, by)
  return said(done ? draft.forCoach.coach.notedBy(by) : draft.forCoach.coach.nothingToNote)
}

/** The figures, days and sources behind flags and proposal. */
export function why(draft: Draft, on: Day): string {
  const assessment = assessOn(draft, on)
  const { coach, rules } = draft.forCoach
  const lines = assessment.flags.map((flag) => `${rules.why(flag)} ${coach.source(flag.source)}`)
  return coach.whyText(draft.client.ref, on, assessment.proposal, lines)
}
