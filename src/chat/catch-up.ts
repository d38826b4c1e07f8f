import { type APIMessage, type REST, Routes } from 'discord.js'
import type { Logger } from 'pino'
import type { Words } from '../engine/event.ts'
import { paceOf } from './delivery-pace.ts'
import { type DirectMessage, editFrom, messageFrom, wordsFrom } from './direct-messages.ts'
import type { KnownDm } from './parts.ts'
import { safeError } from './safe-error.ts'

// The most that the platform gives at once.
const PAGE = 100

export interface CatchUp {
  /** Fetches what every known person wrote while the bot was away; called at every new session. */
  begin(): Promise<void>
  /** Resolves when a channel has been caught up with, so that a new message is not applied before an older one. */
  before(channel: string): Promise<void>
}

export interface CatchUpParts {
  readonly rest: REST
  readonly knownDms: () => Promise<readonly KnownDm[]>
  /** Applies what somebody wrote or changed; what was applied before is known by its id. */
  readonly hear: (words: Words, channel: string) => Promise<void>
  readonly log: Logger
}

export function createCatchUp({ rest, knownDms, hear, log }: CatchUpParts): CatchUp {
  let known: Promise<Map<string, KnownDm>> = Promise.resolve(new Map())
  const fetched = new Map<string, Promise<void>>()

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

  const fetchOnce = (dm: KnownDm): Promise<void> => {
    const begun = fetched.get(dm.channel)
    if (begun) return begun
    const work = fetchAll(dm).catch((error) => {
      log.warn({ error: safeError(error) }, 'messages written meanwhile could not be fetched')
      // the next message in this channel, or the next session, tries again
      fetched.delete(dm.channel)
    })
    fetched.set(dm.channel, work)
    return work
  }

  return {
    async begin() {
      fetched.clear()
      known = knownDms().then(
        (dms) => new Map(dms.map((dm) => [dm.channel, dm])),
        (error) => {
          log.error({ error: safeError(error) }, 'whom to catch up with could not be read')
          return new Map()
        },
      )
      for (const dm of (await known).values()) {
        // thousands may have been away from: whoever writes now goes first
        if (!fetched.has(dm.channel)) await paceOf(rest).turn()
        await fetchOnce(dm)
      }
    },
    async before(channel) {
      const dm = (await known).get(channel)
      if (!dm) return
      if (!fetched.has(channel)) paceOf(rest).count(false)
      await fetchOnce(dm)
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
