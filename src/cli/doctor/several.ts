import pg from 'pg'
import { type PutAside, putAside } from '../../schedule/put-aside.ts'
import { readAddress } from '../../store/address.ts'
import { CONNECT_TIMEOUT_MS, serverProblem } from '../../store/postgresql.ts'
import { type Processes, processesOn } from '../../store/processes.ts'
import { doctor } from '../../text/en/doctor.ts'
import { type Line, notOk, ok } from './line.ts'

/**
 * Where several processes may share the database: which are up, and what they have given up for now; nothing on SQLite.
 * @param mustRun whether it is wrong that none is up
 */
export async function severalLines(url: string, mustRun: boolean): Promise<Line[]> {
  const address = readAddress(url)
  if (address.kind === 'sqlite') return []
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: CONNECT_TIMEOUT_MS })
  // unheard, the end of the line would end the process; whatever is asked then tells of it
  client.on('error', () => undefined)
  try {
    await client.connect()
    return [processLine(await processesOn(client), mustRun), ...(await putAside(client)).map(jobsLine)]
  } catch (error) {
    return [notOk('processes', serverProblem(error, address.server).message)]
  } finally {
    await client.end().catch(() => undefined)
  }
}

function processLine({ leading, standingBy, working }: Processes, mustRun: boolean): Line {
  if (leading) return ok('processes', doctor.processes(standingBy, working))
  if (standingBy > 0) return ok('processes', doctor.takingOver(standingBy, working))
  const says = working > 0 ? doctor.nobodyLeads(working) : doctor.nobodyUp
  return mustRun || working > 0 ? notOk('processes', says) : ok('processes', says)
}

function jobsLine({ queue, tasks, since }: PutAside): Line {
  const check = doctor.jobs[queue]
  return tasks === 0 ? ok(check, doctor.noneAside) : notOk(check, doctor.aside(tasks, since!.toISOString()))
}
