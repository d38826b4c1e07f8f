import { trail } from './check-in/record.ts'
import { strangerAnswer } from './check-in/stranger.ts'
import { textsForStranger } from './check-in/stranger-language.ts'
import { onWords } from './check-in/words.ts'
import { onChoice, onForm } from './choice.ts'
import { digest, digestDue } from './coach/digest.ts'
import { onRetentionDue } from './course/retention.ts'
import { onTold } from './course/told.ts'
import { onDue } from './due.ts'
import type { ChatEvent, DueCome, TakenBack, Words } from './event.ts'
import { onCommand } from './on-command.ts'
import { commit, draftOf, type EngineParts, fileInUse } from './parts.ts'
import type { Engine, Handled, Tx } from './ports.ts'
import { undelivered } from './undelivered.ts'

const NOTHING: Handled = { answer: null }

/** One event, one way: what it leads to is decided and written, messages included, in one transaction. */
export function createEngine(parts: EngineParts): Engine {
  return {
    handle: (event, now) =>
      parts.store.transaction(async (tx) => {
        if (event.kind === 'due') return due(parts, tx, event, now)
        if (event.kind === 'undelivered') {
          await undelivered(parts, tx, event, now)
          return NOTHING
        }
        if (await tx.seen(event.id)) return NOTHING
        const handled = await chat(parts, tx, event, now)
        // read again: the event may have enrolled or erased them
        const rows = await tx.clientRowsOfUser(event.actor.user)
        const file = fileInUse(rows.map((client) => ({ client })))
        const of = { clientId: file?.client.id ?? null, at: now }
        const ids = [event.id, ...(event.kind === 'words' && event.appliesToo ? [event.appliesToo] : [])]
        const changes = ids.map((id) => ({ put: 'inbound', row: { id, ...of } }) as const)
        await tx.apply({ changes, postings: [] })
        return handled
      }),
  }
}

function chat(parts: EngineParts, tx: Tx, event: ChatEvent, now: Date): Promise<Handled> {
  switch (event.kind) {
    case 'words':
      return words(parts, tx, event, now)
    case 'choice':
      return onChoice(parts, tx, event, now)
    case 'form':
      return onForm(parts, tx, event, now)
    case 'command':
      return onCommand(parts, tx, event, now)
    case 'taken-back':
      return takenBack(parts, tx, event, now)
    case 'told':
      return onTold(parts, tx, event, now)
  }
}

async function words(parts: EngineParts, tx: Tx, event: Words, now: Date): Promise<Handled> {
  const file = fileInUse(await tx.clientsOfUser(event.actor.user))
  if (!file || file.client.stage === 'left') {
    const texts = textsForStranger(parts.textsFor, event.text, file?.client.language)
    await tx.apply({ changes: [], postings: [strangerAnswer(event, texts, now, file !== null)] })
    return NOTHING
  }
  // a clock that differs from the platform's must not put a message into the future
  const written = event.at < now ? event.at : now
  const draft = draftOf(parts, file, now, event.id, written)
  onWords(draft, event)
  await commit(tx, draft)
  return NOTHING
}

/** A message taken back: its words stay in the trail, and a sign in it stays a sign. */
async function takenBack(parts: EngineParts, tx: Tx, event: TakenBack, now: Date): Promise<Handled> {
  const file = fileInUse(await tx.clientsOfUser(event.actor.user))
  if (file?.client.stage !== 'enrolled') return NOTHING
  const draft = draftOf(parts, file, now, event.id)
  trail(draft, 'deleted', '', null, { message: event.message })
  draft.toClient({ kind: 'notice', text: draft.texts.client.takenBack })
  await commit(tx, draft)
  return NOTHING
}

async function due(parts: EngineParts, tx: Tx, event: DueCome, now: Date): Promise<Handled> {
  // read again inside the transaction: it may have been handled or moved meanwhile
  const row = await tx.due(event.due.id)
  if (!row || row.at > now) return NOTHING
  if (row.kind === 'digest') return weekly(parts, tx, row.practiceId, row.at, now)
  const file = row.clientId ? await tx.client(row.clientId) : null
  if (!file) return NOTHING
  const draft = draftOf(parts, file, now, `${row.id}@${row.at.toISOString()}`)
  onDue(draft, row)
  if (row.kind === 'retention') await onRetentionDue(tx, draft, parts.backupDays)
  else await commit(tx, draft)
  return NOTHING
}

async function weekly(parts: EngineParts, tx: Tx, practiceId: string, at: Date, now: Date): Promise<Handled> {
  const practice = await tx.practice(practiceId)
  if (!practice) return NOTHING
  const files = await tx.roster(practiceId)
  const postings = digest(practice, files, now, parts, at.toISOString().slice(0, 10))
  await tx.apply({ changes: [{ put: 'due', row: digestDue(practice, now) }], postings })
  return NOTHING
}
