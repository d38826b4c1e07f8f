import { execFileSync } from 'node:child_process'
import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** A PostgreSQL server of a run's own, which may be stopped under the bot. */
export interface OwnServer {
  /** Address of its first database. */
  readonly url: string
  start(): void
  /** As a crash would: nothing is finished first. */
  stop(): void
  /** Stops it and removes what it kept. */
  remove(): void
}

/** Made and started; `user` runs it, since it does not run as root, and `bin` holds its programs. */
export function ownServer(bin = '/usr/lib/postgresql/15/bin', user = 'ebbline-test'): OwnServer {
  const port = 55_000 + (process.pid % 400)
  const folder = mkdtempSync(join(tmpdir(), 'ebbline-pg-'))
  chmodSync(folder, 0o777)
  const as = (...command: string[]): void =>
    void execFileSync('runuser', ['-u', user, '--', ...command], { stdio: 'ignore' })
  const data = join(folder, 'data')
  const options = `-p ${port} -c listen_addresses=127.0.0.1 -k ${folder}`
  const start = (): void =>
    as(`${bin}/pg_ctl`, '-D', data, '-w', '-o', options, '-l', join(folder, 'log'), 'start')
  const stop = (): void => as(`${bin}/pg_ctl`, '-D', data, '-w', '-m', 'immediate', 'stop')
  as(`${bin}/initdb`, '-D', data, '-U', 'ebbline', '-A', 'trust')
  start()
  return {
    url: `postgresql://ebbline@127.0.0.1:${port}/postgres`,
    start,
    stop,
    remove() {
      stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
