import { createPlatform, Permission, type Person, type Platform } from '../../src/rehearsal/platform/index.ts'
import { A_PRACTICE, type Places } from './town.ts'

/** A stand-in of the platform with as many servers and people as a town needs. */
export interface StandIn {
  readonly platform: Platform
  readonly places: Places
  readonly people: readonly Person[]
  /** Resolves with the instant (of `performance.now`) at which the bot's next message to a person is there. */
  next(person: Person): Promise<number>
}

/** @param shift by so many milliseconds its clock goes before the host's */
export async function openStandIn(
  clients: number,
  limits: 'platform' | 'off' = 'off',
  shift = 0,
): Promise<StandIn> {
  const platform = createPlatform({ limits, now: () => Date.now() + shift })
  const { build } = platform
  const coach = platform.addUser('coach')
  const houses = Array.from({ length: Math.ceil(clients / A_PRACTICE) }, (_, n) => {
    const { id } = build.addGuild(`boathouse ${n}`, { ownerId: coach.id })
    const role = build.addRole(id, 'coach').id
    build.addMember(id, coach.id, [role])
    const room = {
      everyoneCanView: false,
      overwrites: [{ id: role, type: 'role' as const, allow: Permission.viewChannel, deny: 0n }],
    }
    const [digests, alerts] = ['digests', 'alerts'].map((name) => build.addChannel(id, name, room).id)
    return [id, role, digests!, alerts!] as const
  })
  const people = Array.from({ length: clients }, (_, n) => {
    const person = platform.addUser(`client-${n}`)
    build.addMember(houses[Math.floor(n / A_PRACTICE)]![0], person.id)
    return person
  })
  await platform.start()
  const waiting = new Map<string, (at: number) => void>()
  platform.on('message', ({ recipient }) => {
    if (recipient === null) return
    waiting.get(recipient)?.(performance.now())
    waiting.delete(recipient)
  })
  return {
    ...{ platform, people },
    places: {
      houses,
      people: people.map(({ id }) => [id, platform.world.dmChannel(id).id] as const),
    },
    next: ({ id }) => new Promise((resolve) => waiting.set(id, resolve)),
  }
}
