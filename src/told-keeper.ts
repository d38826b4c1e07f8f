import type { Client } from 'discord.js'
import type { Logger } from 'pino'
import type { Bot, BotParts } from './bot.ts'
import { serverOf } from './chat/channel-facts.ts'
import { watchServers } from './chat/watch-servers.ts'
import type { Ladder } from './domain/ladder/ladders.ts'
import { troubleOf } from './engine/coach/server-trouble.ts'
import type { Server } from './engine/event.ts'
import type { PracticeRow } from './engine/rows.ts'
import { safeError } from './safe-error.ts'
import type { OpenStore } from './store/open.ts'
import { textsFor } from './text/index.ts'

/** What the keeper hears of messages. */
export const told = (log: Logger): Pick<BotParts, 'onTrouble' | 'onUndelivered'> => ({
  onTrouble: (error) => log.warn({ error: safeError(error) }, 'something failed; it is tried again'),
  onUndelivered: ({ outbox, reason }) =>
    log.warn({ outbox, reason }, 'a message did not arrive; see ebb doctor'),
})

/** The keeper hears where an older copy of the database had brought back somebody who was erased. */
export function tellErasures({ erasures }: OpenStore, log: Logger): void {
  if (!erasures) return
  if (erasures.again > 0)
    log.warn(
      { clients: erasures.again },
      'this is an older copy of the database; the erased are erased again',
    )
  if (erasures.problem) log.warn({ problem: erasures.problem }, 'the list of erasures is not up to date')
}

/**
 * Practices as they stand at the start and after every change of their servers: what stops their work is told where
 * it still can be, and counted in the log.
 */
export async function watchPractices(
  client: Client,
  { store }: OpenStore,
  bot: Bot,
  { log, now }: { readonly log: Logger; readonly now: () => Date },
): Promise<void> {
  const { permissions } = textsFor('en').chat
  const look = async (practice: PracticeRow, server: Server | null): Promise<void> => {
    const of = { server: practice.guild }
    if (!practice.policyConfirmed) log.warn(of, 'the platform policy is not confirmed: nobody can be invited')
    if (!server) return log.warn(of, 'the bot is not in the server of a practice; it is kept')
    const trouble = troubleOf(practice, server, textsFor(practice.language), now())
    if (!trouble) return
    await store.transaction((tx) => tx.apply({ changes: [], postings: [trouble.posting] }))
    log.warn({ ...of, wrong: trouble.wrong }, 'a practice cannot work as it should; see ebb doctor')
  }
  for (const practice of await store.transaction((tx) => tx.practices()))
    await look(practice, serverOf(client, practice.guild, permissions))
  watchServers({
    ...{ client, log, names: permissions },
    changed: async (guild, server) => {
      const practice = await store.transaction((tx) => tx.practiceOfGuild(guild))
      if (!practice) return
      await look(practice, server)
      await bot.tick()
    },
  })
}

/** A ladder that no file describes any more rests; the keeper hears of it, the coach at the next /plan. */
export async function tellGone(store: OpenStore, ladders: readonly Ladder[], log: Logger): Promise<void> {
  for (const { ladder, clients } of await store.laddersInPlans())
    if (!ladders.some(({ id }) => id === ladder))
      log.warn({ ladder, clients }, 'plans hold a ladder that EBBLINE_LADDERS does not describe; it rests')
}
