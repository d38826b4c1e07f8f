import { type Client, DiscordAPIError, HTTPError } from 'discord.js'
import type { Logger } from 'pino'
import { commandsWith } from '../commands/index.ts'
import { type Bot, type BotParts, createBot } from './bot.ts'
import { createSharedBot } from './bot-several.ts'
import { type Chat, ChatProblem, connect, createClient } from './chat/client.ts'
import { paced, paceOf, sharedPaceOf } from './chat/delivery-pace.ts'
import type { OnSent } from './chat/delivery-step.ts'
import { within } from './chat/in-flight.ts'
import { registerCommands } from './chat/register.ts'
import type { OwnLadder } from './domain/ladder/ladder-file.ts'
import { LADDERS } from './domain/ladder/ladders.ts'
import { readReply } from './domain/reply/read.ts'
import { draw, drawFile } from './drawing.ts'
import type { ChatCommand } from './engine/command.ts'
import { createEngine } from './engine/engine.ts'
import type { Actor } from './engine/event.ts'
import { isCoach } from './engine/is-coach.ts'
import type { Seal } from './seal.ts'
import type { Several } from './several.ts'
import { knownBefore, shortWay } from './short-way.ts'
import { readAddress } from './store/address.ts'
import { ledgerPlace } from './store/ledger.ts'
import { type OpenStore, openStore } from './store/open.ts'
import { byLocale, LANGUAGE_CODES, textsFor } from './text/index.ts'
import { setOwnLadders } from './text/own-ladders.ts'
import { tellErasures, tellGone, told, watchPractices } from './told-keeper.ts'
import type { WithoutStore } from './without-store/index.ts'

// Of the 5 s that a stop may take: a long line of messages must not hold it up.
const LAST_WORK_MS = 3_500

export interface ServiceParts {
  readonly databaseUrl: string
  /** Another way to the database, such as a rehearsal's with faults. */
  readonly openStore?: typeof openStore
  readonly token: string
  /** Another server that speaks the platform's API; null: the platform itself. */
  readonly api: string | null
  /** The practice's own ladders, beside the eight of the house. */
  readonly ladders?: readonly OwnLadder[]
  /** For how many days a backup is kept; 30 where left out. */
  readonly backupDays?: number
  /** What closes and opens the words of people in database and spool; null: they are kept as they are. */
  readonly seal?: Seal | null
  /** Where urgent signs are kept while the database is away; beside its file where left out or null. */
  readonly spoolFolder?: string | null
  readonly now: () => Date
  /** Requests a second that the bot allows itself; 50 is the platform's limit. */
  readonly perSecond?: number
  readonly log: Logger
  /** Where other processes share the database; left out: this one does all of it. */
  readonly several?: Several
  readonly onSent?: OnSent
  readonly onHandled?: NonNullable<BotParts['onHandled']>
  /** Called when the platform has closed the connection for good. */
  readonly lost?: (problem: Error) => void
}

/** The bot as it runs in service: store, engine, chat client and delivery, put together. */
export interface Service {
  readonly bot: Bot
  readonly chat: Chat
  readonly store: OpenStore
  readonly client: Client
  /** Drops everything at once, as a killed process would. */
  abandon(): void
  /** Ends in order: nothing more comes in, what is under way is finished, then the store closes. */
  stop(): Promise<void>
}

