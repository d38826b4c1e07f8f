import { LADDERS, type Ladder } from '../domain/ladder/ladders.ts'
import type { Texts } from '../text/index.ts'
import type { ChatCommand } from './command.ts'
import { Draft } from './draft.ts'
import type { ClientFile, Store, Tx } from './ports.ts'
import type { Stage } from './rows.ts'

/** What the engine is put together from. */
export interface EngineParts {
  readonly store: Store
  readonly commands: readonly ChatCommand[]
  /** The sentences of a language. */
  readonly textsFor: (language: string) => Texts
  /** The eight of the house and the practice's own; the eight alone where left out. */
  readonly ladders?: readonly Ladder[] | undefined
  /** For how many days a backup is kept by the practice's own rule; `BACKUP_DAYS` where left out. */
  readonly backupDays?: number | undefined
}

/** A draft of one client's file, with ids made of the event. */
export const draftOf = (
  parts: EngineParts,
  file: ClientFile,
  now: Date,
  cause: string,
  written = now,
): Draft => new Draft(file, now, cause, parts.textsFor, written, parts.ladders ?? LADDERS)

// A way that is under way comes before an invitation, and that before one that has ended.
const STAGES: readonly Stage[] = ['enrolled', 'screening', 'invited', 'discharged', 'left']

/** Of several files of one person (latest first) the one in use. */
export const fileInUse = <T extends { readonly client: Pick<ClientFile['client'], 'stage'> }>(
  files: readonly T[],
): T | null =>
  [...files].sort((a, b) => STAGES.indexOf(a.client.stage) - STAGES.indexOf(b.client.stage))[0] ?? null

/** Writes what a draft led to; a message with drills that still waits is withdrawn where drills have been stopped. */
export async function commit(tx: Tx, draft: Draft): Promise<void> {
  if (draft.stopsDrills)
    await tx.withdraw(draft.client.id, 'drills stopped', (row) => row.body.drills.length > 0)
  await tx.apply(draft.outcome)
}
