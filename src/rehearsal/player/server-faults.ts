import pg from 'pg'
import { WRITER_LOCK } from '../../store/postgresql.ts'

type End = () => Promise<void>

/** Another connection holds the lock that every writer waits for. */
export async function lockedServer(url: string): Promise<End> {
  const other = new pg.Client({ connectionString: url })
  await other.connect()
  await other.query('SELECT pg_advisory_lock($1)', [WRITER_LOCK])
  return () => other.end()
}

/** The database takes no connections, and those that were there are cut; the user must own it. */
export async function goneServer(url: string): Promise<End> {
  const { pathname } = new URL(url)
  const name = decodeURIComponent(pathname.slice(1))
  const allow = (isAllowed: boolean): string =>
    `ALTER DATABASE ${pg.escapeIdentifier(name)} ALLOW_CONNECTIONS ${isAllowed}`
  // its own server's first database, which everybody may use
  const admin = new pg.Client({ connectionString: new URL('/postgres', url).href })
  await admin.connect()
  await admin.query(allow(false))
  await admin.query('SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = $1', [name])
  return async () => {
    await admin.query(allow(true))
    await admin.end()
  }
}
