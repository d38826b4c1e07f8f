import type { Database } from './database.ts'

/** A client's private channel, and the message from which on to look at it again after a time away. */
export interface Direct {
  readonly channel: string
  readonly user: string
  readonly after: string
}

/** An earlier message may have been changed while the bot was away, or lost by a kill: a figure of our own. */
const BACK_MS = 3n * 86_400_000n
/** Ids of the platform hold milliseconds above the lowest 22 bits (Discord documentation, "Snowflakes"). */
const MS_BITS = 22n

/** Everybody who was invited and has not left, for fetching what was written while the bot was away. */
export async function directs(database: Database): Promise<Direct[]> {
  const found = await database.use(
    (db) => db.$queryRaw<{ channel: string; user: string; first: string; last: string | null }[]>`
      SELECT "first"."channel" AS "channel", "c"."user" AS "user", "first"."platformId" AS "first",
        (SELECT "i"."id" FROM "Inbound" AS "i" WHERE "i"."clientId" = "c"."id" ORDER BY "i"."at" DESC, "i"."id" DESC LIMIT 1)
          AS "last"
      FROM "Client" AS "c" JOIN "Outbox" AS "first"
        ON "first"."clientId" = "c"."id" AND "first"."kind" = 'welcome' AND "first"."state" = 'sent'
      WHERE "c"."stage" <> 'left'`,
  )
  return found.map(({ channel, user, first, last }) => ({ channel, user, after: lookBack(first, last) }))
}

/** Three days before the last that was applied, but nothing from before the bot's first message to them. */
function lookBack(first: string, last: string | null): string {
  // ids of edits and deletions go on behind that of their message
  const id = /^\d+/.exec(last ?? '')?.[0]
  if (id === undefined || !/^\d+$/.test(first)) return first
  const back = BigInt(id) - (BACK_MS << MS_BITS)
  return String(back > BigInt(first) ? back : first)
}
