import { type BaseInteraction, PermissionFlagsBits } from 'discord.js'
import type { Actor } from '../engine/event.ts'

/** Who acts; in direct messages without server, roles or rights. */
export function actorOf(interaction: BaseInteraction): Actor {
  return {
    user: interaction.user.id,
    guild: interaction.guildId,
    roles: rolesOf(interaction),
    keeper: interaction.memberPermissions?.has(PermissionFlagsBits.ManageGuild) ?? false,
  }
}

export const inPrivate = (user: string): Actor => ({ user, guild: null, roles: [], keeper: false })

const rolesOf = ({ member, guildId }: BaseInteraction): string[] => memberRoles(member, guildId)

/** The roles of a member in a server; none of somebody who is not in it. */
export function memberRoles(member: BaseInteraction['member'], guildId: string | null): string[] {
  if (!member) return []
  const ids = Array.isArray(member.roles) ? member.roles : [...member.roles.cache.keys()]
  // everyone's role has the server's own id; it tells nothing about a person
  return ids.filter((id) => id !== guildId)
}
