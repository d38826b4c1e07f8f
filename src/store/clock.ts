import pg from 'pg'
import { CONNECT_TIMEOUT_MS, serverProblem } from './postgresql.ts'

/**
 * Seconds by which this process's clock is ahead of a PostgreSQL server's, below zero where it is behind; exact to the
 * time that the answer takes.
 * @throws StoreProblem where the server cannot be reached
 */
export async function secondsAhead(url: string, server: string, now: () => Date): Promise<number> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: CONNECT_TIMEOUT_MS })
  // unheard, the end of the line would end the process; whatever is asked then tells of it
  client.on('error', () => undefined)
  try {
    await client.connect()
    const before = now().getTime()
    const { rows } = await client.query<{ at: Date }>('SELECT clock_timestamp() AS at')
    return ((before + now().getTime()) / 2 - rows[0]!.at.getTime()) / 1000
  } catch (error) {
    throw serverProblem(error, server)
  } finally {
    await client.end().catch(() => undefined)
  }
}
