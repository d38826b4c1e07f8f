import type { Day } from '../../domain/day.ts'
import { timeAt } from '../../domain/local-time.ts'
import type { Assessment, Proposal } from '../../domain/rules/assessment.ts'
import type { Draft } from '../draft.ts'
import type { Filled } from '../event.ts'
import type { Act, Button, Choices } from '../message.ts'
import { keyOf } from '../plan/plan-acts.ts'
import type { CheckInRow, DecisionRow } from '../rows.ts'
import {
  DECISIONS,
  type Decision,
  decide,
  decisionButtons,
  decisionProblem,
  isStale,
  type Wish,
} from './decide.ts'
import { reportButton } from './report.ts'
import { type Accepted, keepChecked, unreadBefore } from './step-check.ts'
import { assessOn } from './watch.ts'

/** What a wish to decide came to. */
export interface DecisionSaid {
  readonly text: string
  /** Told to whoever acted alone: the message stays as the one who decided left it. */
  readonly privately: boolean
  readonly choices?: Choices
}

const said = (text: string, privately = false): DecisionSaid => ({ text, privately })

/** A press on a button under a proposal, or the form with a reason that it opened. */
export function decidePressed(draft: Draft, act: Act, filled: Filled | null, by: string): DecisionSaid {
  const { decisions } = draft.forCoach
  const named = filled?.decision ?? act.decision
  const decision = DECISIONS.find((one) => one === named)
  if (!decision) return said(decisions.noReason, true)
  const wish: Wish = {
    decision,
    ladder: act.ladder === null ? null : String(act.ladder),
    reason: String(filled?.reason ?? act.reason ?? '').slice(0, 300),
    shown: filled ? filled.show === 'yes' : act.shown === true,
    by,
    proposal: act.proposal as Proposal,
    rules: assessOn(draft, act.on as Day).reasons,
  }
  const problem = decisionProblem(draft, wish)
  if (problem) return said(problem, true)
  const facts = { on: act.on as Day, at: typeof act.at === 'string' ? new Date(act.at) : null }
  const before = latestDecision(draft, facts)
  if (before) return { ...alreadyDecided(draft, before, wish), privately: true }
  return newerReply(draft, facts, wish) ?? readFirst(draft, wish, seenIn(act)) ?? taken(draft, wish)
}

/** The same by command, which stands on no message: only what was decided today can have gone before it. */
export function decideTyped(draft: Draft, wish: Wish, anyway: boolean): DecisionSaid {
  const problem = decisionProblem(draft, wish)
  if (problem) return said(problem)
  const before = draft.file.decisions.findLast(
    (row) =>
      row.day === draft.today &&
      row.decision !== 'clear' &&
      (row.by !== wish.by || (row.decision === wish.decision && row.ladder === wish.ladder)),
  )
  if (before) return alreadyDecided(draft, before, wish)
  return readFirst(draft, wish, anyway ? 'all' : []) ?? taken(draft, wish)
}

/** What speaks against the next rung is said before anything is done, once. */
function readFirst(draft: Draft, wish: Wish, accepted: Accepted): DecisionSaid | null {
  const unread = unreadBefore(draft, wish, accepted)
  if (unread.length === 0) return null
  const seen = [...(accepted === 'all' ? [] : accepted), ...unread.map(keyOf)]
  const text = draft.forCoach.plan.beforeStep(draft.client.ref, unread)
  return { ...said(text), choices: { buttons: [allTheSame(draft, wish, seen)], pick: null } }
}

const seenIn = ({ seen }: Act): string[] => (typeof seen === 'string' ? seen.split(' ').filter(Boolean) : [])

function taken(draft: Draft, wish: Wish): DecisionSaid {
  keepChecked(draft, wish)
  const started = decide(draft, wish)
  const { decision, ladder, by, reason, shown = false } = wish
  const facts = { ref: draft.client.ref, decision, ladder, by, reason, started }
  const told = said(draft.forCoach.decisions.decided({ ...facts, shown: shown && reason !== '' }))
  return decision === 'refer' ? { ...told, choices: afterReferral(draft) } : told
}

/** Whoever refers somebody has something to hand over; the reasons and the record stay in reach. */
function afterReferral(draft: Draft): Choices {
  const stay = decisionButtons(draft, assessOn(draft, draft.today)).filter(
    ({ name }) => name === 'why' || name === 'record',
  )
  return { buttons: [reportButton(draft), ...stay], pick: null }
}

/** What the message showed: as of which day, and when it was written (not known of old messages). */
interface Facts {
  readonly on: Day
  readonly at: Date | null
}

const latestDecision = ({ file }: Draft, { on, at }: Facts): DecisionRow | undefined =>
  file.decisions.findLast(
    (row) => row.decision !== 'clear' && (at === null ? row.day >= on : row.at.getTime() > at.getTime()),
  )

function alreadyDecided(draft: Draft, before: DecisionRow, wish: Wish): DecisionSaid {
  const { decisions, words } = draft.forCoach
  const { zone } = draft.file.practice
  const { decision, ladder, by } = before
  const at = `${words.date(before.day)} ${timeAt(before.at, zone)}`
  return {
    ...said(decisions.already({ ref: draft.client.ref, decision, ladder, by, at })),
    choices: { buttons: [allTheSame(draft, wish)], pick: null },
  }
}

/** A reply has come since the message was written: said before anything is done, with the facts as they are now. */
function newerReply(draft: Draft, facts: Facts, wish: Wish): DecisionSaid | null {
  const newer = newest(draft, facts)
  if (!newer) return null
  const now = assessOn(draft, draft.today)
  const { decisions, words } = draft.forCoach
  const others = decisionButtons(draft, now).filter(({ name }) => name !== wish.decision)
  const text = decisions.stale({
    ref: draft.client.ref,
    day: newer.day,
    values: words.values(newer),
    proposal: now.proposal,
    same: isSame(now, wish),
  })
  return { ...said(text), choices: { buttons: [allTheSame(draft, wish), ...others], pick: null } }
}

const isSame = (now: Assessment, wish: Wish): boolean =>
  now.proposal === wish.proposal && (now.ladder === null || now.ladder === wish.ladder)

function newest(draft: Draft, { on, at }: Facts): CheckInRow | undefined {
  const rows = [...draft.file.checkIns].sort((a, b) => a.updatedAt.getTime() - b.updatedAt.getTime())
  const last = rows.at(-1)
  if (at === null) return isStale(draft, on) ? last : undefined
  return last && last.updatedAt.getTime() > at.getTime() ? last : undefined
}

/** The decision once more, on the facts as they are now. */
function allTheSame(draft: Draft, wish: Wish, seen: readonly string[] = []): Button {
  const { decision, ladder, reason, shown = false, proposal } = wish
  const facts = { on: draft.today, at: draft.now.toISOString() }
  return {
    name: 'all-the-same',
    label: draft.forCoach.decisions.allTheSame(decision, labelled(decision, ladder)),
    act: { do: 'decide', decision, ladder, reason, shown, proposal, seen: seen.join(' '), ...facts },
    style: 'danger',
  }
}

const labelled = (decision: Decision, ladder: string | null): string | null =>
  decision === 'advance' || decision === 'ease-back' ? ladder : null
