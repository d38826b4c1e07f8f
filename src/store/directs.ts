import type { Database } from './database.ts'

/** A client's private channel, and the last of their messages that was applied (or the bot's first to them). */
export interface Direct {
  readonly channel: string
  readonly user: string
  readonly lastSeen: string
}

/** Everybody who was invited and has not left, for fetching what was written while the bot was away. */
export const directs = (database: Database): Promise<Direct[]> =>
  database.use(
    (db) => db.$queryRaw<Direct[]>`
      SELECT "first"."channel" AS "channel", "c"."user" AS "user", COALESCE(
        (SELECT "i"."id" FROM "Inbound" AS "i" WHERE "i"."clientId" = "c"."id" ORDER BY "i"."at" DESC, "i"."id" DESC LIMIT 1),
        "first"."platformId") AS "lastSeen"
      FROM "Client" AS "c" JOIN "Outbox" AS "first"
        ON "first"."clientId" = "c"."id" AND "first"."kind" = 'welcome' AND "first"."state" = 'sent'
      WHERE "c"."stage" <> 'left'`,
  )
