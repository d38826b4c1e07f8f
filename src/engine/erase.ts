import { plain } from './answer.ts'
import type { Draft } from './draft.ts'
import { NOBODY } from './draft.ts'
import type { Answer } from './message.ts'
import type { Posting, Tx } from './ports.ts'
import { isLocked } from './status.ts'

/** Asked for twice; with a word of warning while an urgent sign is open. `said` by client or coach alike. */
export function eraseAnswer(
  draft: Draft,
  sure: boolean,
  said: { ask: string; done: string; withSign: string },
): Answer {
  const warning = isLocked(draft.file) ? `${said.withSign}\n` : ''
  if (!sure) return plain(warning + said.ask, draft.client.ref)
  return { ...plain(warning + said.done, null), erases: true }
}

/** Removes every row; where an urgent sign was open the coach is told, in a message that is about nobody's record. */
export async function eraseClient(tx: Tx, draft: Draft): Promise<void> {
  const notice = isLocked(draft.file) ? erasedWithSign(draft) : null
  await tx.erase(draft.client.id)
  if (notice) await tx.apply({ changes: [], postings: [notice] })
}

function erasedWithSign(draft: Draft): Posting | null {
  const { practice, client } = draft.file
  const channel = practice.alertChannel ?? practice.coachChannel
  if (!channel) return null
  return {
    message: {
      key: `${practice.id}/erased/${draft.cause}`,
      address: { to: 'alerts', channel },
      about: null,
      kind: 'notice',
      asks: null,
      care: 'none',
      text: draft.forCoach.commands.erasedWithSign(client.ref),
      drills: [],
      buttons: [],
      pick: null,
      picture: null,
      files: [],
      mentions: NOBODY,
    },
    clientId: null,
    practiceId: practice.id,
    priority: 1,
    notBefore: draft.now,
    expires: null,
  }
}
