import { Intent } from './codes.ts'
import { guildCreateObject, memberObject, selfObject } from './objects.ts'
import { event, eventForAll } from './publish.ts'
import type { Session } from './session.ts'
import { type Shard, shardOf } from './shards.ts'
import type { Guild, World } from './world.ts'

/** What a client says to begin a session (op 2). */
export interface Identify {
  token?: string
  intents?: number
  shard?: Shard
}

/** What a client says to take a session up again (op 6). */
export interface Resume {
  token?: string
  session_id?: string
  seq?: number
}

/** A client asks for members of a server (op 8). */
export interface MembersRequest {
  guild_id: string
  user_ids?: string | string[]
  nonce?: string
}

/** Tells a new session who the bot is and which servers it is in, those of its line. */
export function greet(world: World, session: Session, url: string): void {
  const [id, count] = session.shard
  const guilds = world.botGuilds().filter((guild) => shardOf(guild.id, count) === id)
  const ready = {
    v: 10,
    user: selfObject(world.bot),
    guilds: guilds.map((guild) => ({ id: guild.id, unavailable: true })),
    session_id: session.id,
    resume_gateway_url: url,
    shard: session.shard,
    session_type: 'normal',
    private_channels: [],
    relationships: [],
    presences: [],
    application: { id: world.bot.id, flags: 0 },
  }
  session.deliver(eventForAll('READY', ready))
  const withMembers = (session.intents & Intent.guildMembers) !== 0
  for (const guild of guilds) {
    session.deliver(event('GUILD_CREATE', Intent.guilds, guildCreateObject(world, guild, withMembers)))
  }
}

/** The members that were asked for, all in one piece. */
export function membersChunk(world: World, guild: Guild, request: MembersRequest) {
  const asked = request.user_ids === undefined ? null : [request.user_ids].flat()
  const found = [...guild.members.values()].filter((m) => asked === null || asked.includes(m.userId))
  return {
    guild_id: guild.id,
    members: found.map((m) => memberObject(world, m)),
    chunk_index: 0,
    chunk_count: 1,
    not_found: (asked ?? []).filter((id) => !guild.members.has(id)),
    ...(request.nonce === undefined ? {} : { nonce: request.nonce }),
  }
}
