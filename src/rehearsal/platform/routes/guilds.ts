import { Intent } from '../codes.ts'
import { channelObject, guildObject, memberObject, roleObjects } from '../objects.ts'
import { guildPermissions, Permission } from '../permissions.ts'
import { event } from '../publish.ts'
import { invalidField, refuse } from '../refusal.ts'
import { compareSnowflakes } from '../snowflake.ts'
import type { Overwrite } from '../world.ts'
import { reachGuild } from './access.ts'
import { ok, type Routes } from './route.ts'

const MEMBERS_MAX = 1000

/** Servers, their roles, members and channels. */
export const guildRoutes: Routes = {
  'GET /guilds/{guild_id}': ({ world }, { params: [id], query }) => {
    const guild = reachGuild(world, id!)
    const counts = query.get('with_counts') === 'true' ? { approximate_member_count: guild.members.size } : {}
    return ok({ ...guildObject(guild), ...counts })
  },
  'GET /guilds/{guild_id}/roles': ({ world }, { params: [id] }) => ok(roleObjects(reachGuild(world, id!))),
  'GET /guilds/{guild_id}/roles/{role_id}': ({ world }, { params: [id, roleId] }) => {
    const role = roleObjects(reachGuild(world, id!)).find((r) => r.id === roleId)
    if (!role) throw refuse.unknownRole()
    return ok(role)
  },
  'GET /guilds/{guild_id}/channels': ({ world }, { params: [id] }) =>
    ok(world.channelsOf(reachGuild(world, id!).id).map((channel) => channelObject(world, channel))),
  'POST /guilds/{guild_id}/channels': ({ world, publish }, { params: [id], body }) => {
    const guild = reachGuild(world, id!)
    if (!(guildPermissions(guild, world.bot.id) & Permission.manageChannels))
      throw refuse.missingPermissions()
    const asked = body as NewChannel
    const overwrites = (asked.permission_overwrites ?? []).map(readOverwrite)
    const channel = world.keepChannel({ guildId: guild.id, name: asked.name, recipientId: null, overwrites })
    const created = channelObject(world, channel)
    publish(event('CHANNEL_CREATE', Intent.guilds, created))
    return { status: 201, body: created }
  },
  'GET /guilds/{guild_id}/members': ({ world }, { params: [id], query }) => {
    const guild = reachGuild(world, id!)
    if (!(world.privilegedIntents & Intent.guildMembers)) throw refuse.missingAccess()
    const limit = Number(query.get('limit') ?? 1)
    if (!(limit >= 1 && limit <= MEMBERS_MAX)) {
      throw invalidField('limit', 'NUMBER_TYPE_RANGE', `int value should be between 1 and ${MEMBERS_MAX}.`)
    }
    const after = query.get('after') ?? '0'
    const sorted = [...guild.members.values()].sort((a, b) => compareSnowflakes(a.userId, b.userId))
    const page = sorted.filter((m) => compareSnowflakes(m.userId, after) > 0).slice(0, limit)
    return ok(page.map((member) => memberObject(world, member)))
  },
  'GET /guilds/{guild_id}/members/{user_id}': ({ world }, { params: [id, userId] }) => {
    const member = reachGuild(world, id!).members.get(userId!)
    if (!member) throw world.users.has(userId!) ? refuse.unknownMember() : refuse.unknownUser()
    return ok(memberObject(world, member))
  },
}

interface NewChannel {
  name: string
  permission_overwrites?: { id: string; type?: number | null; allow?: string; deny?: string }[] | null
}

function readOverwrite(o: NonNullable<NewChannel['permission_overwrites']>[number]): Overwrite {
  const type = o.type === 1 ? 'member' : 'role'
  return { id: o.id, type, allow: BigInt(o.allow ?? 0), deny: BigInt(o.deny ?? 0) }
}
