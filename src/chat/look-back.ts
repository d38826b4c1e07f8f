import { type APIMessage, type REST, Routes, SnowflakeUtil } from 'discord.js'
import type { OutboxRow } from '../engine/rows.ts'
import { refusalOf } from './refusal.ts'
import type { Part } from './render.ts'
import { isUrgent, LONGEST_MS } from './retry-at.ts'

// The platform knows a nonce for "the past few minutes" (its documentation, "Create Message"): so long it surely does.
export const KNOWN_MS = 60_000
// The clocks of this machine and of the platform differ.
const SLACK_MS = 5 * 60_000
// The most that the platform gives at once, and so many times at most.
const PAGE = 100
const PAGES = 5

export interface LookBackParts {
  readonly rest: REST
  readonly now: () => Date
  /** Platform id of the bot; null before it is known. */
  readonly ownId: () => string | null
  /** Which of these messages of the platform are known to the store as sent. */
  readonly marked: (platformIds: readonly string[]) => Promise<ReadonlySet<string>>
  /** True where somebody may have sent a message before; left out: where it may have gone before this start. */
  readonly mayBeThere?: (row: OutboxRow) => boolean
}

/**
 * Finds messages that an earlier try has brought to the platform without hearing of it, where the platform may have
 * forgotten the nonce: a process was ended between sending and marking, or no answer came for long.
 */
export interface LookBack {
  /**
   * Asked as each try begins. The platform's id of each part that is there already; null, or nothing at all, where it is
   * to be sent.
   */
  there(row: OutboxRow, channel: string, parts: readonly Part[]): Promise<readonly (string | null)[]>
  /** What became of the message is known; until then it may be on the platform, whatever the try told. */
  over(row: OutboxRow): void
}

export function createLookBack(parts: LookBackParts): LookBack {
  const { rest, now, ownId, marked } = parts
  const started = now()
  const { mayBeThere = ({ notBefore }) => notBefore < started } = parts
  // when the first try of this process began: it may have arrived then, however long no answer came
  const firstTried = new Map<string, Date>()

  const triedBefore = (row: OutboxRow): Date | null =>
    row.attempts > 0 || mayBeThere(row) ? earliest(row) : null

  /** When an earlier try may have been; null where there was none, or none that the nonce would not tell of. */
  const triedSince = (row: OutboxRow): Date | null => {
    const since = firstTried.get(row.id) ?? triedBefore(row)
    return since !== null && now().getTime() - since.getTime() >= KNOWN_MS ? since : null
  }

  const find = async (row: OutboxRow, channel: string, parts: readonly Part[], since: Date) => {
    const own = (await messagesSince(rest, channel, since)).filter(({ author }) => author.id === ownId())
    const byProof = parts.map((part) => own.find((message) => isProven(message, part))?.id ?? null)
    // of an answer to a stranger nothing is kept, so that equal ones cannot be told apart
    if (row.practiceId === null || !byProof.includes(null)) return byProof
    const alike = own.filter((message) => parts.some((part) => isAlike(message, part)))
    const known = alike.length > 0 ? await marked(alike.map(({ id }) => id)) : new Set<string>()
    const free = alike.filter(({ id }) => !known.has(id) && !byProof.includes(id))
    return byProof.map((id, n) => {
      const at = id === null ? free.findIndex((message) => isAlike(message, parts[n]!)) : -1
      return at < 0 ? id : free.splice(at, 1)[0]!.id
    })
  }

  return {
    async there(row, channel, parts) {
      const since = triedSince(row)
      if (!firstTried.has(row.id)) firstTried.set(row.id, triedBefore(row) ?? now())
      if (since === null) return []
      try {
        return await find(row, channel, parts, since)
      } catch (error) {
        // rather twice than late where somebody may need help; where nothing can be read, sending tells what is wrong
        if (isUrgent(row) || refusalOf(error)) return []
        throw error
      }
    },
    over: (row) => void firstTried.delete(row.id),
  }
}

/** Each try that failed has put the next one off, by the longest wait at most. */
const earliest = ({ notBefore, attempts }: OutboxRow): Date =>
  new Date(notBefore.getTime() - attempts * LONGEST_MS)

/** What was written in a channel since then, oldest first. */
async function messagesSince(rest: REST, channel: string, since: Date): Promise<APIMessage[]> {
  const timestamp = since.getTime() - SLACK_MS
  const ids = { increment: 0n, workerId: 0n, processId: 0n }
  let after = SnowflakeUtil.generate({ timestamp, ...ids }).toString()
  const all: APIMessage[] = []
  for (let page = 0; page < PAGES; page += 1) {
    const query = new URLSearchParams({ after, limit: String(PAGE) })
    const found = (await rest.get(Routes.channelMessages(channel), { query })) as APIMessage[]
    found.sort((a, b) => (BigInt(a.id) < BigInt(b.id) ? -1 : 1))
    all.push(...found)
    if (found.length < PAGE) break
    after = found.at(-1)!.id
  }
  return all
}

/** Its nonce says so, where the platform gives it back, or a component that is under no other message. */
function isProven(message: APIMessage, { body }: Part): boolean {
  if (message.nonce !== undefined) return String(message.nonce) === body.nonce
  const ids = customIds(message.components)
  return customIds(body.components).some((id) => ids.includes(id))
}

/** The same words and files, without a nonce or component that would tell for certain. */
function isAlike(message: APIMessage, { body, files }: Part): boolean {
  if (message.nonce !== undefined || customIds(message.components).length > 0) return false
  const names = message.attachments.map(({ filename }) => filename).join('/')
  if (names !== files.map(({ name }) => name).join('/')) return false
  const [there, words] = [message.content.trim(), (body.content ?? '').trim()]
  if (words === '') return there === '' && names !== ''
  // what a press had it say besides stands after it
  return message.edited_timestamp === null ? there === words : there.startsWith(words)
}

/** Custom ids of the components in rows. */
function customIds(rows: readonly object[] | undefined): string[] {
  const components = (rows ?? []).flatMap((row) => ('components' in row ? (row.components as object[]) : []))
  return components.flatMap((one) => ('custom_id' in one ? [String(one.custom_id)] : []))
}
