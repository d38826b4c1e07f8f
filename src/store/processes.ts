import type pg from 'pg'
import { LEADER, LEADER_LOCK } from './leader.ts'
import { processNamed } from './process-name.ts'

/** The processes of a PostgreSQL database that are connected at this moment, on whatever machine. */
export interface Processes {
  /** One has the gateway, or none. */
  readonly leading: boolean
  readonly standingBy: number
  /** `ebb work`. */
  readonly working: number
}

const WORKER = 'ebbline work '
// A name of the server's holds 63 bytes; the end of ours tells processes apart.
const OWN = 40

/** By this name the server knows this process as a worker. */
export const workerNamed = (): string => WORKER + processNamed().slice(-OWN)

/** Counts those whose sessions this user may see: its own. */
export async function processesOn(client: Pick<pg.Client, 'query'>): Promise<Processes> {
  const { rows } = await client.query<{ waiting: number; leading: number; working: number }>(
    `WITH "mine" AS (SELECT "pid", "application_name" AS "name" FROM pg_stat_activity
       WHERE "datname" = current_database()),
     "holder" AS (SELECT "pid" FROM pg_locks WHERE "locktype" = 'advisory' AND "classid" = 0 AND "objid" = $1
       AND "granted" AND "database" = (SELECT "oid" FROM pg_database WHERE "datname" = current_database()))
     SELECT (SELECT count(*) FROM "holder")::int AS "leading",
       count(*) FILTER (WHERE "name" = $2 AND "pid" NOT IN (SELECT "pid" FROM "holder"))::int AS "waiting",
       (count(DISTINCT "name") FILTER (WHERE starts_with("name", $3)))::int AS "working" FROM "mine"`,
    [LEADER_LOCK, LEADER, WORKER],
  )
  const { leading, waiting, working } = rows[0]!
  return { leading: leading > 0, standingBy: waiting, working }
}
