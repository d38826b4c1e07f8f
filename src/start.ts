import { existsSync } from 'node:fs'
import { setTimeout as pause } from 'node:timers/promises'
import SqliteDatabase from 'better-sqlite3'
import { ChatProblem } from './chat/client.ts'
import { type Service, type ServiceParts, startService } from './service.ts'
import { serveWithoutStore } from './service-without-store.ts'
import { openSeveral, type Several } from './several.ts'
import { knownFile } from './short-way.ts'
import { fileOf, readAddress } from './store/address.ts'
import { driverProblem } from './store/driver-problem.ts'
import { type Lead, takeLead } from './store/leader.ts'
import { ledgerPlace } from './store/ledger.ts'
import { openStore } from './store/open.ts'
import { serverProblem } from './store/postgresql.ts'
import { codeOf, StoreProblem } from './store/problem.ts'

// Soon at first, since a lock or a server that starts takes seconds; later not so often that it is in the way.
const FIRST_MS = 2_000
const LONGEST_MS = 60_000

// What waiting does not mend: a wrong path, user, password or database name. Who is on file is not in there.
const ONLY_THE_KEEPER = ['EISDIR', 'ENOTDIR', 'EEXIST', '28P01', '28000', '3D000', '42501']

export interface PatientParts extends ServiceParts {
  /** Hears in one sentence, with the mend, why the database cannot be opened; the same one once. */
  readonly tell: (problem: Error) => void
}

/** The server went away in the middle of a start: it was there, so that it is waited for. */
class CutOff extends StoreProblem {}

/**
 * Starts the bot, on PostgreSQL once no other process has the gateway. While the database cannot be opened, urgent
 * signs of those who were known are answered all the same, what people say is kept in the spool, and the start is tried
 * again.
 * @throws StoreProblem where only the keeper can mend it (a newer database, a wrong password), or nobody is on file
 * yet and the database was not there at all; ChatProblem where the platform cannot be reached
 */
export async function startPatiently({ tell, ...parts }: PatientParts): Promise<Service> {
  for (;;) {
    try {
      return await startLeading(parts)
    } catch (error) {
      const problem = awayProblem(error, parts)
      const isKnown = isAnybodyOnFile(parts)
      if (!problem || !(isKnown || error instanceof CutOff)) throw error
      tell(problem)
      const meanwhile = isKnown ? await serveWithoutStore(parts) : null
      try {
        await opens(parts, problem, tell)
      } finally {
        // only one of the two may hear the platform; what was said in between is fetched
        await meanwhile?.stop()
      }
    }
  }
}

/** On PostgreSQL one process has the gateway, however many are started: the others stand by. */
async function startLeading(parts: ServiceParts): Promise<Service> {
  const address = readAddress(parts.databaseUrl)
  if (address.kind === 'sqlite') return startService(parts)
  const lead = await takeLead(address.url, address.server, {
    waiting: () =>
      parts.log.info('stand-by: another process has the gateway; this one takes over when it ends'),
    lost: () =>
      parts.lost?.(
        new Error('Another process has the gateway now: this one ends, and may be started again.'),
      ),
  })
  let several: Several | null = null
  try {
    several = await openSeveral(address, parts.log, parts.perSecond)
    // whoever led before may have ended with these in hand
    await several.jobs.takeBack('due')
    return leading(await startService({ ...parts, several }), lead, several)
  } catch (error) {
    const isCut = await lead.wasCut()
    await several?.jobs.close().catch(() => undefined)
    await lead.release()
    if (!isCut || error instanceof ChatProblem) throw error
    const cause = { code: 'ECONNRESET' }
    throw new CutOff(serverProblem(cause, address.server).message, { cause })
  }
}

const leading = (service: Service, lead: Lead, { jobs }: Several): Service => ({
  ...service,
  abandon() {
    service.abandon()
    void jobs.close().catch(() => undefined)
    void lead.release()
  },
  async stop() {
    await service.stop()
    await jobs.close()
    // last: until the gateway has been left nobody else may have it
    await lead.release()
  },
})

/** Resolves when the database can be opened. */
async function opens(parts: ServiceParts, first: Error, tell: PatientParts['tell']): Promise<void> {
  let told = first.message
  for (let wait = FIRST_MS; ; wait = Math.min(wait * 2, LONGEST_MS)) {
    await pause(wait)
    try {
      return await tryToOpen(parts)
    } catch (error) {
      const problem = awayProblem(error, parts)
      if (!problem) throw error
      if (problem.message !== told) tell(problem)
      told = problem.message
    }
  }
}

async function tryToOpen(parts: ServiceParts): Promise<void> {
  const address = readAddress(parts.databaseUrl)
  if (address.kind === 'sqlite') look(address.path)
  const ledger = ledgerPlace(address, parts.spoolFolder ?? 'data')
  const store = await (parts.openStore ?? openStore)(parts.databaseUrl, ledger, undefined, parts.seal ?? null)
  await store.close()
}

/** A look that does not wait: nobody could be answered meanwhile. A file that is not there is not made. */
function look(path: string): void {
  const db = new SqliteDatabase(path, { fileMustExist: true, timeout: 0 })
  try {
    db.prepare('SELECT count(*) FROM "sqlite_master"').get()
  } finally {
    db.close()
  }
}

/** Who can be answered without the database. */
const isAnybodyOnFile = (parts: ServiceParts): boolean => !knownFile(parts).people.isEmpty

/** What is wrong with the database where it may pass; null for any other failure. */
function awayProblem(error: unknown, { databaseUrl }: ServiceParts): Error | null {
  const path = fileOf(readAddress(databaseUrl))
  if (error instanceof StoreProblem) {
    const isGone = path !== null && !existsSync(path)
    const code = codeOf(error.cause)
    return isGone || (code !== '' && !ONLY_THE_KEEPER.includes(code)) ? error : null
  }
  return path === null ? null : driverProblem(error, path)
}
