import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import {
  type Answer,
  type Channel,
  type Component,
  type FieldValues,
  type OptionValues,
  Permission,
  type Person,
  Platform,
  type PostedEvent,
  type PostedMessage,
} from '../../src/rehearsal/platform/index.ts'
import { run, type ServiceProcess } from './service-process.ts'

/** A server of a boathouse gym on the stand-in, its people, and the bot as a process of its own. */
export interface Town {
  /** File of the bot's database where no other was named, once it has started. */
  readonly database: string
  readonly platform: Platform
  readonly guild: ReturnType<Platform['build']['addGuild']>
  readonly coachRole: string
  readonly coachChannel: Channel
  readonly alertChannel: Channel
  /** Everyone can read this one. */
  readonly hall: Channel
  readonly keeper: Person
  readonly coach: Person
  /** In the server and in the alert channel, without the coach role. */
  readonly plover: Person
  readonly heron: Person
  readonly dipper: Person
  readonly wren: Person
  /** Everything the bot posted or changed, in order. */
  readonly posted: PostedEvent[]
  /** Starts the bot when its clock shows this instant; the platform's clock is put there too. */
  start(at: string): Promise<ServiceProcess>
  /** A command, and the words that answer it. */
  command(who: Person, name: string, options?: OptionValues): Promise<string>
  /** Waits for something posted after `since` (an index of `posted`). */
  next(found: (event: PostedEvent) => boolean, since?: number): Promise<PostedEvent>
  /** Presses the button that says so on the latest message that a person or channel got with it. */
  press(who: Person, label: string, where?: Channel): Promise<Answer>
  fill(who: Person, label: string, fields: FieldValues): Promise<void>
  close(): Promise<void>
}

const WAIT_MS = 20_000

/** @param databaseUrl of an empty database; a file that is not there yet where left out */
export async function openTown(databaseUrl?: string): Promise<Town> {
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-service-'))
  const database = join(folder, 'new', 'service.db')
  let shift = 0
  const platform = new Platform({ now: () => Date.now() + shift })
  const { build } = platform
  const [keeper, coach, plover, heron, dipper, wren] = (
    ['keeper', 'coach', 'plover', 'heron', 'dipper', 'wren'] as const
  ).map((name) => platform.addUser(name)) as [Person, Person, Person, Person, Person, Person]
  const guild = build.addGuild('boathouse', { ownerId: keeper.id })
  const coachRole = build.addRole(guild.id, 'coach').id
  for (const person of [plover, heron, dipper, wren]) build.addMember(guild.id, person.id)
  build.addMember(guild.id, coach.id, [coachRole])
  const may = (id: string, type: 'role' | 'member') => ({ id, type, allow: Permission.viewChannel, deny: 0n })
  const own = { everyoneCanView: false, overwrites: [may(coachRole, 'role')] }
  const coachChannel = build.addChannel(guild.id, 'digests', own)
  const alertChannel = build.addChannel(guild.id, 'alerts', {
    ...own,
    overwrites: [...own.overwrites, may(plover.id, 'member')],
  })
  const hall = build.addChannel(guild.id, 'hall')
  await platform.start()

  const posted: PostedEvent[] = []
  const waiting = new Set<() => void>()
  platform.on('message', (event) => {
    posted.push(event)
    for (const look of waiting) look()
  })
  const running = new Set<ServiceProcess>()

  const next: Town['next'] = (found, since = 0) =>
    new Promise((resolve, reject) => {
      const look = (): void => {
        const event = posted.slice(since).find(found)
        if (event) done(() => resolve(event))
      }
      const done = (then: () => void): void => {
        clearTimeout(late)
        waiting.delete(look)
        then()
      }
      const said = (): string =>
        posted
          .slice(since)
          .map((one) => one.content)
          .join('\n---\n')
      const late = setTimeout(
        () => done(() => reject(new Error(`waited in vain; since then: ${said()}`))),
        WAIT_MS,
      )
      waiting.add(look)
      look()
    })

  const withButton = (who: Person, label: string, where?: Channel) => (event: PostedEvent) =>
    (where ? event.channelId === where.id : event.recipient === who.id) &&
    event.change !== 'deleted' &&
    buttonOf(event, label) !== undefined

  const press: Town['press'] = async (who, label, where) => {
    await next(withButton(who, label, where))
    const message = posted.findLast(withButton(who, label, where))!
    return who.press(message.id, buttonOf(message, label)!.custom_id!)
  }

  return {
    ...{ database, platform, guild, coachRole, coachChannel, alertChannel, hall, posted, next, press },
    ...{ keeper, coach, plover, heron, dipper, wren },
    async start(at) {
      shift = Date.parse(at) - Date.now()
      const service = run('src/main.ts', [], {
        DISCORD_TOKEN: platform.token,
        DISCORD_API: platform.apiUrl,
        DATABASE_URL: databaseUrl ?? `file:${database}`,
        EBBLINE_SPOOL_DIR: join(folder, 'new'),
        LOG_LEVEL: 'debug',
        CLOCK_SHIFT_MS: String(shift),
      })
      running.add(service)
      await service.logged('"ready"')
      return service
    },
    async command(who, name, options = {}) {
      const answer = await who.slash(who === keeper || who === coach ? coachChannel.id : 'dm', name, options)
      if (answer.outcome !== 'deferred') throw new Error(`/${name}: ${answer.outcome}`)
      return (await answer.completed).content
    },
    async fill(who, label, fields) {
      const answer = await press(who, label)
      if (answer.outcome !== 'modal') throw new Error(`“${label}” opened no form: ${answer.outcome}`)
      await who.submit(answer.modal, fields)
    },
    async close() {
      for (const service of running) service.kill()
      await platform.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/** The button of a message that says so. */
export function buttonOf(message: PostedMessage, label: string): Component | undefined {
  const all = (parts: readonly Component[]): Component[] =>
    parts.flatMap((part) => [part, ...all(part.components ?? [])])
  return all(message.components).find((part) => part.label === label)
}
