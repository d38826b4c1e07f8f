import { Client, Events, GatewayIntentBits, type Interaction, type Message, Partials } from 'discord.js'
import type { TestContext } from 'vitest'
import { leave } from '../../../src/chat/leave.ts'
import { type Person, Platform, type PlatformOptions } from '../../../src/rehearsal/platform/index.ts'

/** A platform with one server, one person in it, and the real client logged in. */
export interface Stage {
  platform: Platform
  client: Client
  guildId: string
  channelId: string
  heron: Person
  /** Number of the last gateway event that the client has taken in. */
  heard: () => number
}

/** A client that has what direct messages need, and no privileged intent. */
export function makeClient(platform: Platform, rest: { timeout?: number } = {}): Client {
  const { Guilds, GuildMessages, DirectMessages } = GatewayIntentBits
  return new Client({
    intents: [Guilds, GuildMessages, DirectMessages],
    partials: [Partials.Channel, Partials.Message],
    rest: { api: platform.apiUrl, ...rest },
  })
}

/** Logs in and waits until the client has its servers. */
export async function logIn(client: Client, token: string): Promise<void> {
  const ready = new Promise<void>((resolve) => client.once(Events.ClientReady, () => resolve()))
  await client.login(token)
  await ready
}

/** Sets a stage; it is cleared when the test that asked for it ends. */
export async function setStage(context: TestContext, options: PlatformOptions = {}): Promise<Stage> {
  const platform = new Platform(options)
  const guild = platform.build.addGuild('boathouse')
  const channel = platform.build.addChannel(guild.id, 'coaches')
  const heron = platform.addUser('heron')
  platform.build.addMember(guild.id, heron.id)
  await platform.start()
  const client = makeClient(platform)
  let last = 0
  client.on(
    Events.Raw as never,
    ((packet: { s: number | null }) => {
      last = packet.s ?? last
    }) as never,
  )
  await logIn(client, platform.token)
  const close = async () => {
    await leave(client)
    await platform.stop()
  }
  context.onTestFinished(close)
  return { platform, client, guildId: guild.id, channelId: channel.id, heron, heard: () => last }
}

/** The next interaction that the client receives. */
export function nextInteraction(client: Client): Promise<Interaction> {
  return new Promise((resolve) => client.once(Events.InteractionCreate, resolve))
}

/** The next message that a person sends. */
export function nextMessage(client: Client): Promise<Message> {
  return new Promise((resolve) => {
    const hear = (message: Message) => {
      if (message.author.bot) return
      client.off(Events.MessageCreate, hear)
      resolve(message)
    }
    client.on(Events.MessageCreate, hear)
  })
}

/** Waits until `check` holds; fails after `ms`. */
export async function until(check: () => boolean, ms = 30_000): Promise<void> {
  const end = performance.now() + ms
  while (!check()) {
    if (performance.now() > end) throw new Error('what was waited for did not come')
    await new Promise((resolve) => setTimeout(resolve, 5))
  }
}

/** The platform's code of a refusal. */
export async function codeOf(work: Promise<unknown>): Promise<string> {
  return work.then(
    () => 'accepted',
    (error: { code?: unknown; status?: unknown; message: string }) => `${error.status}/${error.code}`,
  )
}

/** Registers commands as the bot does at its start. */
export async function declare(
  client: Client,
  commands: Parameters<NonNullable<Client['application']>['commands']['set']>[0],
) {
  return client.application!.commands.set(commands)
}
