import { Intent } from './codes.ts'
import { channelPermissions, Permission } from './permissions.ts'
import type { WireMessage } from './wire.ts'
import type { Channel, StoredMessage, World } from './world.ts'

/** One gateway event on its way to the sessions. */
export interface Published {
  name: string
  /** The event as a session with these intents hears it; null where it does not. */
  forIntents: (intents: number) => unknown
}

/** Hands an event to whoever listens at the gateway. */
export type Publish = (event: Published) => void

/** An event that a session hears when it asked for any of `intents`. */
export function event(name: string, intents: number, data: unknown): Published {
  return { name, forIntents: (asked) => (asked & intents ? data : null) }
}

/** An event that every session hears. */
export function eventForAll(name: string, data: unknown): Published {
  return { name, forIntents: () => data }
}

/**
 * A message event, or null where the bot is not told: private replies, and channels that it cannot view.
 * Words, embeds, files and components reach a session without the message-content intent only in direct
 * messages, in the bot's own messages and where the bot is mentioned (Discord documentation, "Gateway").
 */
export function messageEvent(world: World, name: string, stored: StoredMessage): Published | null {
  const channel = world.channels.get(stored.channelId)
  if (!channel || stored.onlyFor !== null || !botSees(world, channel)) return null
  const needed = channel.guildId === null ? Intent.directMessages : Intent.guildMessages
  const place = messagePlace(world, channel, stored.wire.author.id)
  return {
    name,
    forIntents: (asked) =>
      asked & needed ? { ...visibleTo(world, channel, stored.wire, asked), ...place } : null,
  }
}

function messagePlace(world: World, channel: Channel, authorId: string) {
  if (channel.guildId === null) return { channel_type: 1 }
  const member = world.guilds.get(channel.guildId)?.members.get(authorId)
  return {
    channel_type: 0,
    guild_id: channel.guildId,
    ...(member
      ? { member: { roles: member.roleIds, joined_at: new Date(member.joinedAt).toISOString() } }
      : {}),
  }
}

/** The message with its content taken out where these intents do not give it. */
export function visibleTo(world: World, channel: Channel, wire: WireMessage, intents: number): WireMessage {
  const own = wire.author.id === world.bot.id
  const mentioned = wire.mentions.some((user) => user.id === world.bot.id)
  if (channel.guildId === null || own || mentioned || intents & Intent.messageContent) return wire
  return { ...wire, content: '', embeds: [], attachments: [], components: [] }
}

/** Whether the bot is told of what happens in a channel. */
function botSees(world: World, channel: Channel): boolean {
  if (channel.guildId === null) return true
  const guild = world.guildOf(channel)
  if (!guild) return false
  return (channelPermissions(guild, channel, world.bot.id) & Permission.viewChannel) !== 0n
}
