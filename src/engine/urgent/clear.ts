import { stopsDrills } from '../../domain/care.ts'
import { type Day, isDay, laterOf } from '../../domain/day.ts'
import { dayAt } from '../../domain/local-time.ts'
import type { SignId } from '../../domain/signs/catalogue.ts'
import { reschedulePrompt } from '../check-in/schedule-prompt.ts'
import { carryScreening, nextScreeningStep } from '../course/screening.ts'
import type { Draft } from '../draft.ts'
import { tellPlan } from '../plan/plan.ts'
import { lowerAll } from '../plan/rungs.ts'
import { hasEnded, isLocked, isStopped, openHold, openSigns, statusOf } from '../status.ts'
import { closeAlert, openAlerts } from './alert.ts'

/** Nobody, the coach, the client: a name is taken, these words are not. */
function isNoClinician({ client, forCoach }: Draft, by: string): boolean {
  const who = by.trim().toLowerCase()
  return (
    who === '' ||
    who.startsWith('<@') ||
    who === client.ref ||
    forCoach.coach.noClinician.split(', ').includes(who)
  )
}

/** Why a clearance cannot be recorded, or null. The date lies between the (latest) sign's day and today. */
function clearanceProblem(draft: Draft, by: string, on: Day): string | null {
  const { coach } = draft.forCoach
  if (!isLocked(draft.file)) return coach.notLocked(draft.client.ref)
  if (isNoClinician(draft, by)) return coach.whoCleared
  const stopping = openSigns(draft.file).filter((row) => stopsDrills(row.care))
  if (stopping.some((row) => row.sign === 'self-harm')) return coach.useSpokenWith
  const latest =
    stopping
      .map((row) => row.day)
      .sort()
      .at(-1) ?? draft.today
  const today = todayOf(draft)
  return on < latest || on > today ? coach.clearDate(latest, today) : null
}

/** The coach's own today may be ahead of the client's. */
const todayOf = (draft: Draft): Day => laterOf(draft.today, dayAt(draft.now, draft.file.practice.zone))

/** Why a release cannot be recorded, or null. */
export function releaseProblem(draft: Draft, by: string, on: string): string | null {
  const { commands, coach } = draft.forCoach
  if (!isDay(on)) return commands.badDay(on)
  if (isNoClinician(draft, by)) return coach.whoCleared
  if (!openHold(draft.file, 'park') || hasEnded(draft.client)) return commands.notParked(draft.client.ref)
  return on > todayOf(draft) ? coach.notYet(todayOf(draft)) : null
}

/** A clearance as a coach gives it, in words: recorded, or refused with the reason. */
export function clearWith(
  draft: Draft,
  given: { readonly by: string; readonly on: string; readonly reason: string },
  coach: string,
): { readonly text: string; readonly done: boolean } {
  const { commands } = draft.forCoach
  const [by, on] = [given.by.trim().slice(0, 80), given.on.trim()]
  const problem = isDay(on) ? clearanceProblem(draft, by, on) : commands.badDay(on)
  if (problem) return { text: problem, done: false }
  const lowered = clear(draft, by, on, coach)
  draft.put('decision', {
    id: draft.id('decision', draft.cause),
    clientId: draft.client.id,
    at: draft.now,
    day: draft.today,
    by: coach,
    decision: 'clear',
    ladder: null,
    reason: [`${by}, ${on}`, given.reason.trim().slice(0, 300)].filter(Boolean).join(': '),
    proposal: 'stop',
    rules: ['sign'],
  })
  const stopped = isStopped(draft.file)
    ? `\n${draft.forCoach.decisions.stoppedAlready(draft.client.ref)}`
    : ''
  return { text: commands.cleared(draft.client.ref, lowered) + stopped, done: true }
}

/**
 * Only the coach reopens a plan, by recording who cleared the client and when; the trail stays. Gives whether a
 * ladder starts lower than before; null where there is no plan to go on with.
 */
function clear(draft: Draft, by: string, on: Day, coach: string): boolean | null {
  endSigns(
    draft,
    openSigns(draft.file).map((row) => row.sign),
    'cleared',
    `${by}, ${on}`,
  )
  return reopen(draft, coach)
}

/** After a message about self-harm: the coach has spoken with the client. */
export function spokenWith(draft: Draft, coach: string): void {
  endSigns(draft, ['self-harm'], 'cleared', `spoken with by ${coach}`)
  if (openSigns(draft.file).every((row) => !stopsDrills(row.care))) reopen(draft, coach, true)
}

/** A `soon` sign that the coach has taken note of. */
export function noteSign(draft: Draft, sign: SignId, coach: string): boolean {
  const open = openSigns(draft.file).some((row) => row.sign === sign && !stopsDrills(row.care))
  if (open) endSigns(draft, [sign], 'noted', coach)
  return open
}

function endSigns(draft: Draft, signs: readonly SignId[], state: 'cleared' | 'noted', by: string): void {
  for (const row of openSigns(draft.file))
    if (signs.includes(row.sign)) draft.put('sign', { ...row, state, endedAt: draft.now, endedBy: by })
}

/** Each ladder starts one rung lower, and the first prompt asks the signs again. */
function reopen(draft: Draft, coach: string, spoken = false): boolean | null {
  const lock = openHold(draft.file, 'lock')
  if (!lock) return null
  draft.put('hold', { ...lock, endedAt: draft.now, endedBy: coach })
  for (const alert of openAlerts(draft)) closeAlert(draft, alert, 'seen', coach)
  for (const due of draft.file.dues) if (due.kind === 'urgent-follow-up') draft.drop('due', due.id)
  const hasPlan = draft.client.stage === 'enrolled' && draft.file.plan !== null
  const lowered = hasPlan ? lowerAll(draft, draft.today, 'clearance', coach).length > 0 : false
  reschedulePrompt(draft)
  const { client } = draft.texts
  const prompt = statusOf(draft.file) === 'active' && draft.file.plan ? draft.client.prompt : null
  const text = spoken ? client.clearedSpoken(prompt) : client.cleared(prompt, lowered)
  // who has left was told that no more is written
  if (draft.client.stage !== 'left') draft.toClient({ kind: 'cleared', text })
  const step = draft.client.stage === 'screening' ? nextScreeningStep(draft) : null
  if (step !== null) carryScreening(draft, step, '')
  return hasPlan ? lowered : null
}

/** A parked client's risk answer has been agreed with a clinician: profession and date, no more. */
export function release(draft: Draft, by: string, on: Day, coach: string): void {
  const park = openHold(draft.file, 'park')
  if (!park) return
  draft.put('hold', { ...park, endedAt: draft.now, endedBy: `${by}, ${on} (${coach})` })
  reschedulePrompt(draft)
  const { client } = draft.texts
  draft.toClient({ kind: 'cleared', text: isLocked(draft.file) ? client.releasedLocked : client.released })
  if (draft.file.plan) tellPlan(draft, laterOf(draft.client.start ?? draft.today, draft.today))
}
