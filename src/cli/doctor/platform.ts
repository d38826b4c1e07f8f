import type { Client } from 'discord.js'
import { ChatProblem, createClient, logIn } from '../../chat/client.ts'
import { chat as texts } from '../../text/en/chat.ts'
import { doctor } from '../../text/en/doctor.ts'
import { type Line, notChecked, notOk, ok } from './line.ts'

/** The platform's own address, where DISCORD_API names no other. */
const PLATFORM = 'https://discord.com/api'
const VERSION = 'v10'
const ANSWER_MS = 10_000
/** Off by more, a message may land on the wrong day and the platform may refuse what is answered. */
const CLOCK_MOST_S = 60

export interface PlatformFound {
  readonly lines: readonly Line[]
  /** Logged in, with the servers that the bot is in; null where that failed. The caller destroys it. */
  readonly client: Client | null
}

/** The token, the clock against the platform's, and what the bot wishes to hear. Never shows the token. */
export async function platformLines(
  token: string,
  api: string | null,
  now: () => Date,
): Promise<PlatformFound> {
  const host = new URL(api ?? PLATFORM).host
  const before = now().getTime()
  const asked = await ask(token, api)
  if (asked === null)
    return { lines: [notOk('token', doctor.unreachable(host)), ...unasked(doctor.needsToken)], client: null }
  const clock = clockLine(asked.headers.get('date'), (before + now().getTime()) / 2)
  if (!asked.ok) {
    const says = asked.status === 401 ? doctor.tokenRefused : doctor.answered(host, asked.status)
    return { lines: [notOk('token', says), clock, notChecked('intents', doctor.needsToken)], client: null }
  }
  const { username } = (await asked.json()) as { username: string }
  const { line, client } = await enter(token, api)
  return { lines: [ok('token', doctor.token(username)), clock, line], client }
}

/** The checks that nobody can make without the platform. */
export const unasked = (why: string): Line[] => ['clock', 'intents'].map((check) => notChecked(check, why))

const ask = (token: string, api: string | null): Promise<Response | null> =>
  fetch(`${api ?? PLATFORM}/${VERSION}/users/@me`, {
    headers: { authorization: `Bot ${token}` },
    signal: AbortSignal.timeout(ANSWER_MS),
  }).catch(() => null)

function clockLine(date: string | null, ours: number): Line {
  const theirs = Date.parse(date ?? '')
  if (Number.isNaN(theirs)) return notOk('clock', doctor.noClock)
  const ahead = Math.round((ours - theirs) / 1000)
  return Math.abs(ahead) > CLOCK_MOST_S
    ? notOk('clock', doctor.clockOff(ahead))
    : ok('clock', doctor.clock(ahead))
}

/** Logs in beside a bot that may be running: it hears what that one hears, and answers nothing. */
async function enter(token: string, api: string | null): Promise<{ line: Line; client: Client | null }> {
  const client = createClient(token, api)
  client.on('error', () => undefined)
  try {
    await logIn({ client, token, texts })
    return { line: ok('intents', doctor.intents), client }
  } catch (error) {
    if (!(error instanceof ChatProblem)) throw error
    return { line: notOk('intents', error.message), client: null }
  }
}
