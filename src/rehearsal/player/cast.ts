import type { Actor } from '../../engine/event.ts'
import type { Builder } from '../platform/builder.ts'
import { Permission } from '../platform/index.ts'
import type { Script } from '../scenario/index.ts'

/** The people and rooms of a scenario on the platform: a server of a boathouse gym, its coach and the clients. */
export interface Cast {
  readonly guild: string
  readonly role: string
  readonly coach: string
  readonly coachChannel: string
  readonly alertChannel: string
  /** A room that every member can see. */
  readonly hall: string
  /** Platform id of each client, by alias; more may join a practice that is lived on. */
  readonly clients: Map<string, string>
}

const [COACH_ROOM, ALERTS, HALL] = ['coach-room', 'alerts', 'boathouse'] as const

/** Builds them always in the same order, so that their ids are the same with and without the stand-in. */
export function buildCast(build: Builder, script: Script): Cast {
  const coach = build.addAccount('coach').id
  const guild = build.addGuild('Boathouse', { ownerId: coach }).id
  const role = build.addRole(guild, 'coach').id
  build.addMember(guild, coach, [role])
  const seen = { id: role, type: 'role', allow: Permission.viewChannel, deny: 0n } as const
  const room = (name: string) =>
    build.addChannel(guild, name, { everyoneCanView: false, overwrites: [seen] }).id
  const [coachChannel, alertChannel] = [room(COACH_ROOM), room(ALERTS)]
  const hall = build.addChannel(guild, HALL).id
  const clients = new Map(script.clients.map(({ ref }) => [ref, build.addAccount(ref).id]))
  for (const id of clients.values()) build.addMember(guild, id)
  return { guild, role, coach, coachChannel, alertChannel, hall, clients }
}

/** Who a person is in private, or in the server. */
export function actorOf(cast: Cast, who: string, place: 'private' | 'server'): Actor {
  const isCoach = who === 'coach'
  const user = userOf(cast, who)
  if (place === 'private') return { user, guild: null, roles: [], keeper: false }
  return { user, guild: cast.guild, roles: isCoach ? [cast.role] : [], keeper: isCoach }
}

export const userOf = (cast: Cast, who: string): string =>
  who === 'coach' ? cast.coach : cast.clients.get(who)!

/** The alias behind a platform id, 'coach' for the coach; null for somebody else. */
export function whoIs(cast: Cast, user: string): string | null {
  if (user === cast.coach) return 'coach'
  return [...cast.clients].find(([, id]) => id === user)?.[0] ?? null
}

/** A text as a reader sees it: names in place of the platform's ids. */
export const readable = (text: string, cast: Cast): string =>
  text
    .replace(/<#(\d+)>/g, (mark, id: string) => {
      const rooms = { [cast.coachChannel]: COACH_ROOM, [cast.alertChannel]: ALERTS, [cast.hall]: HALL }
      return rooms[id] ? `#${rooms[id]}` : mark
    })
    .replace(/<@&(\d+)>/g, (mark, id: string) => (id === cast.role ? '@coaches' : mark))
    .replace(/<@!?(\d+)>/g, (mark, id: string) => {
      const who = whoIs(cast, id)
      return who ? `@${who}` : mark
    })
