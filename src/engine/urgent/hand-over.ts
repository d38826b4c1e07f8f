import { dayAt, timeAt } from '../../domain/local-time.ts'
import type { Draft } from '../draft.ts'
import type { AlertRow } from '../rows.ts'
import { openAlerts, outcomeButtons, takeUp } from './alert.ts'

/**
 * Asks another coach to take an alert over. It stays with whoever has it until the other has pressed: an alert in
 * the hands of somebody who does not know of it would be in nobody's. Who names themselves has it at once.
 * @param to platform id of the coach who is to have it
 */
export function handOver(draft: Draft, to: string, by: string): string {
  const { coach, alerts, signs } = draft.forCoach
  const { ref } = draft.client
  const open = openAlerts(draft)
  if (open.length === 0) return coach.noAlert(ref)
  const whom = `<@${to}>`
  const theirs = open.filter((alert) => alert.takenBy !== whom)
  if (theirs.length === 0) return alerts.hasAlready(ref, whom)
  if (whom === by) return theirs.map((alert) => takeOver(draft, alert, by)).join('\n')
  for (const alert of theirs)
    draft.toAlerts({
      kind: 'notice',
      care: alert.care,
      key: draft.id('hand-over', alert.id, draft.cause),
      text: alerts.offered(
        ref,
        alert.takenBy,
        whom,
        alert.signs.map((sign) => signs[sign].short),
      ),
      buttons: [
        {
          name: 'take-over',
          label: alerts.takeOver,
          act: { do: 'take-over', alert: alert.id },
          style: 'main',
        },
      ],
      mentions: { roles: [], users: [to] },
    })
  return alerts.offeredTo(ref, whom, theirs[0]!.takenBy)
}

/** The other has it now; who had it before stays in the trail. The client has been told that somebody has it. */
export function takeOver(draft: Draft, alert: AlertRow, by: string): string {
  const { coach, alerts } = draft.forCoach
  if (alert.closedAt) return coach.alertClosed
  if (alert.takenBy === by) return alerts.hasAlready(draft.client.ref, by)
  if (!alert.takenBy || !alert.takenAt) {
    takeUp(draft, alert, by)
    askOutcome(draft, alert, by)
    return coach.taken(by)
  }
  const before = { by: alert.takenBy, at: alert.takenAt.toISOString() }
  draft.put('alert', { ...alert, takenBy: by, takenAt: draft.now, had: [...alert.had, before] })
  askOutcome(draft, alert, by)
  return alerts.takenOver(by, before.by, stamp(draft, draft.now))
}

/** What came of it is asked of whoever has it, in a message of its own. */
export function askOutcome(draft: Draft, alert: AlertRow, by: string): void {
  draft.toAlerts({
    kind: 'notice',
    key: draft.id('outcome', alert.id, draft.cause),
    text: draft.forCoach.coach.whatCame(draft.client.ref, by),
    buttons: outcomeButtons(draft, alert),
  })
}

/** "Tue 17 Mar 09:05" in the practice's own time. */
export const stamp = ({ file, forCoach }: Draft, at: Date): string =>
  `${forCoach.words.date(dayAt(at, file.practice.zone))} ${timeAt(at, file.practice.zone)}`
