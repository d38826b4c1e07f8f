import type { Channel, Guild, Overwrite } from './world.ts'

/** Permission bits (Discord developer documentation, "Permissions"). */
export const Permission = {
  administrator: 1n << 3n,
  manageChannels: 1n << 4n,
  manageGuild: 1n << 5n,
  viewChannel: 1n << 10n,
  sendMessages: 1n << 11n,
  manageMessages: 1n << 13n,
  embedLinks: 1n << 14n,
  attachFiles: 1n << 15n,
  readMessageHistory: 1n << 16n,
  mentionEveryone: 1n << 17n,
  manageRoles: 1n << 28n,
  useApplicationCommands: 1n << 31n,
} as const

/** Every bit that the stand-in knows. */
const ALL_PERMISSIONS = Object.values(Permission).reduce((all, bit) => all | bit, 0n)

/** What somebody without any role may do in a new server: read, write, use commands; manage nothing. */
export const EVERYONE_DEFAULT =
  Permission.viewChannel |
  Permission.sendMessages |
  Permission.embedLinks |
  Permission.attachFiles |
  Permission.readMessageHistory |
  Permission.useApplicationCommands

/** What a member may do in a server, channels aside; nothing for somebody who is not in it. */
export function guildPermissions(guild: Guild, userId: string): bigint {
  const member = guild.members.get(userId)
  if (!member) return 0n
  if (guild.ownerId === userId) return ALL_PERMISSIONS
  const roles = [guild.id, ...member.roleIds]
  const bits = roles.reduce((all, id) => all | (guild.roles.get(id)?.permissions ?? 0n), 0n)
  return bits & Permission.administrator ? ALL_PERMISSIONS : bits
}

/**
 * What a member may do in a channel: the server's bits, then the channel's overwrites for everyone, for the
 * member's roles together, for the member. Who cannot view a channel can do nothing in it.
 */
export function channelPermissions(guild: Guild, channel: Channel, userId: string): bigint {
  const base = guildPermissions(guild, userId)
  if (base & Permission.administrator || base === 0n) return base
  const roleIds = new Set(guild.members.get(userId)?.roleIds)
  const everyone = channel.overwrites.filter((o) => o.id === guild.id)
  const roles = channel.overwrites.filter((o) => o.type === 'role' && roleIds.has(o.id))
  const own = channel.overwrites.filter((o) => o.type === 'member' && o.id === userId)
  const bits = [everyone, roles, own].reduce(applyOverwrites, base)
  return bits & Permission.viewChannel ? bits : 0n
}

function applyOverwrites(bits: bigint, overwrites: readonly Overwrite[]): bigint {
  const deny = overwrites.reduce((all, o) => all | o.deny, 0n)
  const allow = overwrites.reduce((all, o) => all | o.allow, 0n)
  return (bits & ~deny) | allow
}
