import { type Client, type Guild, type GuildBasedChannel, PermissionFlagsBits } from 'discord.js'
import type { ChannelFacts, Server } from '../engine/event.ts'
import type { ChatTexts } from '../text/en/chat.ts'

type Name = keyof ChatTexts['permissions']

/** What is needed to post words, pictures and files: no message of ours has an embed, and none is read back there. */
const NEEDED: readonly Name[] = ['ViewChannel', 'SendMessages', 'AttachFiles']

/** A server as the client knows it now; null where the bot is not in it. */
export function serverOf(client: Client, guildId: string, names: ChatTexts['permissions']): Server | null {
  const guild = client.guilds.cache.get(guildId)
  if (!guild) return null
  return {
    name: guild.name,
    owner: guild.ownerId,
    channel(id) {
      const channel = guild.channels.cache.get(id)
      return channel ? channelFacts(guild, channel, names) : null
    },
    role(id) {
      const role = guild.roles.cache.get(id)
      return role ? { mentionable: role.mentionable } : null
    },
  }
}

function channelFacts(
  guild: Guild,
  channel: GuildBasedChannel,
  names: ChatTexts['permissions'],
): ChannelFacts {
  const mine = guild.members.me && channel.permissionsFor(guild.members.me)
  return {
    open: isOpen(guild, channel),
    lacks: NEEDED.filter((name) => !mine?.has(PermissionFlagsBits[name])).map((name) => names[name]),
    readers: [...guild.roles.cache.values()]
      .filter(({ id, managed }) => id !== guild.id && !managed)
      .filter((role) => channel.permissionsFor(role).has(PermissionFlagsBits.ViewChannel))
      .map(({ id }) => id),
    callsRoles: mine?.has(PermissionFlagsBits.MentionEveryone) ?? false,
  }
}

/** Computed as the platform does: what everyone may in the server, then what the channel grants or takes away. */
const isOpen = (guild: Guild, channel: GuildBasedChannel): boolean =>
  channel.permissionsFor(guild.roles.everyone).has(PermissionFlagsBits.ViewChannel)

/** True where a channel of a server is known and everyone in the server can see it. */
export function isOpenToAll(client: Client, channelId: string): boolean {
  const channel = client.channels.cache.get(channelId)
  if (!channel || channel.isDMBased()) return false
  return isOpen(channel.guild, channel)
}
