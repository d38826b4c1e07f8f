import type { Ladder } from '../domain/ladder/ladders.ts'
import type { Texts } from '../text/index.ts'
import type { Draft } from './draft.ts'
import type { Command } from './event.ts'
import type { Answer } from './message.ts'
import type { Tx } from './ports.ts'
import type { PracticeRow } from './rows.ts'

/** One option of a command as the platform offers it. */
export interface OptionSpec {
  readonly name: string
  readonly kind: 'text' | 'number' | 'yes-no' | 'person' | 'channel' | 'role' | 'client'
  readonly required: boolean
  /** A closed list of values; labels come from the texts. */
  readonly choices?: readonly string[]
  readonly least?: number
  readonly most?: number
}

interface Declaration {
  /** Lower-case letters and hyphens, as typed after the slash. */
  readonly name: string
  readonly options: readonly OptionSpec[]
}

/** For a client, about themselves, in private. */
export interface ClientCommand extends Declaration {
  readonly who: 'client'
  /** What a coach reads who types it in the practice's server. */
  forCoach?(texts: Texts): string
  /** What is not in the client's file is read through the transaction. */
  run(draft: Draft, command: Command, tx: Tx): Answer | Promise<Answer>
}
/** For the coach, about one client named by the option `client`. */
export interface CoachCommand extends Declaration {
  readonly who: 'coach'
  /** What is not in the client's file is read through the transaction. */
  run(draft: Draft, command: Command, tx: Tx): Answer | Promise<Answer>
}
/** For the coach, about the practice; reads and writes through the transaction. */
export interface PracticeCommand extends Declaration {
  readonly who: 'coach-practice' | 'keeper'
  run(desk: Desk, command: Command): Promise<Answer>
}
export interface Desk {
  readonly tx: Tx
  /** Null before set-up, for the keeper alone. */
  readonly practice: PracticeRow | null
  readonly now: Date
  readonly texts: Texts
  readonly textsFor: (language: string) => Texts
  /** The eight of the house and the practice's own. */
  readonly ladders: readonly Ladder[]
}
export type ChatCommand = ClientCommand | CoachCommand | PracticeCommand
