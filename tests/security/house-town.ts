import pino from 'pino'
import { connect, createClient } from '../../src/chat/client.ts'
import { renderMessage } from '../../src/chat/render.ts'
import type { ChatEvent } from '../../src/engine/event.ts'
import type { Handled } from '../../src/engine/ports.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import { type Forged, Permission, Platform } from '../../src/rehearsal/platform/index.ts'
import { addMessage } from '../../src/rehearsal/platform/messages.ts'
import { textsFor } from '../../src/text/index.ts'
import { GUILD } from '../engine/practice.ts'
import { GUILD_2, openHouses } from './houses.ts'
import { openTrial, type Trial, type Tried } from './trial.ts'

/** What an interaction came to, though nothing of it was kept. */
export interface Came {
  /** Null where it did not reach the engine. */
  readonly tried: Tried | null
  /** All that the bot showed for it. */
  readonly said: readonly string[]
  /** A form was opened. */
  readonly form: boolean
}

export interface Place {
  readonly channelId: string
  readonly messageId: string
}

export interface HouseTown {
  readonly platform: Platform
  readonly rows: readonly OutboxRow[]
  readonly logs: string[]
  readonly trial: Trial
  /** Sends it and waits until all is done; what it changed is looked at and taken back. */
  send(forged: Forged, look?: 'touched'): Promise<Came>
  /** The message of a row in its channel. */
  place(row: OutboxRow): Place
  /** The private channel of a person. */
  direct(user: string): string
  close(): Promise<void>
}

/** A server in which nobody has set anything up. */
export const BARE = 'guild-3'
/** The coaches' channel of each server. */
export const CHANNEL: Readonly<Record<string, string>> = {
  [GUILD]: 'channel-coach',
  [GUILD_2]: 'channel-2',
  [BARE]: 'channel-3',
}
const CLIENTS = ['heron', 'wren', 'dipper', 'knot', 'plover', 'curlew', 'osprey'].map((ref) => `user-${ref}`)
const PEOPLE = ['coach-1', 'coach-2', 'coach-3', 'keeper-1', 'stranger', ...CLIENTS]
/** Roles by server and person; whoever is not named has none. */
const ROLES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  [GUILD]: { 'coach-1': 'role-coach', 'coach-3': 'role-coach', 'keeper-1': 'role-keeper' },
  [GUILD_2]: { 'coach-2': 'role-coach' },
  [BARE]: {},
}

/** The two practices on the stand-in, with the real chat client; what comes in is tried and taken back. */
export async function openHouseTown(): Promise<HouseTown> {
  const practice = await openHouses()
  const trial = await openTrial(practice.path)
  const platform = new Platform()
  settle(platform)
  await platform.start()
  const logs: string[] = []
  const log = pino({ level: 'debug' }, { write: (line) => void logs.push(line) })
  const client = createClient(platform.token, platform.apiUrl, 1_000)
  const drawn = new Uint8Array([1])
  let tried: Tried | null = null
  let look: 'touched' | undefined
  const handle = async (event: ChatEvent): Promise<Handled> => {
    tried = (await trial.attempt([event], look))[0]!
    return tried
  }
  const chat = await connect({
    ...{ client, token: platform.token, bot: { handle }, log, texts: textsFor('en').chat },
    outbox: async (id) => trial.rows.find((row) => row.id === id) ?? null,
    aliases: async () => [],
    knownDms: { all: async function* () {}, of: async () => null },
    draw: async () => ({ png: drawn }),
    drawFile: async () => drawn,
  })
  const said: string[] = []
  platform.on('message', ({ content }) => said.push(content))
  const places = new Map<string, Place>()

  return {
    ...{ platform, rows: trial.rows, logs, trial },
    async send(forged, wish) {
      look = wish
      tried = null
      said.length = 0
      let form = false
      void platform.forger.send(forged).then(({ outcome }) => {
        form = outcome === 'modal'
      })
      while (chat.lastSequence() < platform.sequence) await new Promise((resolve) => setImmediate(resolve))
      await chat.idle()
      return { tried, form, said: [...said] }
    },
    place(row) {
      const place = places.get(row.id) ?? show(platform, row)
      places.set(row.id, place)
      return place
    },
    direct: (user) => platform.world.dmChannel(user).id,
    async close() {
      await chat.close()
      await platform.stop()
      await trial.close()
      await practice.close()
    },
  }
}

/** Servers, channels and people under the ids that the practices know; everybody is in all servers. */
function settle({ world, build }: Platform): void {
  for (const id of PEOPLE) world.users.set(id, { id, name: id, bot: false, locale: 'en-US' })
  for (const [id, channel] of Object.entries(CHANNEL)) {
    const roles = ['role-coach', 'role-keeper', id].map((name) => ({
      ...{ id: name, name, managed: false },
      permissions:
        name === 'role-keeper' ? Permission.manageGuild : name === id ? Permission.viewChannel : 0n,
    }))
    const guild = {
      ...{ id, name: id, ownerId: 'nobody' },
      roles: new Map(roles.map((role) => [role.id, role])),
      members: new Map(
        PEOPLE.map((userId) => {
          const role = ROLES[id]?.[userId]
          return [userId, { userId, roleIds: role ? [role] : [], joinedAt: 0 }]
        }),
      ),
    }
    world.guilds.set(id, guild)
    build.inviteBot(guild, Permission.viewChannel | Permission.sendMessages | Permission.attachFiles)
    for (const name of [channel, ...(id === GUILD ? ['channel-alerts'] : [])])
      world.keepChannel({ name, guildId: id, recipientId: null, overwrites: [] }, name)
  }
}

/** Posts the message of a row, as delivery would have. */
function show({ world }: Platform, row: OutboxRow): Place {
  const { address } = row.body
  const channel =
    address.to === 'client' ? world.dmChannel(address.user) : world.channels.get(address.channel)!
  const { content = '', components = [] } = renderMessage(row.id, row.body).at(-1)!.body
  const body = { content, components: components as never }
  const { id } = addMessage(world, { channel, author: world.bot, body, files: [], baseUrl: '' }).wire
  return { channelId: channel.id, messageId: id }
}
