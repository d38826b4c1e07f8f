import { ChannelType } from './codes.ts'
import { channelPermissions } from './permissions.ts'
import type { WireUser } from './wire.ts'
import type { Account, Channel, Guild, Member, Role, World } from './world.ts'

// Objects as they travel. Fields that the stand-in has no use for hold the platform's neutral values.

export function userObject(account: Account): WireUser {
  return {
    id: account.id,
    username: account.name,
    discriminator: '0',
    global_name: null,
    avatar: null,
    bot: account.bot,
    public_flags: 0,
    flags: 0,
    primary_guild: null,
  }
}

/** The bot as it sees itself. */
export function selfObject(account: Account) {
  return { ...userObject(account), email: null, verified: true, mfa_enabled: true, locale: 'en-US' }
}

export function memberObject(world: World, member: Member) {
  return { ...bareMember(member), user: userObject(world.users.get(member.userId)!) }
}

/** A member without the account beside it, as messages carry it. */
function bareMember(member: Member) {
  return {
    nick: null,
    avatar: null,
    banner: null,
    roles: member.roleIds,
    joined_at: new Date(member.joinedAt).toISOString(),
    premium_since: null,
    deaf: false,
    mute: false,
    flags: 0,
    pending: false,
    communication_disabled_until: null,
  }
}

function roleObject(role: Role, position: number) {
  return {
    id: role.id,
    name: role.name,
    permissions: role.permissions.toString(),
    position,
    color: 0,
    colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
    hoist: false,
    managed: role.managed,
    mentionable: false,
    icon: null,
    unicode_emoji: null,
    flags: 0,
  }
}

export function roleObjects(guild: Guild) {
  return [...guild.roles.values()].map(roleObject)
}

export function channelObject(world: World, channel: Channel) {
  const shared = { id: channel.id, flags: 0, last_message_id: channel.messages.at(-1)?.wire.id ?? null }
  if (channel.guildId === null) {
    const recipient = userObject(world.users.get(channel.recipientId!)!)
    return { ...shared, type: ChannelType.dm, recipients: [recipient] }
  }
  return {
    ...shared,
    type: ChannelType.text,
    guild_id: channel.guildId,
    name: channel.name,
    position: world.channelsOf(channel.guildId).indexOf(channel),
    topic: null,
    nsfw: false,
    parent_id: null,
    rate_limit_per_user: 0,
    permission_overwrites: channel.overwrites.map((o) => ({
      id: o.id,
      type: o.type === 'role' ? 0 : 1,
      allow: o.allow.toString(),
      deny: o.deny.toString(),
    })),
  }
}

/** A channel inside an interaction, with what the person who acts may do there. */
export function interactionChannel(world: World, channel: Channel, userId: string) {
  const guild = world.guildOf(channel)
  if (!guild) return channelObject(world, channel)
  return {
    ...channelObject(world, channel),
    permissions: channelPermissions(guild, channel, userId).toString(),
  }
}

export function guildObject(guild: Guild) {
  return {
    id: guild.id,
    name: guild.name,
    icon: null,
    description: null,
    home_header: null,
    splash: null,
    discovery_splash: null,
    features: [],
    banner: null,
    owner_id: guild.ownerId,
    application_id: null,
    region: 'us-east',
    afk_channel_id: null,
    afk_timeout: 300,
    system_channel_id: null,
    system_channel_flags: 0,
    widget_enabled: false,
    widget_channel_id: null,
    verification_level: 0,
    roles: roleObjects(guild),
    default_message_notifications: 0,
    mfa_level: 0,
    explicit_content_filter: 0,
    max_presences: null,
    max_members: 500_000,
    max_stage_video_channel_users: 50,
    max_video_channel_users: 25,
    vanity_url_code: null,
    premium_tier: 0,
    premium_subscription_count: 0,
    preferred_locale: 'en-US',
    rules_channel_id: null,
    safety_alerts_channel_id: null,
    public_updates_channel_id: null,
    premium_progress_bar_enabled: false,
    nsfw: false,
    nsfw_level: 0,
    emojis: [],
    stickers: [],
    incidents_data: null,
  }
}

/** A server as the gateway announces it; other members only where the session asked for them. */
export function guildCreateObject(world: World, guild: Guild, withMembers: boolean) {
  const members = [...guild.members.values()].filter((m) => withMembers || m.userId === world.bot.id)
  const self = guild.members.get(world.bot.id)
  return {
    ...guildObject(guild),
    joined_at: new Date(self?.joinedAt ?? world.now()).toISOString(),
    large: false,
    unavailable: false,
    member_count: guild.members.size,
    members: members.map((m) => memberObject(world, m)),
    channels: world.channelsOf(guild.id).map((c) => channelObject(world, c)),
    voice_states: [],
    threads: [],
    presences: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
  }
}

export function applicationObject(world: World) {
  return {
    id: world.bot.id,
    name: world.bot.name,
    icon: null,
    description: '',
    type: null,
    flags: 0,
    flags_new: '0',
    bot: userObject(world.bot),
    bot_public: false,
    bot_require_code_grant: false,
    verify_key: '0'.repeat(64),
    redirect_uris: [],
    interactions_endpoint_url: null,
    role_connections_verification_url: null,
    owner: userObject(world.bot),
    approximate_guild_count: world.botGuilds().length,
    approximate_user_install_count: 0,
    approximate_user_authorization_count: 0,
    explicit_content_filter: 0,
    team: null,
    eligible_oauth2_scopes: [],
  }
}
