import type pg from 'pg'
import { deadOf, type Queue, SCHEMA } from './jobs.ts'

/** What failed at its last try and is still to be done. */
export interface PutAside {
  readonly queue: Queue
  readonly tasks: number
  /** When the first of them was given up; null where there is none. */
  readonly since: Date | null
}

// Whether it waits even now: a later try may have gone well.
const STILL_WAITS: Readonly<Record<Queue, string>> = {
  due: `SELECT 1 FROM "Due" WHERE "id" = "dead"."data"->>'key' AND "at" <= timezone('UTC', now())`,
  deliver: `SELECT 1 FROM "Outbox" WHERE "state" = 'waiting' AND COALESCE("clientId", "id") = "dead"."data"->>'key'
    AND "notBefore" <= timezone('UTC', "dead"."created_on")`,
}

/** Looks through the jobs that failed for good, queue by queue; none where no engine of jobs has run here yet. */
export async function putAside(client: Pick<pg.Client, 'query'>): Promise<PutAside[]> {
  const { rows } = await client.query<{ is: boolean }>('SELECT to_regclass($1) IS NOT NULL AS is', [
    `${SCHEMA}.job`,
  ])
  if (!rows[0]!.is) return []
  const found: PutAside[] = []
  for (const queue of Object.keys(STILL_WAITS) as Queue[]) {
    const [row] = (
      await client.query<{ tasks: number; since: Date | null }>(
        `SELECT count(DISTINCT "data"->>'key')::int AS tasks, min("created_on") AS since
         FROM ${SCHEMA}.job AS "dead" WHERE "name" = $1 AND EXISTS (${STILL_WAITS[queue]})`,
        [deadOf(queue)],
      )
    ).rows
    found.push({ queue, ...row! })
  }
  return found
}
