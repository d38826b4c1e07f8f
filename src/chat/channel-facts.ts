import { type Client, type Guild, PermissionFlagsBits } from 'discord.js'
import type { Command } from '../engine/event.ts'
import type { ChatTexts } from '../text/en/chat.ts'

type Facts = NonNullable<Command['channels']>[string]
type Name = keyof ChatTexts['permissions']

const NEEDED: readonly Name[] = [
  'ViewChannel',
  'SendMessages',
  'AttachFiles',
  'ReadMessageHistory',
  'EmbedLinks',
]

/**
 * Whether everyone in the server can see a channel, and which permissions the bot lacks there. Of a channel that
 * the bot does not know nothing good is assumed: it counts as open, and all is lacking.
 */
export function channelFacts(
  client: Client,
  guildId: string,
  channelId: string,
  names: ChatTexts['permissions'],
): Facts {
  const guild: Guild | undefined = client.guilds.cache.get(guildId)
  const channel = guild?.channels.cache.get(channelId)
  const mine = guild?.members.me && channel?.permissionsFor(guild.members.me)
  return {
    open:
      !guild || !channel || channel.permissionsFor(guild.roles.everyone).has(PermissionFlagsBits.ViewChannel),
    lacks: NEEDED.filter((name) => !mine?.has(PermissionFlagsBits[name])).map((name) => names[name]),
  }
}
