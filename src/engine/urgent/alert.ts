import type { Care } from '../../domain/care.ts'
import { addDays } from '../../domain/day.ts'
import { dayAt, instantOf, timeAt } from '../../domain/local-time.ts'
import { userIn } from '../../domain/mention.ts'
import { SIGNS, type SignId } from '../../domain/signs/catalogue.ts'
import type { Texts } from '../../text/index.ts'
import { onCall } from '../course/cover.ts'
import type { Draft } from '../draft.ts'
import type { Button, Message } from '../message.ts'
import type { AlertRow, PracticeRow } from '../rows.ts'

const MINUTE = 60_000
const HOUR = 60 * MINUTE

/** Minutes after the first at which an emergency alert is repeated; then hourly for a day, then each morning. */
const REPEATS = [10, 30, 70] as const
const LAST_REPEAT_HOURS = 24
/** From this many minutes on the whole coach role and the deputy are called by name. */
const WIDEN_MINUTES = 30
/** Nobody has taken it up after this long: the client hears so. */
const UNTAKEN_MINUTES = 60
/** The part of the practice's day in which a same-day alert is repeated. */
const DAY_TIME = { first: '07:00', last: '22:00' }

export const OUTCOMES = ['reached', 'hospital', 'seen', 'no-answer', 'false-alarm'] as const
export type Outcome = (typeof OUTCOMES)[number]

export const openAlerts = (draft: Draft): AlertRow[] =>
  draft.file.alerts.filter((alert) => alert.closedAt === null)

export interface AlertFacts {
  /** Empty where nothing may be kept yet: then only that it happened is told. */
  readonly signs: readonly SignId[]
  readonly care: Care
  readonly words: string
  readonly told: string
}

/** Tells the coach, and goes on telling until somebody takes it up. */
export function openAlert(draft: Draft, { signs, care, words, told }: AlertFacts): void {
  const alert: AlertRow = {
    id: draft.id('alert', draft.cause),
    clientId: draft.client.id,
    signs: [...signs],
    care,
    openedAt: draft.now,
    takenBy: null,
    takenAt: null,
    outcome: null,
    closedAt: null,
    had: [],
  }
  draft.put('alert', alert)
  writeStep(draft, alert, 0)
  draft.toAlerts({
    kind: 'alert',
    care,
    key: draft.id('alert', draft.cause, 0),
    text: alertText(draft.client.ref, draft.file.practice, draft.forCoach, {
      ...{ signs, care, words, told },
      now: draft.now,
    }),
    buttons: [takeUpButton(draft.forCoach, alert.id)],
    mentions: called(draft, 0),
  })
  scheduleNext(draft, alert, 0)
  const untakenAt = new Date(draft.now.getTime() + UNTAKEN_MINUTES * MINUTE)
  draft.due('untaken', untakenAt, { alert: alert.id }, draft.id('due', 'untaken', alert.id))
}

/** The first alert in words: who, which signs, what was said where that may be quoted, what the client was told. */
export const alertText = (
  ref: string,
  practice: Pick<PracticeRow, 'quote' | 'zone'>,
  { coach, signs: names }: Texts,
  { signs, care, words, told, now }: AlertFacts & { readonly now: Date },
): string =>
  coach.alert({
    ref,
    care,
    signs: signs.map((sign) => names[sign].short),
    sources: [...new Set(signs.map((sign) => SIGNS[sign].source))],
    words: practice.quote ? words : null,
    at: timeAt(now, practice.zone),
    told,
    selfHarm: signs.includes('self-harm'),
  })

export const takeUpButton = ({ coach }: Texts, alert: string): Button => ({
  name: 'take-up',
  label: coach.takeUp,
  act: { do: 'take-up', alert },
  style: 'main',
})

/** What came of it: the buttons for whoever has it. */
export const outcomeButtons = (draft: Draft, alert: AlertRow): Button[] =>
  OUTCOMES.map((outcome) => ({
    name: `outcome-${outcome}`,
    label: draft.forCoach.coach.outcome[outcome],
    act: { do: 'outcome', alert: alert.id, outcome },
  }))

/** First the coach in charge or their cover; from half an hour on the whole coach role and the deputy. */
function called(draft: Draft, minutes: number): Message['mentions'] {
  const { coachRole, deputy } = draft.file.practice
  const day = dayAt(draft.now, draft.file.practice.zone)
  const coach = userIn(onCall(draft.file, day))
  const users = coach ? [coach] : []
  if (minutes < WIDEN_MINUTES) return { roles: [], users }
  return {
    roles: coachRole ? [coachRole] : [],
    users: [...new Set([...users, ...(deputy ? [deputy] : [])])],
  }
}

function writeStep(draft: Draft, alert: AlertRow, step: number): void {
  draft.put('alertStep', {
    id: `${alert.id}/${step}`,
    alertId: alert.id,
    clientId: draft.client.id,
    step,
    at: draft.now,
  })
}

