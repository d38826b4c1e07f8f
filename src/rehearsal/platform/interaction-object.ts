import { interactionChannel, memberObject, userObject } from './objects.ts'
import { channelPermissions, EVERYONE_DEFAULT } from './permissions.ts'
import type { Account, Channel, StoredMessage, World } from './world.ts'

/** Largest file that a person may attach, in bytes, as interactions state it. */
const ATTACHMENT_LIMIT = 10 * 1024 * 1024

/** Who does what, where. */
export interface Opening {
  type: number
  user: Account
  channel: Channel
  data: unknown
  /** The message that holds the pressed component, or from which the filled form was opened. */
  message?: StoredMessage
}

/** An interaction as the gateway brings it. */
export function interactionObject(world: World, interaction: Opening & { id: string; token: string }) {
  const { user, channel, message } = interaction
  return {
    id: interaction.id,
    application_id: world.bot.id,
    type: interaction.type,
    token: interaction.token,
    version: 1,
    data: interaction.data,
    channel_id: channel.id,
    channel: interactionChannel(world, channel, user.id),
    locale: user.locale,
    entitlements: [],
    attachment_size_limit: ATTACHMENT_LIMIT,
    ...(message ? { message: message.wire } : {}),
    ...whoAndWhere(world, channel, user),
  }
}

function whoAndWhere(world: World, channel: Channel, user: Account) {
  const guild = world.guildOf(channel)
  if (!guild) {
    return {
      context: 1,
      user: userObject(user),
      app_permissions: EVERYONE_DEFAULT.toString(),
      authorizing_integration_owners: { 0: '0' },
    }
  }
  const member = guild.members.get(user.id)
  const shown = member && {
    ...memberObject(world, member),
    permissions: channelPermissions(guild, channel, user.id).toString(),
  }
  return {
    context: 0,
    guild_id: guild.id,
    guild: { id: guild.id, features: [], locale: 'en-US' },
    guild_locale: 'en-US',
    // the platform has a member here always: without one it is forged
    ...(shown ? { member: shown } : { user: userObject(user) }),
    app_permissions: channelPermissions(guild, channel, world.bot.id).toString(),
    authorizing_integration_owners: { 0: guild.id },
  }
}