/** @throws StoreProblem or ChatProblem, each one sentence with the mend */
export async function startService(parts: ServiceParts): Promise<Service> {
  const { log, ladders: own = [] } = parts
  const ladders = [...LADDERS, ...own.map(({ ladder }) => ladder)]
  setOwnLadders(own)
  makeReady()
  const known = knownBefore(parts)
  const store = await (parts.openStore ?? openStore)(
    parts.databaseUrl,
    ledgerPlace(readAddress(parts.databaseUrl), parts.spoolFolder ?? 'data'),
    undefined,
    parts.seal ?? null,
  )
  tellErasures(store, log)
  const client = createClient(parts.token, parts.api, parts.perSecond)
  const commands = commandsWith(ladders)
  const way = await shortWay(parts, known, { store, client }, (own) =>
    createEngine({ store: own, commands, textsFor, ladders, backupDays: parts.backupDays }),
  )
  const bot = botOn(store, way, client, parts)
  let chat: Chat | null = null
  try {
    chat = await enter(client, bot, store, way, parts)
    await register(client, store, commands)
    await tellGone(store, ladders, log)
    await watchPractices(client, store, bot, parts)
    const entered = chat
    const abandon = (): void => {
      client.removeAllListeners()
      way.abandon()
      store.abandon()
    }
    return { bot, chat, store, client, abandon, stop: () => stop(entered, bot, store, way) }
  } catch (error) {
    await chat?.close()
    await way.close()
    await store.close()
    throw error
  }
}

/** Handling and delivery: by this process alone, or beside others that send as well. */
function botOn(store: OpenStore, way: WithoutStore, client: Client, parts: ServiceParts): Bot {
  const { several, onHandled } = parts
  const forBot = {
    engine: way.engine,
    dues: store.dues,
    outbox: store.outbox,
    courier: way.courier,
    now: parts.now,
    onSent: way.onSent,
    ...told(parts.log),
    ...(onHandled ? { onHandled } : {}),
  }
  const bot = several
    ? createSharedBot({ ...forBot, jobs: several.jobs, pace: sharedPaceOf(client.rest, several.budget) })
    : createBot({ ...forBot, courier: paced(way.courier, paceOf(client.rest)) })
  return { ...bot, tick: () => way.tick(bot.tick) }
}

/** Onto the platform: from here on the bot hears what people do. */
const enter = (
  client: Client,
  bot: Bot,
  store: OpenStore,
  way: WithoutStore,
  { token, log, lost }: ServiceParts,
): Promise<Chat> =>
  connect({
    ...{ client, token, bot, draw, drawFile, log },
    outbox: async (id) => way.lately(id) ?? (await store.store.transaction((tx) => tx.outbox(id))),
    aliases: (actor) => aliases(store, actor),
    knownDms: store.directs,
    texts: textsFor('en').chat,
    otherTexts: byLocale(({ chat }) => chat),
    ...(lost ? { lost } : {}),
  })

/** Words are made ready at their first use, up to a second of work: not while somebody's first message waits. */
function makeReady(): void {
  const day = { planned: 2, today: '2026-03-02', promptDay: '2026-03-02', asked: null }
  for (const locale of LANGUAGE_CODES) readReply('2 calf 4, numb', { ...day, locale })
}

/** The commands as the platform offers them; a platform that fails meanwhile is the keeper's to look at. */
async function register(
  client: Client,
  { settings }: OpenStore,
  commands: readonly ChatCommand[],
): Promise<void> {
  const { commands: words, chat } = textsFor('en')
  try {
    await registerCommands({
      rest: client.rest,
      appId: client.application!.id,
      commands,
      words,
      others: byLocale(({ commands }) => commands),
      settings,
    })
  } catch (error) {
    if (!(error instanceof DiscordAPIError || error instanceof HTTPError)) throw error
    const { host } = new URL(client.rest.options.api)
    throw new ChatProblem(chat.problem.unreachable(host), { cause: error })
  }
}

async function stop(chat: Chat, bot: Bot, store: OpenStore, way: WithoutStore): Promise<void> {
  bot.stop?.()
  // what could not be sent by then waits in the outbox for the next start
  await Promise.all([chat.close(), within(bot.idle(), LAST_WORK_MS, undefined)])
  await way.close()
  await store.close()
}

/** The aliases that a coach may see while typing; nobody else sees any. */
async function aliases(store: OpenStore, actor: Actor): Promise<string[]> {
  if (!actor.guild) return []
  return store.store.transaction(async (tx) => {
    const practice = await tx.practiceOfGuild(actor.guild!)
    if (!practice || !isCoach(practice, actor)) return []
    return (await tx.roster(practice.id)).map((file) => file.client.ref)
  })
}
