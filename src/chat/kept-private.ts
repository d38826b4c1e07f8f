import {
  type APIGuildChannel,
  type APIRole,
  type ChannelType,
  type Client,
  PermissionFlagsBits,
  type REST,
  Routes,
} from 'discord.js'
import { type Courier, Undeliverable } from '../engine/ports.ts'
import { isOpenToAll } from './channel-facts.ts'
import { refusalOf } from './refusal.ts'

/** Posts to no channel of a server that everyone there can see: rights may have changed since set-up. */
export const keptPrivate = (courier: Courier, client: Client): Courier => ({
  async deliver(row) {
    const { address } = row.body
    if (address.to !== 'client' && isOpenToAll(client, address.channel)) throw new Undeliverable('open')
    return courier.deliver(row)
  },
})

/** The same for a process without the gateway: it asks before each message, as it does not hear of changes. */
export const askedPrivate = (courier: Courier, rest: REST): Courier => ({
  async deliver(row) {
    const { address } = row.body
    if (address.to === 'client') return courier.deliver(row)
    const open = await isOpen(rest, address.channel).catch((error) => {
      throw refusalOf(error) ?? error
    })
    if (open) throw new Undeliverable('open')
    return courier.deliver(row)
  },
})

/** Computed as the platform does: what everyone may in the server, then what the channel takes away or grants. */
async function isOpen(rest: REST, id: string): Promise<boolean> {
  const channel = (await rest.get(Routes.channel(id))) as APIGuildChannel<ChannelType.GuildText>
  if (!channel.guild_id) return false
  const roles = (await rest.get(Routes.guildRoles(channel.guild_id))) as APIRole[]
  // the role of everyone has the id of its server (Discord documentation, "Permissions")
  const everyone = BigInt(roles.find((role) => role.id === channel.guild_id)?.permissions ?? 0)
  if (everyone & PermissionFlagsBits.Administrator) return true
  const own = channel.permission_overwrites?.find((one) => one.id === channel.guild_id)
  const may = (everyone & ~BigInt(own?.deny ?? 0)) | BigInt(own?.allow ?? 0)
  return (may & PermissionFlagsBits.ViewChannel) !== 0n
}
