import { Intent } from './codes.ts'
import { channelObject, guildCreateObject, memberObject, roleObjects } from './objects.ts'
import { EVERYONE_DEFAULT, Permission } from './permissions.ts'
import { event, type Publish } from './publish.ts'
import type { Account, Channel, Guild, Member, Overwrite, Role, World } from './world.ts'

/** Who can see a new channel; everybody and the bot where nothing is said. */
export interface ChannelOptions {
  everyoneCanView?: boolean
  botCanView?: boolean
  /** Overwrites besides those that follow from the two above. */
  overwrites?: Overwrite[]
}

/** Builds servers and changes them; a client that is logged in hears of it. */
export class Builder {
  constructor(
    private readonly world: World,
    private readonly publish: Publish,
  ) {}

  /** A new account; it is in no server yet. */
  addAccount(name: string, locale = 'en-US'): Account {
    const account = { id: this.world.nextId(), name, bot: false, locale }
    this.world.users.set(account.id, account)
    return account
  }

  /** A new server with the bot in it; the owner, where given, is its first member. */
  addGuild(name: string, options: { ownerId?: string; botPermissions?: bigint } = {}): Guild {
    const { world } = this
    const id = world.nextId()
    const everyone: Role = { id, name: '@everyone', permissions: EVERYONE_DEFAULT, managed: false }
    const ownerId = options.ownerId ?? this.addAccount(`${name}-owner`).id
    const guild: Guild = { id, name, ownerId, roles: new Map([[id, everyone]]), members: new Map() }
    world.guilds.set(id, guild)
    guild.members.set(ownerId, this.member(ownerId, []))
    this.inviteBot(guild, options.botPermissions ?? EVERYONE_DEFAULT)
    return guild
  }

  /** A new role; without permissions of its own it only names people. */
  addRole(guildId: string, name: string, permissions = 0n): Role {
    const guild = this.guild(guildId)
    const role = { id: this.world.nextId(), name, permissions, managed: false }
    guild.roles.set(role.id, role)
    const wire = roleObjects(guild).at(-1)
    this.publish(event('GUILD_ROLE_CREATE', Intent.guilds, { guild_id: guildId, role: wire }))
    return role
  }

  /** Takes a role away, from its members as well. */
  removeRole(guildId: string, roleId: string): void {
    const guild = this.guild(guildId)
    guild.roles.delete(roleId)
    for (const member of guild.members.values()) member.roleIds = member.roleIds.filter((id) => id !== roleId)
    this.publish(event('GUILD_ROLE_DELETE', Intent.guilds, { guild_id: guildId, role_id: roleId }))
  }

  /** A new text channel. */
  addChannel(guildId: string, name: string, options: ChannelOptions = {}): Channel {
    const overwrites = [...this.viewOverwrites(guildId, options), ...(options.overwrites ?? [])]
    const channel = this.world.keepChannel({ guildId, name, recipientId: null, overwrites })
    this.publish(event('CHANNEL_CREATE', Intent.guilds, channelObject(this.world, channel)))
    return channel
  }

  /** Gives a channel other overwrites. */
  setOverwrites(channelId: string, overwrites: Overwrite[]): void {
    const channel = this.world.channels.get(channelId)
    if (!channel) throw new Error(`there is no channel ${channelId}`)
    channel.overwrites = overwrites
    this.publish(event('CHANNEL_UPDATE', Intent.guilds, channelObject(this.world, channel)))
  }

  /** Takes a channel away with all that was said in it. */
  removeChannel(channelId: string): void {
    const channel = this.world.channels.get(channelId)
    if (!channel) throw new Error(`there is no channel ${channelId}`)
    const gone = channelObject(this.world, channel)
    this.world.dropChannel(channel)
    for (const message of channel.messages) this.world.messages.delete(message.wire.id)
    this.publish(event('CHANNEL_DELETE', Intent.guilds, gone))
  }

  /** Lets somebody join, or gives a member other roles. */
  addMember(guildId: string, userId: string, roleIds: readonly string[] = []): void {
    const guild = this.guild(guildId)
    const known = guild.members.has(userId)
    const member = this.member(userId, [...roleIds])
    guild.members.set(userId, member)
    const data = { guild_id: guildId, ...memberObject(this.world, member) }
    const name = known ? 'GUILD_MEMBER_UPDATE' : 'GUILD_MEMBER_ADD'
    this.publish(event(name, userId === this.world.bot.id ? Intent.guilds : Intent.guildMembers, data))
  }

  /** Somebody leaves. */
  removeMember(guildId: string, userId: string): void {
    const user = this.world.users.get(userId)
    if (!user || !this.guild(guildId).members.delete(userId)) return
    const data = {
      guild_id: guildId,
      user: { id: userId, username: user.name, discriminator: '0', avatar: null },
    }
    this.publish(event('GUILD_MEMBER_REMOVE', Intent.guildMembers, data))
  }

  /** The bot is put out of a server. */
  removeBot(guildId: string): void {
    this.guild(guildId).members.delete(this.world.bot.id)
    this.publish(event('GUILD_DELETE', Intent.guilds, { id: guildId }))
  }

  /** The bot is let into a server, again or for the first time. */
  inviteBot(guild: Guild, permissions: bigint): void {
    const role: Role = { id: this.world.nextId(), name: this.world.bot.name, permissions, managed: true }
    guild.roles.set(role.id, role)
    guild.members.set(this.world.bot.id, this.member(this.world.bot.id, [role.id]))
    this.publish({
      name: 'GUILD_CREATE',
      forIntents: (asked) =>
        asked & Intent.guilds
          ? guildCreateObject(this.world, guild, (asked & Intent.guildMembers) !== 0)
          : null,
    })
  }

  private member(userId: string, roleIds: string[]): Member {
    return { userId, roleIds, joinedAt: this.world.now() }
  }

  private viewOverwrites(guildId: string, options: ChannelOptions): Overwrite[] {
    const view = Permission.viewChannel
    const shut: Overwrite = { id: guildId, type: 'role', allow: 0n, deny: view }
    const botId = this.world.bot.id
    const botView = options.botCanView ?? true
    const bot: Overwrite = {
      id: botId,
      type: 'member',
      allow: botView ? view : 0n,
      deny: botView ? 0n : view,
    }
    const isPrivate = options.everyoneCanView === false
    return [...(isPrivate ? [shut] : []), ...(isPrivate || !botView ? [bot] : [])]
  }

  private guild(id: string): Guild {
    const guild = this.world.guilds.get(id)
    if (!guild) throw new Error(`there is no server ${id}`)
    return guild
  }
}
