import { setImmediate as letOthersIn } from 'node:timers/promises'
import { Prisma } from '../generated/sqlite/client.ts'
import type { Database } from './database.ts'

/** A client's private channel, and the message from which on to look at it again after a time away. */
export interface Direct {
  readonly channel: string
  readonly user: string
  readonly after: string
}

/** The private channels of everybody who was invited and has not left. */
export interface Directs {
  /** A page at a time. */
  all(): AsyncIterable<readonly Direct[]>
  /** That of one person; null where there is none. */
  of(user: string): Promise<Direct | null>
}

/** An earlier message may have been changed while the bot was away, or lost by a kill: a figure of our own. */
const BACK_MS = 3n * 86_400_000n
/** Ids of the platform hold milliseconds above the lowest 22 bits (Discord documentation, "Snowflakes"). */
const MS_BITS = 22n
// So many take some milliseconds: others get their turn between.
const PAGE = 200

interface Row {
  readonly id: string
  readonly user: string
  readonly channel: string | null
  readonly first: string | null
  readonly last: string | null
}

export function directsOf(database: Database): Directs {
  const read = (which: Prisma.Sql): Promise<Row[]> =>
    database.use(
      (db) => db.$queryRaw<Row[]>`
        SELECT "c"."id" AS "id", "c"."user" AS "user",
          (SELECT "o"."channel" ${WELCOME}) AS "channel", (SELECT "o"."platformId" ${WELCOME}) AS "first",
          (SELECT "i"."id" FROM "Inbound" AS "i" WHERE "i"."clientId" = "c"."id" ORDER BY "i"."at" DESC, "i"."id" DESC LIMIT 1)
            AS "last"
        FROM "Client" AS "c" WHERE "c"."stage" <> 'left' AND ${which}`,
    )
  return {
    async *all() {
      for (let last = '', size = PAGE; size === PAGE; ) {
        const rows = await read(Prisma.sql`"c"."id" > ${last} ORDER BY "c"."id" LIMIT ${PAGE}`)
        yield known(rows)
        await letOthersIn()
        size = rows.length
        last = rows.at(-1)?.id ?? last
      }
    },
    of: async (user) => known(await read(Prisma.sql`"c"."user" = ${user}`))[0] ?? null,
  }
}

/** Of a client "c" the row "o" of the invitation, in the order of an index: it is among the first. */
export const WELCOME = Prisma.sql`FROM "Outbox" AS "o"
  WHERE "o"."clientId" = "c"."id" AND "o"."state" = 'sent' AND "o"."kind" = 'welcome'
  ORDER BY "o"."priority", "o"."notBefore" LIMIT 1`

const known = (rows: readonly Row[]): Direct[] =>
  rows.flatMap(({ user, channel, first, last }) =>
    channel === null || first === null ? [] : [{ channel, user, after: lookBack(first, last) }],
  )

/** Three days before the last that was applied, but nothing from before the bot's first message to them. */
function lookBack(first: string, last: string | null): string {
  // ids of edits and deletions go on behind that of their message
  const id = /^\d+/.exec(last ?? '')?.[0]
  if (id === undefined || !/^\d+$/.test(first)) return first
  const back = BigInt(id) - (BACK_MS << MS_BITS)
  return String(back > BigInt(first) ? back : first)
}
