import { promptDayAt } from '../check-in/words.ts'
import type { Told } from '../event.ts'
import { commit, draftOf, type EngineParts, fileInUse } from '../parts.ts'
import type { Handled, Tx } from '../ports.ts'
import { raiseSigns } from '../urgent/urgent.ts'

/**
 * Writes down what was answered while the store was away: every sign that the client was told of is there, sure or
 * not, known or not, so that record, lock and alert say what the client heard. Before a yes to checking in, and of
 * somebody who has left, nothing is kept: the event itself does there what it always does.
 */
export async function onTold(parts: EngineParts, tx: Tx, event: Told, now: Date): Promise<Handled> {
  const file = fileInUse(await tx.clientsOfUser(event.actor.user))
  const stage = file?.client.stage
  if (!file || stage === 'invited' || stage === 'left') return { answer: null }
  const written = event.at < now ? event.at : now
  // the cause is the event's own, so that messages already sent are known by their keys
  const draft = draftOf(parts, file, now, event.cause, written)
  const { client } = draft.forCoach
  const words = event.words || (event.named ? client.ticked : client.notNamed)
  raiseSigns(draft, event.signs, event.day ?? promptDayAt(draft), words)
  await commit(tx, draft)
  return { answer: null }
}
