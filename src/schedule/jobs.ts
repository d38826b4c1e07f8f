import pg from 'pg'
import PgBoss from 'pg-boss'

export type Queue = 'due' | 'deliver'

/** What is to be done: due rows and lines of messages, by their id. */
export interface Task {
  readonly key: string
  /** 0 is the most pressing. */
  readonly priority: number
}

/**
 * Jobs by which several processes share the work. They are nudges: what is due and what waits stands in the tables of
 * the store, so that a job lost or done twice changes nothing.
 */
export interface Jobs {
  /** Asks for each of these, once: a repeat collapses while the first waits. */
  send(queue: Queue, tasks: readonly Task[]): Promise<void>
  /**
   * Hands over tasks, most pressing first, until none is left or `close` is called. `handle` gives the keys that
   * failed: those are tried again later and later, and in the end put aside.
   */
  run(queue: Queue, handle: (keys: readonly string[]) => Promise<readonly string[]>): Promise<void>
  /** How many wait to be taken; counted up to `most`. */
  waiting(queue: Queue, most: number): Promise<number>
  /** Keys that are under way, wait for another try or were put aside lately: not to be asked for now. */
  resting(queue: Queue): Promise<ReadonlySet<string>>
  /** What a process that has ended had in hand is free again; for a queue with one worker only. */
  takeBack(queue: Queue): Promise<void>
  /** Runs a statement beside the jobs. */
  query<Row extends pg.QueryResultRow>(sql: string, values?: readonly unknown[]): Promise<Row[]>
  /** Ends in order: what is in hand is finished first. */
  close(): Promise<void>
}

// A job holds nothing that is not in the store as well: it need not be on the disk before the next is sent.
const CONNECTION = '-c synchronous_commit=off'
const CONNECTIONS = 4
const CONNECT_TIMEOUT_MS = 5_000
export const SCHEMA = 'pgboss'
// A day of failed jobs is enough to look at; nothing about an erased client stays longer.
const KEPT_S = 86_400
// Overdue jobs are looked for so often.
const MAINTENANCE_S = 15
// After its last try a task is left alone so long, then asked for again: what is in the store is never given up.
const REST_MINUTES = 15

interface Policy {
  /** How many are handed over at a time. */
  readonly batch: number
  /** A job in hand for longer belongs to a process that has ended. */
  readonly expireInSeconds: number
  /** Tries after the first, and seconds before the second; each wait is about twice as long as the one before. */
  readonly retryLimit: number
  readonly retryDelay: number
}
const POLICIES: Readonly<Record<Queue, Policy>> = {
  // one after another, some hundredths of a second each
  due: { batch: 20, expireInSeconds: 60, retryLimit: 5, retryDelay: 5 },
  // side by side; a claim holds as long
  deliver: { batch: 10, expireInSeconds: 120, retryLimit: 5, retryDelay: 5 },
}
const QUEUES = Object.keys(POLICIES) as Queue[]
export const deadOf = (queue: Queue): string => `${queue}-dead`

/**
 * Opens the jobs of a database, their tables made where needed.
 * @param name by which the server knows this process
 * @throws what the driver throws
 */
export async function openJobs(
  url: string,
  name: string,
  onTrouble: (error: unknown) => void,
): Promise<Jobs> {
  const pool = new pg.Pool({
    ...{ connectionString: url, options: CONNECTION, max: CONNECTIONS },
    connectionTimeoutMillis: CONNECT_TIMEOUT_MS,
    application_name: name,
  })
  // an idle connection that the server ends is replaced by the next use
  pool.on('error', () => undefined)
  const boss = new PgBoss({
    db: { executeSql: (text, values) => pool.query(text, values) },
    ...{ schema: SCHEMA, schedule: false, maintenanceIntervalSeconds: MAINTENANCE_S },
    ...{ archiveCompletedAfterSeconds: 60, archiveFailedAfterSeconds: KEPT_S, deleteAfterSeconds: 60 },
  })
  boss.on('error', onTrouble)
  try {
    await boss.start()
    for (const queue of QUEUES) await make(boss, queue)
  } catch (error) {
    await pool.end()
    throw error
  }
  return jobsOf(boss, pool, onTrouble)
}

async function make(boss: PgBoss, queue: Queue): Promise<void> {
  const { batch: _, ...policy } = POLICIES[queue]
  const retentionMinutes = KEPT_S / 60
  await boss.createQueue(deadOf(queue), { name: deadOf(queue), retentionMinutes })
  await boss.createQueue(queue, {
    ...{ name: queue, policy: 'short', retryBackoff: true, retentionMinutes, deadLetter: deadOf(queue) },
    ...policy,
  })
}

function jobsOf(boss: PgBoss, pool: pg.Pool, onTrouble: (error: unknown) => void): Jobs {
  const running = new Set<Promise<void>>()
  let closing = false

  const query: Jobs['query'] = async <Row extends pg.QueryResultRow>(
    sql: string,
    values: readonly unknown[] = [],
  ) => (await pool.query<Row>(sql, [...values])).rows

  const runAll = async (queue: Queue, handle: Parameters<Jobs['run']>[1]): Promise<void> => {
    while (!closing) {
      const jobs = await boss.fetch<{ key: string }>(queue, { batchSize: POLICIES[queue].batch })
      if (jobs.length === 0) return
      const failed = await handle(jobs.map(({ data }) => data.key)).catch((error) => {
        onTrouble(error)
        return jobs.map(({ data }) => data.key)
      })
      const [again, done] = [true, false].map((isFailed) =>
        jobs.filter(({ data }) => failed.includes(data.key) === isFailed).map(({ id }) => id),
      )
      // one that is done leaves nothing behind: the store is the record
      if (done!.length > 0) await boss.deleteJob(queue, done!)
      if (again!.length > 0) await boss.fail(queue, again!, {})
    }
  }

  return {
    query,
    async send(queue, tasks) {
      if (tasks.length === 0) return
      // the engine of jobs takes the greatest number first
      await boss.insert(
        tasks.map(({ key, priority }) => ({
          name: queue,
          data: { key },
          singletonKey: key,
          priority: -priority,
        })),
      )
    },
    run(queue, handle) {
      const work = runAll(queue, handle).finally(() => running.delete(work))
      running.add(work)
      return work
    },
    async waiting(queue, most) {
      const [row] = await query<{ n: number }>(
        `SELECT count(*)::int AS n FROM (SELECT 1 FROM ${SCHEMA}.job WHERE name = $1 AND state = 'created' LIMIT $2) AS "found"`,
        [queue, most],
      )
      return row!.n
    },
    async resting(queue) {
      const rows = await query<{ key: string }>(
        `SELECT singleton_key AS key FROM ${SCHEMA}.job WHERE name = $1 AND (state IN ('created', 'retry')
           OR (state = 'active' AND started_on + expire_in > now())
           OR (state = 'failed' AND completed_on > now() - interval '${REST_MINUTES} minutes'))`,
        [queue],
      )
      return new Set(rows.map(({ key }) => key))
    },
    async takeBack(queue) {
      await query(`DELETE FROM ${SCHEMA}.job WHERE name = $1 AND state = 'active'`, [queue])
    },
    async close() {
      closing = true
      await Promise.allSettled([...running])
      await boss.stop({ graceful: false })
      await pool.end()
    },
  }
}
