import { addDays, type Day } from '../../domain/day.ts'
import { ladderOf, lastRung } from '../../domain/ladder/ladders.ts'
import type { Assessment, Proposal } from '../../domain/rules/assessment.ts'
import type { Draft } from '../draft.ts'
import { lastAnswered } from '../history.ts'
import type { Button } from '../message.ts'
import { moveRung, restingOn, rungsOn } from '../plan/rungs.ts'
import { tellChange } from '../plan/step-change.ts'
import { startAgain, stopAll } from '../plan/stop.ts'
import { hasEnded, isLocked, isPressing, isStopped, openHold } from '../status.ts'
import { clearButton, reasonForm } from './decision-forms.ts'

export const DECISIONS = ['advance', 'hold', 'ease-back', 'refer', 'stop'] as const
export type Decision = (typeof DECISIONS)[number]

/** The buttons under a proposal: the one proposed first, then the others, then the reasons and the record. */
export function decisionButtons(draft: Draft, assessment: Assessment): Button[] {
  const { coach, decisions } = draft.forCoach
  const stopped = isStopped(draft.file)
  const ladder = assessment.ladder ?? firstLadder(draft)
  const possible = DECISIONS.filter((one) =>
    one === 'stop' ? !stopped : one !== 'advance' || (assessment.proposal === 'advance' && ladder !== null),
  )
  const facts = { ladder, proposal: assessment.proposal, on: assessment.on, at: draft.now.toISOString() }
  const order = [...possible].sort(
    (a, b) => Number(b === assessment.proposal) - Number(a === assessment.proposal),
  )
  const buttons: Button[] = order.map((decision) => ({
    name: decision,
    label: decision === 'hold' && stopped ? decisions.startAgain : coach.decision[decision],
    act: { do: 'decide', decision, ...facts },
    ...(decision === assessment.proposal ? { style: 'main' as const } : {}),
  }))
  const reasoned: Button = {
    name: 'with-reason',
    label: decisions.withReason,
    act: { do: 'decide', decision: null, ...facts },
    form: reasonForm(draft, possible),
  }
  return [
    ...(openHold(draft.file, 'lock') ? [clearButton(draft)] : [...buttons, reasoned]),
    { name: 'why', label: coach.why, act: { do: 'why', on: assessment.on } },
    { name: 'record', label: coach.record, act: { do: 'record' } },
  ]
}

function firstLadder(draft: Draft): string | null {
  const rungs = rungsOn(draft.file, draft.today)
  const number = (id: string): number => ladderOf(id, draft.ladders)?.number ?? Number.POSITIVE_INFINITY
  const known = Object.keys(rungs)
    .filter((id) => Number.isFinite(number(id)))
    .sort((a, b) => number(a) - number(b))
  return known[0] ?? null
}

export interface Wish {
  readonly decision: Decision
  readonly ladder: string | null
  readonly reason: string
  /** The client reads the reason, word for word. */
  readonly shown?: boolean
  readonly by: string
  readonly proposal: Proposal
  readonly rules: Assessment['reasons']
}

/** Why a decision cannot be taken as it is, or null. */
export function decisionProblem(draft: Draft, wish: Wish): string | null {
  const { coach } = draft.forCoach
  const { ref } = draft.client
  if (hasEnded(draft.client)) return draft.forCoach.courseForCoach.dischargedAlready(ref)
  if (isLocked(draft.file)) return coach.lockedNoDecision(ref)
  if (isPressing(draft.file)) return coach.askedNoDecision(ref)
  if (openHold(draft.file, 'park')) return coach.parkedNoDecision(ref)
  if (draft.client.stage !== 'enrolled' || !draft.file.plan) return coach.noPlan(ref)
  if (wish.decision === 'stop' && isStopped(draft.file)) return draft.forCoach.decisions.stoppedAlready(ref)
  if (!['advance', 'ease-back'].includes(wish.decision)) return null
  const ladder = wish.ladder ? ladderOf(wish.ladder, draft.ladders) : null
  if (!ladder) return coach.whichLadder(Object.keys(rungsOn(draft.file, draft.today)))
  const rung = rungsOn(draft.file, addDays(draft.today, 1))[ladder.id]
  if (rung === undefined) return coach.notInPlan(ladder.id)
  if (wish.decision === 'advance' && rung >= lastRung(ladder)) return coach.lastRung(ladder.id)
  if (wish.decision === 'ease-back' && rung <= 1) return coach.firstRung(ladder.id)
  return null
}

