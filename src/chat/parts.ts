import type { Client } from 'discord.js'
import type { Actor, ChatEvent } from '../engine/event.ts'
import type { Handled } from '../engine/ports.ts'
import type { OutboxRow } from '../engine/rows.ts'
import type { ChatTexts } from '../text/en/chat.ts'
import type { FileParts } from './files.ts'

/** Direct messages with somebody who was written to before. */
export interface KnownDm {
  readonly channel: string
  readonly user: string
  /** What lies behind this message is fetched after a time away; what was applied before is known by its id. */
  readonly after: string
}

/** Where to look for what was written while the bot was away. */
export interface KnownDms {
  /** A page at a time; read at every new session. */
  all(): AsyncIterable<readonly KnownDm[]>
  /** Those with one person; null where there are none. */
  of(user: string): Promise<KnownDm | null>
}

/** What the chat is put together from. */
export interface ChatParts extends FileParts {
  readonly client: Client
  /** Where events go. */
  readonly bot: { handle(event: ChatEvent): Promise<Handled> }
  /** The message behind a component. */
  readonly outbox: (id: string) => Promise<OutboxRow | null>
  /** Aliases that this person may see: none unless a coach. */
  readonly aliases: (actor: Actor) => Promise<readonly string[]>
  readonly knownDms: KnownDms
  readonly texts: ChatTexts
  /** The same in other languages, by the platform's code of a locale ("es-419"). */
  readonly otherTexts?: Readonly<Record<string, ChatTexts>>
}
