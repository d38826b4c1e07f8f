import type { Day } from '../domain/day.ts'
import type { SignId } from '../domain/signs/catalogue.ts'
import type { Act } from './message.ts'
import type { DueRow } from './rows.ts'

/** What a form holds when it comes back: text of a line, values of a choice. */
export type Filled = Readonly<Record<string, string | readonly string[]>>

/** Who acts: the person's platform id and, in a server, its id and the person's roles there. */
export interface Actor {
  readonly user: string
  readonly guild: string | null
  readonly roles: readonly string[]
  /** May manage the server: needed for set-up alone. */
  readonly keeper: boolean
}

/** A server as the chat sees it at the moment of asking. */
export interface Server {
  readonly name: string
  /** Platform id of whoever owns it. */
  readonly owner: string
  /** Null for a channel that is gone, or of which the bot is not told. */
  channel(id: string): ChannelFacts | null
  /** Null for a role that is gone. */
  role(id: string): { readonly mentionable: boolean } | null
}
export interface ChannelFacts {
  /** Everyone in the server can see it. */
  readonly open: boolean
  /** Names of the permissions that the bot needs there and does not have. */
  readonly lacks: readonly string[]
  /** Ids of the roles that can see it. */
  readonly readers: readonly string[]
  /** The bot may call a role there that not everybody may call. */
  readonly callsRoles: boolean
}

interface FromChat {
  /** The platform's id of the message or interaction: applied once. */
  readonly id: string
  readonly actor: Actor
}

/** A message in private. */
export interface Words extends FromChat {
  readonly kind: 'words'
  /** Instant of writing, which may lie behind `now` where the bot was away. */
  readonly at: Date
  readonly text: string
  /** Platform id of the message that this edits. */
  readonly edits: string | null
  /** Id of the edit whose words these are already: it counts as applied with them. */
  readonly appliesToo?: string
  /** Something beside words: a picture, a voice message, a sticker. */
  readonly attached: 'none' | 'file' | 'voice' | 'sticker'
}
/** A button pressed or a choice made on a message of ours. */
export interface Choice extends FromChat {
  readonly kind: 'choice'
  readonly outbox: string
  readonly act: Act
  readonly label: string
  readonly values: readonly string[]
}
export interface FormFilled extends FromChat {
  readonly kind: 'form'
  readonly outbox: string
  readonly act: Act
  readonly filled: Filled
}
export interface Command extends FromChat {
  readonly kind: 'command'
  readonly name: string
  readonly options: Readonly<Record<string, string | number | boolean>>
  /** The server it was typed in, as the chat sees it. */
  readonly server?: Server
  /** What the chat could find out about people named: their roles in the server, none where they are not in it. */
  readonly people?: Readonly<Record<string, { readonly roles: readonly string[] }>>
}
/** A message taken back; a sign in it stays. */
export interface TakenBack extends FromChat {
  readonly kind: 'taken-back'
  readonly message: string
}
/**
 * Signs that were answered while the store was away: the client has been told to stop and seek care, the alert is
 * out. Brought before the event that told of them, under whose id the messages went.
 */
export interface Told extends FromChat {
  readonly kind: 'told'
  readonly cause: string
  /** Instant of writing. */
  readonly at: Date
  readonly signs: readonly SignId[]
  /** As the client wrote them; empty where something was pressed or ticked. */
  readonly words: string
  /** False: there is one of the signs, and which was not said. */
  readonly named: boolean
  /** Null: the day of the latest prompt. */
  readonly day: Day | null
}
/** A stored due instant has come. */
export interface DueCome {
  readonly kind: 'due'
  readonly due: DueRow
}
/** A message could not be delivered and will not be tried again. */
export interface Undelivered {
  readonly kind: 'undelivered'
  readonly outbox: string
  readonly reason: 'closed' | 'no-access' | 'gone' | 'open' | 'refused' | 'stale'
}

export type ChatEvent = Words | Choice | FormFilled | Command | TakenBack | Told
export type Event = ChatEvent | DueCome | Undelivered
