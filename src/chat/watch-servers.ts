import { type Client, Events } from 'discord.js'
import type { Logger } from 'pino'
import type { Server } from '../engine/event.ts'
import { safeError } from '../safe-error.ts'
import type { ChatTexts } from '../text/en/chat.ts'
import { serverOf } from './channel-facts.ts'

export interface WatchParts {
  readonly client: Client
  readonly names: ChatTexts['permissions']
  /** Called after every change of a server that the bot is in, one at a time. */
  readonly changed: (guild: string, server: Server) => Promise<void>
  readonly log: Logger
}

/** Hears what changes on servers: channels, roles, rights, and the bot's own coming and going. */
export function watchServers({ client, names, changed, log }: WatchParts): void {
  let last: Promise<void> = Promise.resolve()
  const look = (guild: string): void => {
    last = last
      .then(async () => {
        const server = serverOf(client, guild, names)
        if (server) await changed(guild, server)
      })
      .catch((error) => log.warn({ error: safeError(error) }, 'a change of a server could not be looked at'))
  }
  client.on(Events.ChannelDelete, (channel) => channel.isDMBased() || look(channel.guild.id))
  client.on(Events.ChannelUpdate, (_, channel) => channel.isDMBased() || look(channel.guild.id))
  client.on(Events.GuildRoleDelete, ({ guild }) => look(guild.id))
  client.on(Events.GuildRoleUpdate, (_, { guild }) => look(guild.id))
  client.on(Events.GuildMemberUpdate, (_, { id, guild }) => id === client.user?.id && look(guild.id))
  client.on(Events.GuildDelete, ({ id }) =>
    log.warn(
      { server: id },
      'the bot was removed from a server; its practice is kept until it is invited again',
    ),
  )
  client.on(Events.GuildCreate, ({ id }) => {
    log.info({ server: id }, 'the bot is in a server, for the first time or again')
    look(id)
  })
}
