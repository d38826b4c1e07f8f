import { createSnowflakes } from './snowflake.ts'
import type { Command, WireMessage } from './wire.ts'

/** Somebody with an account: a person or the bot. */
export interface Account {
  id: string
  name: string
  bot: boolean
  /** Language of their own app, for example `en-US`. */
  locale: string
}

export interface Role {
  id: string
  name: string
  permissions: bigint
  managed: boolean
}

export interface Member {
  userId: string
  roleIds: string[]
  joinedAt: number
}

/** A server with its roles and members. The role whose id is the server's own is everyone's. */
export interface Guild {
  id: string
  name: string
  ownerId: string
  roles: Map<string, Role>
  members: Map<string, Member>
}

/** Allows and denies for one role or member in one channel. */
export interface Overwrite {
  id: string
  type: 'role' | 'member'
  allow: bigint
  deny: bigint
}

/** A text channel of a server, or the direct messages between a person and the bot. */
export interface Channel {
  id: string
  guildId: string | null
  name: string | null
  recipientId: string | null
  overwrites: Overwrite[]
  /** Oldest first; deleted ones are taken out. */
  messages: StoredMessage[]
}

/** A message as it travels, and what the platform knows about it besides. */
export interface StoredMessage {
  wire: WireMessage
  channelId: string
  /** The one person who sees it; null where everybody in the channel does. */
  onlyFor: string | null
  interactionId: string | null
}

/** The bytes of an attachment. */
export interface StoredFile {
  name: string
  contentType: string
  data: Buffer
}

/** All that the platform holds. Plain data: the rules about it live elsewhere. */
export class World {
  readonly nextId: () => string
  readonly bot: Account
  readonly users = new Map<string, Account>()
  readonly guilds = new Map<string, Guild>()
  readonly channels = new Map<string, Channel>()
  readonly messages = new Map<string, StoredMessage>()
  readonly files = new Map<string, StoredFile>()
  readonly dmsClosed = new Set<string>()
  /** Privileged intents that are switched on for the application; none, as for a new one. */
  privilegedIntents = 0
  /** Registered chat commands by scope: a server's id, or 'global'. */
  readonly commands = new Map<string, Command[]>()
  /** How often commands were declared, by the same scopes. */
  readonly registrations = new Map<string, number>()

  private readonly dms = new Map<string, Channel>()
  private readonly rooms = new Map<string, Channel[]>()

  constructor(readonly now: () => number) {
    this.nextId = createSnowflakes(now)
    this.bot = { id: this.nextId(), name: 'ebbline', bot: true, locale: 'en-US' }
    this.users.set(this.bot.id, this.bot)
  }

  /** The direct messages between a person and the bot, opened on first use. */
  dmChannel(userId: string): Channel {
    const known = this.dms.get(userId)
    if (known) return known
    const opened = this.keepChannel({ guildId: null, name: null, recipientId: userId, overwrites: [] })
    this.dms.set(userId, opened)
    return opened
  }

  /** Keeps a new channel under an id, which is given to it where none is said. */
  keepChannel(channel: Omit<Channel, 'id' | 'messages'>, id = this.nextId()): Channel {
    const kept = { ...channel, id, messages: [] }
    this.channels.set(id, kept)
    if (kept.guildId !== null) this.rooms.set(kept.guildId, [...this.channelsOf(kept.guildId), kept])
    return kept
  }

  dropChannel(channel: Channel): void {
    this.channels.delete(channel.id)
    const { guildId } = channel
    if (guildId === null) return
    this.rooms.set(
      guildId,
      this.channelsOf(guildId).filter((other) => other !== channel),
    )
  }

  /** The servers that a person and the bot are both in. */
  sharedGuilds(userId: string): Guild[] {
    return this.botGuilds().filter((guild) => guild.members.has(userId))
  }

  botGuilds(): Guild[] {
    return [...this.guilds.values()].filter((guild) => guild.members.has(this.bot.id))
  }

  guildOf(channel: Channel): Guild | null {
    return channel.guildId === null ? null : (this.guilds.get(channel.guildId) ?? null)
  }

  channelsOf(guildId: string): readonly Channel[] {
    return this.rooms.get(guildId) ?? []
  }
}
