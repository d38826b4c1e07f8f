import { setTimeout as pause } from 'node:timers/promises'
import pg from 'pg'
import { CONNECT_TIMEOUT_MS, destroy, serverProblem } from './postgresql.ts'

// A number of our own for the lock that the process with the gateway holds.
export const LEADER_LOCK = 37_021_947
/** By this name the server knows those who lead or stand by. */
export const LEADER = 'ebbline leader'
// A stand-by asks so often; with the silence below and a start it has the gateway well within half a minute.
const ASK_MS = 2_000
// Whoever leads comes back at once after a cut, before a stand-by asks.
const AGAIN_MS = 500
// The server ends a session that is silent for so long, and its lock with it: the machine is gone or stands still.
const SILENT_MS = 15_000
// Three beats may be missed.
const BEAT_MS = 4_000

/** Null: free in a moment, or not known. */
type Found = 'ours' | 'taken' | null

/** The lock that makes one process of a database the one with the gateway. */
export interface Lead {
  /** Gives it up for the next. */
  release(): Promise<void>
  /** Whether the server has cut this process off since it leads: what failed meanwhile may go well another time. */
  wasCut(): Promise<boolean>
}

export interface LeadParts {
  /** Called once where another process has it and this one waits. */
  readonly waiting: () => void
  /** Called where another process has it now: whatever only the leader may do must end at once. */
  readonly lost: () => void
}

/**
 * Resolves when this process leads. The lock belongs to a connection of its own, so that it ends with the process. Cut
 * off, the process tries to have it again, and lets go at once where another has it. While no server answers nobody
 * can have it, and somebody must hear those who need help: until then it goes on.
 * @throws StoreProblem where the server cannot be used
 */
export async function takeLead(url: string, server: string, parts: LeadParts): Promise<Lead> {
  let session: pg.Client | null = await connect(url).catch((error: unknown) => {
    throw serverProblem(error, server)
  })
  let told = false
  for (;;) {
    const found: Found = session && (await lockOn(session).catch(() => null))
    if (session && found === 'ours') return hold(session, url, parts.lost)
    if (found === 'taken' && !told) parts.waiting()
    told ||= found === 'taken'
    if (session && found === null) destroy(session)
    await pause(ASK_MS)
    session = found === null ? await connect(url).catch(() => null) : session
  }
}

function hold(first: pg.Client, url: string, lost: () => void): Lead {
  let session = first
  let over = false
  let cut = false

  const watch = (): void => {
    const own = session
    const beat = setInterval(() => void own.query('SELECT 1').catch(() => destroy(own)), BEAT_MS)
    own.once('end', () => {
      clearInterval(beat)
      cut = true
      if (!over) void again(pidOf(own))
    })
  }

  const again = async (former: number): Promise<void> => {
    while (!over) {
      const next = await connect(url).catch(() => null)
      const found: Found = next && (await lockOn(next, former).catch(() => null))
      if (next && found === 'ours') {
        session = next
        return watch()
      }
      if (next) destroy(next)
      if (found === 'taken') {
        over = true
        return lost()
      }
      await pause(AGAIN_MS)
    }
  }

  watch()
  return {
    async release() {
      over = true
      await session.end().catch(() => undefined)
    },
    async wasCut() {
      // the end of a line is heard of a little later than what failed by it
      cut ||= await session.query('SELECT 1').then(
        () => false,
        () => true,
      )
      return cut
    },
  }
}

async function connect(url: string): Promise<pg.Client> {
  const session = new pg.Client({
    connectionString: url,
    connectionTimeoutMillis: CONNECT_TIMEOUT_MS,
    query_timeout: CONNECT_TIMEOUT_MS,
    application_name: LEADER,
  })
  // unheard, it would end the process; what follows from it is told by "end"
  session.on('error', () => undefined)
  await session.connect()
  // a server before version 14 does not know it: there only the end of the connection frees the lock
  await session
    .query(`SELECT set_config('idle_session_timeout', $1, false)`, [String(SILENT_MS)])
    .catch(() => undefined)
  return session
}

/**
 * Whether the lock is ours now; null where it is free in a moment. After a cut the server may still know our own former
 * session, which is ended then.
 */
async function lockOn(session: pg.Client, former?: number): Promise<Found> {
  const { rows } = await session.query<{ ok: boolean }>('SELECT pg_try_advisory_lock($1) AS ok', [
    LEADER_LOCK,
  ])
  if (rows[0]!.ok) return 'ours'
  if (former === undefined) return 'taken'
  const { rows: holders } = await session.query<{ pid: number }>(
    `SELECT pid FROM pg_locks WHERE locktype = 'advisory' AND classid = 0 AND objid = $1 AND granted
       AND database = (SELECT oid FROM pg_database WHERE datname = current_database())`,
    [LEADER_LOCK],
  )
  if (holders.some(({ pid }) => pid !== former)) return 'taken'
  await session.query('SELECT pg_terminate_backend($1)', [former])
  return null
}

const pidOf = (session: pg.Client): number => (session as unknown as { processID: number }).processID
