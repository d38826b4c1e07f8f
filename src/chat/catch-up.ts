import { type APIMessage, type REST, Routes } from 'discord.js'
import type { Logger } from 'pino'
import type { Words } from '../engine/event.ts'
import { safeError } from '../safe-error.ts'
import { paceOf } from './delivery-pace.ts'
import { type DirectMessage, editFrom, messageFrom, wordsFrom } from './direct-messages.ts'
import { within } from './in-flight.ts'
import type { KnownDm, KnownDms } from './parts.ts'

// The most that the platform gives at once.
const PAGE = 100
// A healthy store takes some milliseconds.
const LOOK_UP_MS = 200
// A store that did not answer is asked again: somebody may have written of an urgent sign and not write again.
const AGAIN_MS = 60_000

export interface CatchUp {
  /** Fetches what every known person wrote while the bot was away; called at every new session. */
  begin(): Promise<void>
  /** Resolves when a channel has been caught up with, so that a new message is not applied before an older one. */
  before(channel: string, user: string): Promise<void>
  /** Asks a store that did not answer no more. */
  stop(): void
}

export interface CatchUpParts {
  readonly rest: REST
  readonly knownDms: KnownDms
  /** Applies what somebody wrote or changed; what was applied before is known by its id. */
  readonly hear: (words: Words, channel: string) => Promise<void>
  readonly log: Logger
}

/** What was fetched since a session began. */
interface Round {
  readonly fetched: Map<string, Promise<void>>
  /** The next message in these channels, or the next session, tries again. */
  readonly failed: Set<string>
  /** Everybody has been caught up with but those. */
  isOver: boolean
}

const newRound = (): Round => ({ fetched: new Map(), failed: new Set(), isOver: false })

export function createCatchUp({ rest, knownDms, hear, log }: CatchUpParts): CatchUp {
  let round: Round = { ...newRound(), isOver: true }
  let again: NodeJS.Timeout | undefined

  const fetchAll = async ({ channel, after: from }: KnownDm): Promise<void> => {
    const written: DirectMessage[] = []
    for (let after = from, size = PAGE; size === PAGE; ) {
      const query = new URLSearchParams({ after, limit: String(PAGE) })
      const page = (await rest.get(Routes.channelMessages(channel), { query })) as APIMessage[]
      page.sort((a, b) => (BigInt(a.id) < BigInt(b.id) ? -1 : 1))
      written.push(...page.map(messageFrom).filter((message) => message !== null))
      size = page.length
      after = page.at(-1)?.id ?? after
    }
    for (const words of asItCame(written)) await hear(words, channel)
  }

  const fetchOnce = (dm: KnownDm, { fetched, failed }: Round): Promise<void> => {
    const begun = fetched.get(dm.channel)
    if (begun) return begun
    failed.delete(dm.channel)
    const work = fetchAll(dm).catch((error) => {
      log.warn({ error: safeError(error) }, 'messages written meanwhile could not be fetched')
      fetched.delete(dm.channel)
      failed.add(dm.channel)
    })
    fetched.set(dm.channel, work)
    return work
  }

  /** What was fetched before the store failed is not fetched again. */
  const goThrough = async (mine: Round): Promise<void> => {
    try {
      for await (const page of knownDms.all())
        for (const dm of page) {
          if (round !== mine) return
          // thousands may have been away from: whoever writes now goes first
          if (!mine.fetched.has(dm.channel)) await paceOf(rest).turn()
          await fetchOnce(dm, mine)
        }
    } catch (error) {
      log.error({ error: safeError(error) }, 'whom to catch up with could not be read; it is tried again')
      if (round === mine) again = setTimeout(goThrough, AGAIN_MS, mine).unref()
      return
    }
    mine.isOver = true
    mine.fetched.clear()
  }

  return {
    begin() {
      clearTimeout(again)
      round = newRound()
      return goThrough(round)
    },
    async before(channel, user) {
      const mine = round
      if (mine.isOver && !mine.failed.has(channel)) return
      // nobody who writes waits long for a store that does not answer
      const dm = await within(knownDms.of(user), LOOK_UP_MS, null).catch(() => null)
      if (dm?.channel !== channel) return
      if (!mine.fetched.has(channel)) paceOf(rest).count(false)
      await fetchOnce(dm, mine)
    },
    stop() {
      clearTimeout(again)
      round = { ...newRound(), isOver: true }
    },
  }
}

/**
 * Messages and their edits, oldest first. Of a message that was changed only the new words are left: where it was not
 * applied before, its edit is applied with it.
 */
function asItCame(messages: readonly DirectMessage[]): Words[] {
  const all = messages.flatMap((message) => {
    const edit = editFrom(message)
    return edit ? [{ ...wordsFrom(message), appliesToo: edit.id }, edit] : [wordsFrom(message)]
  })
  return all.sort((a, b) => a.at.getTime() - b.at.getTime())
}