/** The instant of the next step. Steps missed while the bot was away are not made up for: one repeat says it all. */
function nextStep(alert: AlertRow, now: Date, zone: string): Date {
  if (alert.care !== 'emergency') return nextDaytimeHour(now, zone)
  const opened = alert.openedAt.getTime()
  const minutes = REPEATS.find((after) => opened + after * MINUTE > now.getTime())
  const at = minutes === undefined ? now.getTime() + HOUR : opened + minutes * MINUTE
  // the roll-call names it too, and is a week away at most
  return at > opened + LAST_REPEAT_HOURS * HOUR ? nextMorning(now, zone) : new Date(at)
}

/** The first hour of the practice's day that lies ahead. */
function nextMorning(now: Date, zone: string): Date {
  const day = dayAt(now, zone)
  return instantOf(timeAt(now, zone) < DAY_TIME.first ? day : addDays(day, 1), DAY_TIME.first, zone)
}

function nextDaytimeHour(now: Date, zone: string): Date {
  const next = new Date(now.getTime() + HOUR)
  const time = timeAt(next, zone)
  return time >= DAY_TIME.first && time <= DAY_TIME.last ? next : nextMorning(next, zone)
}

function scheduleNext(draft: Draft, alert: AlertRow, step: number): void {
  const id = draft.id('due', 'alert', alert.id)
  const at = nextStep(alert, draft.now, draft.file.practice.zone)
  const last = new Date(alert.openedAt.getTime() + LAST_REPEAT_HOURS * HOUR)
  // of who has left it ends after a day
  const due = draft.client.stage === 'left' && at > last ? last : at
  draft.due('alert-step', due, { alert: alert.id, step: step + 1 }, id)
}

/** Who has left, or has said no, stands in no roll-call: after a day the alert ends, and the coaches hear so. */
function endAway(draft: Draft, alert: AlertRow): void {
  draft.put('alert', { ...alert, closedAt: draft.now })
  draft.toAlerts({ kind: 'notice', text: draft.forCoach.alerts.endedAway(draft.client.ref) })
}

/** One repeat of an alert that nobody has taken up. */
export function alertStep(draft: Draft, alertId: string, step: number): void {
  const alert = draft.file.alerts.find((row) => row.id === alertId)
  if (!alert || alert.closedAt || alert.takenBy) return
  const minutes = Math.round((draft.now.getTime() - alert.openedAt.getTime()) / MINUTE)
  if (draft.client.stage === 'left' && minutes >= LAST_REPEAT_HOURS * 60) return endAway(draft, alert)
  writeStep(draft, alert, step)
  draft.toAlerts({
    kind: 'alert-repeat',
    care: alert.care,
    key: `${alertId}/${step}`,
    text: draft.forCoach.coach.alertRepeat({
      ref: draft.client.ref,
      care: alert.care,
      signs: alert.signs.map((sign) => draft.forCoach.signs[sign].short),
      minutes,
    }),
    buttons: [takeUpButton(draft.forCoach, alert.id)],
    mentions: called(draft, minutes),
  })
  scheduleNext(draft, alert, step)
}

/** An hour has gone and nobody has it: the client hears so, and again not to wait. */
export function untaken(draft: Draft, alertId: string): void {
  const alert = draft.file.alerts.find((row) => row.id === alertId)
  if (!alert || alert.closedAt || alert.takenBy) return
  draft.toClient({ kind: 'follow-up', care: alert.care, text: draft.texts.client.untaken })
}

/** Somebody has it: the repeats end, the client hears who cares. The lock stays. */
export function takeUp(draft: Draft, alert: AlertRow, by: string): 'taken' | 'had' {
  if (alert.takenBy) return 'had'
  draft.put('alert', { ...alert, takenBy: by, takenAt: draft.now })
  endRepeats(draft, alert)
  draft.toClient({
    kind: 'taken-up',
    care: alert.care,
    key: draft.id('taken-up', draft.cause),
    text: draft.texts.client.takenUp,
  })
  return 'taken'
}

function endRepeats(draft: Draft, alert: AlertRow): void {
  const ids = [draft.id('due', 'alert', alert.id), draft.id('due', 'untaken', alert.id)]
  for (const due of draft.file.dues) if (ids.includes(due.id)) draft.drop('due', due.id)
}

/** Closes the alert with what came of it; never the lock. */
export function closeAlert(draft: Draft, alert: AlertRow, outcome: Outcome, by: string): void {
  const taken = draft.file.alerts.find((row) => row.id === alert.id) ?? alert
  draft.put('alert', {
    ...taken,
    takenBy: taken.takenBy ?? by,
    takenAt: taken.takenAt ?? draft.now,
    outcome,
    closedAt: draft.now,
  })
  endRepeats(draft, alert)
}
