import { channelPermissions, Permission } from '../permissions.ts'
import { refuse } from '../refusal.ts'
import type { Channel, Guild, StoredMessage, World } from '../world.ts'

/**
 * The channel, if the bot may do all of `needed` there.
 * Refused: 10003 no such channel, 50001 the bot cannot view it, 50013 it may not do the rest.
 */
export function reachChannel(world: World, id: string, needed: bigint): Channel {
  const channel = world.channels.get(id)
  if (!channel) throw refuse.unknownChannel()
  if (channel.guildId === null) return channel
  const held = botPermissions(world, channel)
  if (!(held & Permission.viewChannel)) throw refuse.missingAccess()
  if ((held & needed) !== needed) throw refuse.missingPermissions()
  return channel
}

/** What the bot may do in a server's channel; nothing where it is not a member. */
export function botPermissions(world: World, channel: Channel): bigint {
  const guild = world.guildOf(channel)
  return guild ? channelPermissions(guild, channel, world.bot.id) : 0n
}

/** The server, if the bot is in it: 10004 no such server, 50001 not a member. */
export function reachGuild(world: World, id: string): Guild {
  const guild = world.guilds.get(id)
  if (!guild) throw refuse.unknownGuild()
  if (!guild.members.has(world.bot.id)) throw refuse.missingAccess()
  return guild
}

/** A message of the channel that everybody there sees: 10008 otherwise. */
export function reachMessage(world: World, channel: Channel, id: string): StoredMessage {
  const stored = world.messages.get(id)
  if (!stored || stored.channelId !== channel.id || stored.onlyFor !== null) throw refuse.unknownMessage()
  return stored
}
