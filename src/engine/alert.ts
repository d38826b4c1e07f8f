import type { Care } from '../domain/care.ts'
import { addDays } from '../domain/day.ts'
import { dayAt, instantOf, timeAt } from '../domain/local-time.ts'
import { SIGNS, type SignId } from '../domain/signs/catalogue.ts'
import type { Draft } from './draft.ts'
import type { Button, Message } from './message.ts'
import type { AlertRow } from './rows.ts'

const MINUTE = 60_000
const HOUR = 60 * MINUTE

/** Minutes after the first at which an emergency alert is repeated; then hourly for a day. */
export const REPEATS = [10, 30, 70] as const
const LAST_REPEAT_HOURS = 24
/** From this many minutes on the whole coach role and the deputy are called by name. */
const WIDEN_MINUTES = 30
/** Nobody has taken it up after this long: the client hears so. */
const UNTAKEN_MINUTES = 60
/** Hours of the practice's day in which a same-day alert is repeated. */
const DAY_HOURS = { first: 7, last: 22 }

export const OUTCOMES = ['reached', 'hospital', 'seen', 'no-answer', 'false-alarm'] as const
export type Outcome = (typeof OUTCOMES)[number]

export const openAlerts = (draft: Draft): AlertRow[] =>
  draft.file.alerts.filter((alert) => alert.closedAt === null)

/** Tells the coach, and goes on telling until somebody takes it up. */
export function openAlert(
  draft: Draft,
  signs: readonly SignId[],
  care: Care,
  words: string,
  told: string,
): void {
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
  }
  draft.put('alert', alert)
  writeStep(draft, alert, 0)
  draft.toAlerts({
    kind: 'alert',
    care,
    key: draft.id('alert', draft.cause, 0),
    text: draft.texts.coach.alert({
      ref: draft.client.ref,
      care,
      signs: signs.map((sign) => draft.texts.signs[sign].short),
      sources: [...new Set(signs.map((sign) => SIGNS[sign].source))],
      words: draft.file.practice.quote ? words : null,
      at: timeAt(draft.now, draft.file.practice.zone),
      told,
    }),
    buttons: [takeUpButton(draft, alert)],
    mentions: callRole(draft, care === 'emergency'),
  })
  scheduleNext(draft, alert, 0)
  draft.due('untaken', new Date(draft.now.getTime() + UNTAKEN_MINUTES * MINUTE), { alert: alert.id })
}

const takeUpButton = (draft: Draft, alert: AlertRow): Button => ({
  name: 'take-up',
  label: draft.texts.coach.takeUp,
  act: { do: 'take-up', alert: alert.id },
  style: 'main',
})

const callRole = (draft: Draft, wide: boolean): Message['mentions'] => {
  const { coachRole, deputy } = draft.file.practice
  return { roles: wide && coachRole ? [coachRole] : [], users: wide && deputy ? [deputy] : [] }
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

/** The instant of the step after this one; null where the roll-call takes over. */
export function nextStep(alert: AlertRow, step: number, now: Date, zone: string): Date | null {
  const opened = alert.openedAt.getTime()
  if (alert.care !== 'emergency') return nextDaytimeHour(now, zone)
  const minutes = REPEATS[step]
  const at = minutes === undefined ? now.getTime() + HOUR : opened + minutes * MINUTE
  return at > opened + LAST_REPEAT_HOURS * HOUR ? null : new Date(at)
}

function nextDaytimeHour(now: Date, zone: string): Date {
  const next = new Date(now.getTime() + HOUR)
  const hour = Number(timeAt(next, zone).slice(0, 2))
  if (hour >= DAY_HOURS.first && hour < DAY_HOURS.last) return next
  const day = dayAt(next, zone)
  return instantOf(hour < DAY_HOURS.first ? day : addDays(day, 1), '07:00', zone)
}

function scheduleNext(draft: Draft, alert: AlertRow, step: number): void {
  const id = draft.id('due', 'alert', alert.id)
  const at = nextStep(alert, step, draft.now, draft.file.practice.zone)
  if (at) draft.due('alert-step', at, { alert: alert.id, step: step + 1 }, id)
  else if (draft.file.dues.some((due) => due.id === id)) draft.drop('due', id)
}

/** One repeat of an alert that nobody has taken up. */
export function alertStep(draft: Draft, alertId: string, step: number): void {
  const alert = draft.file.alerts.find((row) => row.id === alertId)
  if (!alert || alert.closedAt || alert.takenBy) return
  const minutes = Math.round((draft.now.getTime() - alert.openedAt.getTime()) / MINUTE)
  writeStep(draft, alert, step)
  draft.toAlerts({
    kind: 'alert-repeat',
    care: alert.care,
    key: `${alertId}/${step}`,
    text: draft.texts.coach.alertRepeat({
      ref: draft.client.ref,
      care: alert.care,
      signs: alert.signs.map((sign) => draft.texts.signs[sign].short),
      minutes,
    }),
    buttons: [takeUpButton(draft, alert)],
    mentions: callRole(draft, minutes >= WIDEN_MINUTES),
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
  const id = draft.id('due', 'alert', alert.id)
  if (draft.file.dues.some((due) => due.id === id)) draft.drop('due', id)
  draft.toClient({ kind: 'taken-up', care: alert.care, text: draft.texts.client.takenUp })
  return 'taken'
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
}
