import type { Draft } from '../draft.ts'
import { toPractice } from '../notice.ts'
import { commit } from '../parts.ts'
import type { Tx } from '../ports.ts'
import { isLocked } from '../status.ts'
import { erasedAt, startRetention } from './end.ts'
import { backupsUntil, eraseClient } from './erase.ts'

const DAY_MS = 24 * 3_600_000

/**
 * The time of a record is up: everything goes, and the coach's channel hears that one has gone, not whose. While an
 * urgent sign or alert is open it waits a day at a time, and the coach is told once.
 */
export async function onRetentionDue(tx: Tx, draft: Draft, backupDays?: number): Promise<void> {
  const { stage, endedAt } = draft.client
  if (endedAt === null && stage !== 'invited') return commit(tx, draft)
  // the practice may have lengthened the time since
  if (erasedAt(draft.file) > draft.now) {
    startRetention(draft)
    return commit(tx, draft)
  }
  const isOpen = isLocked(draft.file) || draft.file.alerts.some((alert) => alert.closedAt === null)
  if (isOpen) {
    draft.due('retention', new Date(draft.now.getTime() + DAY_MS))
    draft.toCoach({
      kind: 'notice',
      key: draft.id('retention-waits'),
      text: draft.forCoach.courseForCoach.retentionWaits(draft.client.ref),
    })
    return commit(tx, draft)
  }
  const { practice } = draft.file
  await eraseClient(tx, draft)
  if (!practice.coachChannel) return
  const notice = toPractice(practice, {
    key: `${practice.id}/time-is-up/${draft.cause}`,
    address: { to: 'coach', channel: practice.coachChannel },
    text: draft.forCoach.courseForCoach.timeIsUp(backupsUntil(draft.now, practice.zone, backupDays)),
    priority: 4,
    at: draft.now,
  })
  await tx.apply({ changes: [], postings: [notice] })
}
