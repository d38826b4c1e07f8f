import { setTimeout as pause } from 'node:timers/promises'
import { Permission, type Person, Platform } from '../../src/rehearsal/platform/index.ts'
import { A_PRACTICE, type Town } from './town.ts'

/** A stand-in of the platform with the servers and people of a town. */
export interface StandIn {
  readonly platform: Platform
  readonly people: readonly Person[]
  /** Resolves with the instant (of `performance.now`) at which the bot's next message to a person is there. */
  next(person: Person): Promise<number>
  /** Resolves when a bot has caught up with what was written before its start: no request for some seconds. */
  quiet(): Promise<void>
}

const QUIET_MS = 5_000

/** @param shift by so many milliseconds its clock goes before the host's */
export async function openStandIn(
  { houses, people: ids }: Pick<Town, 'houses' | 'people'>,
  limits: 'platform' | 'off' = 'off',
  shift = 0,
): Promise<StandIn> {
  const platform = new Platform({ limits, now: () => Date.now() + shift })
  const { build, world } = platform
  const coach = platform.addUser('coach')
  const given = giving(platform)
  for (const [n, [server, role, digests, alerts]] of houses.entries()) {
    const { id } = given(server!, () => build.addGuild(`boathouse ${n}`, { ownerId: coach.id }))
    given(role!, () => build.addRole(id, 'coach'))
    build.addMember(id, coach.id, [role!])
    const room = {
      everyoneCanView: false,
      overwrites: [{ id: role!, type: 'role' as const, allow: Permission.viewChannel, deny: 0n }],
    }
    given(digests!, () => build.addChannel(id, 'digests', room))
    given(alerts!, () => build.addChannel(id, 'alerts', room))
  }
  const people = ids.map(([user, direct], n) => {
    const person = given(user, () => platform.addUser(`client-${n}`))
    build.addMember(houses[Math.floor(n / A_PRACTICE)]![0]!, user)
    given(direct, () => world.dmChannel(user))
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
    platform,
    people,
    next: ({ id }) => new Promise((resolve) => waiting.set(id, resolve)),
    async quiet() {
      for (let seen = -1; seen < platform.requests.length; ) {
        seen = platform.requests.length
        await pause(QUIET_MS)
      }
    },
  }
}

/** What is built next gets this id, as a town has it. */
function giving({ world }: Platform): <T>(id: string, work: () => T) => T {
  const { nextId } = world
  let next: string | null = null
  const give = (): string => {
    const id = next ?? nextId()
    next = null
    return id
  }
  Object.assign(world, { nextId: give })
  return (id, work) => {
    next = id
    return work()
  }
}
