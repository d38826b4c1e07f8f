import type { SharedBudget } from '../engine/several.ts'
import type { Jobs } from './jobs.ts'

/** How evenly and how densely requests may go: milliseconds from one to the next. */
export interface Spacing {
  readonly usually: number
  /** After somebody needed help, for so many milliseconds. */
  readonly afterUrgent: number
  readonly urgentMs: number
}

// Milliseconds of the server's clock: those of the processes differ.
const NOW = 'extract(epoch FROM clock_timestamp()) * 1000'
const NEXT = 'pace'
const URGENT = 'pace-urgent'
const HELD = 'pace-held'

/**
 * One row says when the next request may go, and is moved on by whoever sends. A turn that nobody took is made up for
 * by one request.
 */
export function sharedBudget({ query }: Pick<Jobs, 'query'>, spacing: Spacing): SharedBudget {
  return {
    async count() {
      const every = `(CASE WHEN COALESCE((SELECT "value"::float8 FROM "Setting" WHERE "key" = '${URGENT}'), 0) > ${NOW}
        THEN $1::float8 ELSE $2::float8 END)`
      const [row] = await query<{ wait: number }>(
        `INSERT INTO "Setting" AS "s" ("key", "value") VALUES ('${NEXT}', (${NOW})::text)
         ON CONFLICT ("key") DO UPDATE
           SET "value" = greatest("s"."value"::float8 + ${every}, ${NOW} - ${every})::text
         RETURNING "value"::float8 - (${NOW})::float8 AS "wait"`,
        [spacing.afterUrgent, spacing.usually],
      )
      return row!.wait
    },
    async keepFree() {
      await moveOn(query, URGENT, spacing.urgentMs)
    },
    async hold(ms) {
      await moveOn(query, NEXT, ms)
      await moveOn(query, HELD, ms)
    },
    async held() {
      const [row] = await query<{ wait: number }>(
        `SELECT "value"::float8 - (${NOW})::float8 AS "wait" FROM "Setting" WHERE "key" = $1`,
        [HELD],
      )
      return row?.wait ?? 0
    },
  }
}

/** An instant so far from now, unless a later one stands there. */
const moveOn = (query: Jobs['query'], key: string, ms: number): Promise<unknown> =>
  query(
    `INSERT INTO "Setting" AS "s" ("key", "value") VALUES ($1, (${NOW} + $2::float8)::text)
     ON CONFLICT ("key") DO UPDATE SET "value" = greatest("s"."value"::float8, ${NOW} + $2::float8)::text`,
    [key, ms],
  )
