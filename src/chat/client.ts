import { Client, DiscordAPIError, Events, GatewayIntentBits, Options } from 'discord.js'
import { safeError } from '../safe-error.ts'
import { createInFlight, within } from './in-flight.ts'
import { listen } from './inbound.ts'
import { leave } from './leave.ts'
import type { ChatParts } from './parts.ts'

/** Something about the platform that the keeper can mend: one sentence with what to do. */
export class ChatProblem extends Error {
  override readonly name = 'ChatProblem'
}

export interface Chat {
  /** Number of the last event that the gateway sent on the present line and that has been taken in, of all lines together; 0 before. */
  lastSequence(): number
  /** Resolves when nothing that came in is still being handled. */
  idle(): Promise<void>
  /** Takes in nothing more, lets what is under way end, and leaves; within 5 s. */
  close(): Promise<void>
}

export interface ConnectParts extends ChatParts {
  readonly token: string
  /** Called when the platform has closed the connection for good. */
  readonly lost?: (problem: ChatProblem) => void
}

// What the platform allows a bot (its documentation, "Global Rate Limit").
export const PER_SECOND = 50
// For so long the platform may say nothing while it greets a bot: its own client waits 15 s for servers that do not answer.
const GREETING_SILENCE_MS = 30_000
// Its client keeps the limits of each room that was written to or looked into: those that have run out go.
const SWEEP_MS = 60_000
// Of the 5 s that a stop may take; closing the line takes 1 s at most.
const LAST_WORK_MS = 3_500

/**
 * The platform's client, not connected yet; its `rest` can send from now on. Nothing that people write is kept in
 * its caches. Direct messages need no privileged intent.
 * @param api address of another server that speaks the platform's API, such as the rehearsal's
 * @param perSecond requests a second at most, by which sending is paced
 */
export function createClient(token: string, api: string | null = null, perSecond = PER_SECOND): Client {
  const client = new Client({
    intents: [GatewayIntentBits.Guilds, GatewayIntentBits.DirectMessages],
    // as many lines as the platform asks for: one for up to 2,500 servers
    shards: 'auto',
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      MessageManager: 0,
      GuildMemberManager: { maxSize: 0, keepOverLimit: (member) => member.id === member.client.user.id },
      UserManager: { maxSize: 0, keepOverLimit: (user) => user.id === user.client.user?.id },
    }),
    allowedMentions: { parse: [] },
    rest: { globalRequestsPerSecond: perSecond, handlerSweepInterval: SWEEP_MS, ...(api ? { api } : {}) },
  })
  client.rest.setToken(token)
  return client
}

/** Logs in and hears the platform until it is closed. @throws ChatProblem where it cannot be reached or refuses */
export async function connect(parts: ConnectParts): Promise<Chat> {
  const { client, log, texts } = parts
  const inFlight = createInFlight()
  const inbound = listen(parts, inFlight)
  client.on(Events.Error, (error) =>
    log.error({ error: safeError(error) }, 'the chat client reports an error'),
  )
  client.on(Events.ShardError, (error) => log.warn({ error: safeError(error) }, 'the gateway line broke'))
  await logIn(parts)
  const isLost = (): void => parts.lost?.(new ChatProblem(texts.problem.lost))
  client.on(Events.ShardDisconnect, isLost)
  client.on(Events.Invalidated, isLost)
  log.info('connected to the chat platform')

  const end = async (): Promise<void> => {
    inbound.stop()
    client.off(Events.ShardDisconnect, isLost)
    client.off(Events.Invalidated, isLost)
    await within(inFlight.idle(), LAST_WORK_MS, undefined)
    await leave(client)
  }
  let leaving: Promise<void> | null = null
  return {
    lastSequence: inbound.lastSequence,
    idle: inFlight.idle,
    close() {
      leaving ??= end()
      return leaving
    },
  }
}

/** Resolves when the servers that the bot is in are known. @throws ChatProblem; the client has left then */
export async function logIn({
  client,
  token,
  texts,
}: Pick<ConnectParts, 'client' | 'token' | 'texts'>): Promise<void> {
  const ready = new Promise<void>((resolve) => client.once(Events.ClientReady, () => resolve()))
  const silence = untilSilent(client)
  try {
    const entry = client.login(token).then(() => ready)
    if ((await Promise.race([entry, silence.over])) !== 'silent') return
  } catch (error) {
    await leave(client)
    throw new ChatProblem(mendOf(error, client, texts), { cause: error })
  } finally {
    silence.end()
  }
  await leave(client)
  throw new ChatProblem(texts.problem.unreachable(whereTo(client)))
}

/** Thousands of servers take their time to be told of: what counts is when the platform last said something. */
function untilSilent(client: Client): { readonly over: Promise<'silent'>; end(): void } {
  let timer: NodeJS.Timeout
  const over = new Promise<'silent'>((resolve) => {
    timer = setTimeout(resolve, GREETING_SILENCE_MS, 'silent')
  })
  const heard = (): unknown => timer.refresh()
  client.on(Events.Raw, heard)
  return {
    over,
    end() {
      clearTimeout(timer)
      client.off(Events.Raw, heard)
    },
  }
}

/** What the keeper can mend where the platform cannot be entered. */
export const problemOf = (error: unknown, client: Client, texts: ChatParts['texts']): ChatProblem =>
  new ChatProblem(mendOf(error, client, texts), { cause: error })

function mendOf(error: unknown, client: Client, { problem }: ChatParts['texts']): string {
  const { code, message } = error as { code?: unknown; message?: string }
  const isToken = code === 'TokenInvalid' || (error instanceof DiscordAPIError && error.status === 401)
  if (isToken || /authentication failed/i.test(message ?? '')) return problem.token
  if (/intents/i.test(`${String(code)} ${message ?? ''}`)) return problem.intents
  return problem.unreachable(whereTo(client))
}

const whereTo = (client: Client): string => new URL(client.rest.options.api).host
