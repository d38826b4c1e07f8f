import pino from 'pino'
import { type Bot, createBot } from '../../src/bot.ts'
import { type Chat, connect, createClient } from '../../src/chat/client.ts'
import { createCourier } from '../../src/chat/courier.ts'
import type { KnownDm } from '../../src/chat/parts.ts'
import { type CommandWords, registerCommands } from '../../src/chat/register.ts'
import type { ChatCommand, OptionSpec } from '../../src/engine/command.ts'
import type { Event } from '../../src/engine/event.ts'
import type { Answer } from '../../src/engine/message.ts'
import type { Handled } from '../../src/engine/ports.ts'
import type { OutboxRow } from '../../src/engine/rows.ts'
import { type Person, Platform, type PostedMessage } from '../../src/rehearsal/platform/index.ts'
import { chat as texts } from '../../src/text/en/chat.ts'
import { fakeOutbox } from '../chat/outbox.ts'

/** A platform with one server, the real client, and an engine that keeps what it hears and answers as told. */
export interface Stage {
  readonly platform: Platform
  readonly guildId: string
  readonly heron: Person
  readonly coach: Person
  readonly coachRole: string
  readonly bot: Bot
  readonly rows: OutboxRow[]
  readonly heard: Event[]
  /** What the engine answers; throws to make it fail. */
  respond: (event: Event) => Answer | null
  /** What stands between the press and the message behind it. */
  lookUp: (id: string) => Promise<OutboxRow | null>
  readonly logs: string[]
  readonly knownDms: KnownDm[]
  chat: Chat
  /** Resolves when the client has taken in everything and nothing is under way. */
  settled(): Promise<void>
  /** Leaves and comes back as a new session, as after a restart. */
  restart(meanwhile: () => void): Promise<void>
  /** Posts a row and gives the message as the person sees it. */
  post(row: OutboxRow): Promise<PostedMessage>
}

export const answer = (text: string, more: Partial<Answer> = {}): Answer => ({
  text,
  kind: 'notice',
  about: null,
  drills: [],
  picture: null,
  files: [],
  asks: null,
  care: 'none',
  privately: false,
  ...more,
})

const declared = (name: string, who: ChatCommand['who'], options: OptionSpec[] = []): ChatCommand =>
  ({ name, who, options, run: () => null }) as unknown as ChatCommand

const COMMANDS = [
  declared('today', 'client'),
  declared('plan', 'coach', [
    { name: 'client', kind: 'client', required: true },
    { name: 'sessions', kind: 'number', required: false },
  ]),
  declared('set-up', 'keeper', [{ name: 'coach-channel', kind: 'channel', required: false }]),
]
const WORDS: CommandWords = {
  describe: { today: 'Your drills', plan: 'Set a plan', 'set-up': 'Set up' },
  option: { client: 'Alias', sessions: 'Sessions', 'coach-channel': 'Channel' },
}

// bytes that stand for a picture: what is in it does not matter here
const PNG = new Uint8Array([137, 80, 78, 71])

/** Whatever tells when the stage is to be taken down: a test, or all of a file. */
export interface Ends {
  onTestFinished(end: () => Promise<void>): void
}

export async function setStage(context: Ends): Promise<Stage> {
  const platform = new Platform()
  const guild = platform.build.addGuild('boathouse')
  const coachRole = platform.build.addRole(guild.id, 'coach').id
  const heron = platform.addUser('heron')
  const coach = platform.addUser('coach')
  platform.build.addMember(guild.id, heron.id)
  platform.build.addMember(guild.id, coach.id, [coachRole])
  await platform.start()

  const rows: OutboxRow[] = []
  const heard: Event[] = []
  const logs: string[] = []
  const knownDms: KnownDm[] = []
  const log = pino({ level: 'debug' }, { write: (line) => void logs.push(line) })
  const handle = async (event: Event): Promise<Handled> => {
    heard.push(event)
    return { answer: stage.respond(event) }
  }
  const enter = async (): Promise<{ chat: Chat; bot: Bot }> => {
    const client = createClient(platform.token, platform.apiUrl)
    const bot = createBot({
      engine: { handle },
      dues: { dueBy: async () => [], nextDue: async () => null },
      outbox: fakeOutbox(rows),
      courier: createCourier({
        rest: client.rest,
        draw: async () => ({ png: PNG }),
        drawFile: async () => PNG,
        log,
      }),
      now: () => new Date(),
    })
    const chat = await connect({
      client,
      token: platform.token,
      bot,
      outbox: (id) => stage.lookUp(id),
      aliases: async (actor) => (actor.roles.includes(coachRole) ? ['dipper', 'heron', 'sheron'] : []),
      knownDms: {
        all: async function* () {
          yield knownDms
        },
        of: async (user) => knownDms.find((dm) => dm.user === user) ?? null,
      },
      draw: async () => ({ png: PNG }),
      drawFile: async () => PNG,
      texts,
      log,
    })
    const settings = { get: async () => null, set: async () => {} }
    await registerCommands({
      rest: client.rest,
      appId: platform.appId,
      commands: COMMANDS,
      words: WORDS,
      settings,
    })
    return { chat, bot }
  }
  // chat and bot come with `enter`
  const stage: Stage = {
    ...({} as Pick<Stage, 'chat' | 'bot'>),
    ...{ platform, guildId: guild.id, heron, coach, coachRole, rows, heard, logs, knownDms },
    respond: () => null,
    lookUp: async (id) => rows.find((row) => row.id === id) ?? null,
    settled: async () => {
      while (stage.chat.lastSequence() < platform.sequence)
        await new Promise((resolve) => setTimeout(resolve, 5))
      await stage.chat.idle()
      await stage.bot.idle()
    },
    restart: async (meanwhile) => {
      await stage.chat.close()
      meanwhile()
      Object.assign(stage, await enter())
    },
    post: async (row) => {
      rows.push(row)
      await stage.bot.tick()
      return platform.message(rows.find(({ id }) => id === row.id)?.platformId ?? '')!
    },
  }
  Object.assign(stage, await enter())
  context.onTestFinished(async () => {
    await stage.chat.close()
    await platform.stop()
  })
  return stage
}