/** Writes the coach's decision; the client is told in plain words what changes tomorrow. True where drills start again. */
export function decide(draft: Draft, wish: Wish): boolean {
  draft.put('decision', {
    id: draft.id('decision', draft.cause),
    clientId: draft.client.id,
    at: draft.now,
    day: draft.today,
    by: wish.by,
    decision: wish.decision,
    ladder: wish.ladder,
    reason: wish.reason,
    proposal: wish.proposal,
    rules: [...wish.rules],
  })
  const { client, decided } = draft.texts
  const stopped = isStopped(draft.file)
  const say = (text: string): void =>
    void draft.toClient({ kind: 'decision', text: withReason(draft, wish, text) })
  if (wish.decision === 'stop') {
    stopAll(draft, wish.by)
    say(decided.stopped)
    return false
  }
  if (wish.decision === 'refer') {
    say(stopped ? decided.referredStopped : client.referred)
    return false
  }
  startAgain(draft, wish.by)
  if (wish.decision === 'hold') say(stopped ? decided.startedAgain : client.held)
  else changeStep(draft, wish, stopped)
  return stopped
}

/** The client reads the reason only where the coach has chosen so. */
const withReason = ({ texts }: Draft, { reason, shown }: Wish, text: string): string =>
  shown && reason !== '' ? `${text}\n${texts.decided.reason(reason)}` : text

function changeStep(draft: Draft, wish: Wish, stopped: boolean): void {
  const { client, decided } = draft.texts
  const day = addDays(draft.today, 1)
  const ladder = wish.ladder!
  const last = lastRung(ladderOf(ladder, draft.ladders)!)
  const from = Math.min(rungsOn(draft.file, day)[ladder] ?? 1, last)
  const why = wish.decision === 'advance' ? 'advance' : 'ease-back'
  const to = why === 'advance' ? from + 1 : from - 1
  moveRung(draft, { ladder, from, to, day, why, by: wish.by })
  for (const hold of draft.file.holds)
    if (
      hold.kind === 'rest' &&
      hold.ladder === ladder &&
      hold.endedAt === null &&
      wish.decision === 'advance'
    )
      draft.put('hold', { ...hold, endedAt: draft.now, endedBy: wish.by })
  const rests = restingOn(draft.file).includes(ladder)
  const eased = rests ? client.easedAtRest(ladder) : client.easedByCoach(ladder, to)
  const step = why === 'advance' ? client.advanced(ladder, to) : eased
  const text = withReason(draft, wish, stopped ? `${decided.again} ${step}` : step)
  tellChange(draft, { text, drills: rests ? [] : [`${ladder}:${to}`] })
}

/** Puts back what was changed without the coach, as far as nothing has changed since; a lock cannot be undone. */
export function undo(draft: Draft, ids: readonly string[], by: string): boolean {
  const current = rungsOn(draft.file, draft.today)
  const moved = draft.file.rungs.filter(
    (row) => ids.includes(row.id) && current[row.ladder] === row.to && row.to !== row.from,
  )
  for (const row of moved)
    moveRung(draft, { ladder: row.ladder, from: row.to, to: row.from, day: draft.today, why: 'undo', by })
  const rested = draft.file.holds.filter((hold) => ids.includes(hold.id) && hold.endedAt === null)
  for (const hold of rested) draft.put('hold', { ...hold, endedAt: draft.now, endedBy: by })
  const ladders = [...new Set([...moved.map((row) => row.ladder), ...rested.map((hold) => hold.ladder!)])]
  if (ladders.length === 0) return false
  const now = rungsOn(draft.file, draft.today)
  tellChange(draft, {
    text: draft.texts.client.undone(ladders),
    drills: ladders.map((ladder) => `${ladder}:${now[ladder]}`),
  })
  return true
}

/** True where a newer reply than the facts behind a proposal has come. */
export const isStale = (draft: Draft, on: Day): boolean => (lastAnswered(draft.file) ?? on) > on
