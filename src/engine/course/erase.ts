import type { Day } from '../../domain/day.ts'
import { dayAt } from '../../domain/local-time.ts'
import { emergencyNumber } from '../../domain/region.ts'
import { plain } from '../answer.ts'
import type { Draft } from '../draft.ts'
import type { Answer } from '../message.ts'
import { toPractice } from '../notice.ts'
import type { Posting, RowCounts, Tx } from '../ports.ts'
import { hasEnded, isLocked, isPressing } from '../status.ts'

/** For how many days a backup is kept unless the keeper sets another number: a figure of our own, a month. */
export const BACKUP_DAYS = 30
const DAY_MS = 24 * 3_600_000

/** The last local day on which a backup made before an erasure may still hold a copy. */
export const backupsUntil = (erasedAt: Date, zone: string, days: number = BACKUP_DAYS): Day =>
  dayAt(new Date(erasedAt.getTime() + days * DAY_MS), zone)

/** Asked for twice; with a word of warning while an urgent sign is open. `said` by client or coach alike. */
export function eraseAnswer(
  draft: Draft,
  sure: boolean,
  said: { ask: string; done: string; withSign: string },
): Answer {
  const warning = hasOpenSign(draft) ? `${said.withSign}\n` : ''
  if (!sure) return plain(warning + said.ask, draft.client.ref)
  return { ...plain(warning + said.done, null), erases: true }
}

/**
 * Removes every row and gives how many went, by table; where an urgent sign was open the coach is told, in a message that is
 * about nobody's record.
 */
export async function eraseClient(tx: Tx, draft: Draft): Promise<RowCounts> {
  const word = hasOpenSign(draft) ? erasedWithSign(draft) : null
  const counts = await tx.erase(draft.client.id, draft.now)
  // it names the alias, so nothing of it is kept once it has gone
  if (word) await tx.apply({ changes: [], postings: [{ ...word, practiceId: null }] })
  return counts
}

/** Whoever is erased by their coach would wait for a prompt that does not come; nothing of the word is kept either. */
export function farewell(draft: Draft): Posting | null {
  const { practice, client } = draft.file
  if (client.stage === 'invited' || hasEnded(client)) return null
  const { commands } = draft.texts
  const care = hasOpenSign(draft) ? `${commands.eraseWithSignMe}\n` : ''
  const posting = toPractice(practice, {
    key: `${practice.id}/farewell/${draft.cause}`,
    address: { to: 'client', user: client.user },
    text: care + commands.erasedByCoach(emergencyNumber(client)),
    priority: 1,
    at: draft.now,
  })
  return { ...posting, practiceId: null }
}

/** Before a yes nothing is locked, and the alert alone tells of a sign; one asked about counts as there. */
const hasOpenSign = ({ file }: Draft): boolean =>
  isLocked(file) || isPressing(file) || file.alerts.some(({ closedAt }) => closedAt === null)

export const allRows = (counts: RowCounts): number => Object.values(counts).reduce((all, n) => all + n, 0)

function erasedWithSign(draft: Draft): Posting | null {
  const { practice, client } = draft.file
  const channel = practice.alertChannel ?? practice.coachChannel
  if (!channel) return null
  return toPractice(practice, {
    key: `${practice.id}/erased/${draft.cause}`,
    address: { to: 'alerts', channel },
    text: draft.forCoach.commands.erasedWithSign(client.ref),
    priority: 1,
    at: draft.now,
  })
}
