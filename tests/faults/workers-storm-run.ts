import { setTimeout as pause } from 'node:timers/promises'
import { randomOf, uniformIn } from '../../src/domain/diaries/random.ts'
import type { ServiceProcess } from '../end-to-end/service-process.ts'
import { type OwnServer, ownServer } from './own-postgresql.ts'
import { faultsIn, type House, openHouse } from './workers-house.ts'

/**
 * `npm run storm [-- MESSAGES [SEED [BIN [USER]]]]`: three workers, the bot and a stand-by send MESSAGES (20,000) that are due
 * at once, while workers and leaders are killed one after another, a worker stands still for longer than a claim holds,
 * and PostgreSQL crashes twice, the second time together with the leader. None may be lost, sent twice, or overtake one
 * of its client. SEED (1) decides when what happens, and to which worker. BIN holds PostgreSQL's programs, USER runs it, since it does not run as root.
 */
const [messages = '20000', seed = '1', bin, user] = process.argv.slice(2)
const EACH = 5
const CLIENTS = Math.ceil(Number(messages) / EACH)
const ALL = CLIENTS * EACH
// The platform's 50 a second would take seven minutes; the machine is to be the limit.
const PER_SECOND = 400
// Longer than a claim holds.
const STILL_MS = 130_000
const SERVER_AWAY_MS = 3_000
const [whens, whos] = [randomOf(Number(seed), 1), randomOf(Number(seed), 2)]
const share = (least: number, most: number): number => uniformIn(whens, least, most)
// Shares of the messages at which something happens.
const AT = {
  still: share(0.05, 0.15),
  leader: [share(0.15, 0.3), share(0.5, 0.65)],
  crash: share(0.35, 0.45),
  both: share(0.7, 0.85),
} as const
const KILL_EVERY_MS = [6_000, 18_000] as const
const MOST_S = 30
// A machine on which all of this runs takes its time to load a process.
const PATIENCE_MS = 180_000
// All that is written becomes due at one instant.
const LATER = new Date(Date.now() + 86_400_000)
// "The past few minutes" of the platform are not relied on: it forgets what is a little older than a minute.
const FORGOTTEN_MS = 65_000

/** The two of which one has the gateway. */
interface Leaders {
  first: ServiceProcess
  next: ServiceProcess
  /** Seconds from each end of the first to the other's being ready. */
  readonly takeOvers: number[]
}

const since = performance.now()
const seconds = (from: number): number => (performance.now() - from) / 1000
const tell = (what: string): void => console.log(`${seconds(since).toFixed(0).padStart(5)} s  ${what}`)

async function storm(house: House, server: OwnServer): Promise<boolean> {
  const leaders = await startLeaders(house)
  const workers = [house.worker(), house.worker(), house.worker()]
  await Promise.all(workers.map((one) => one.logged('"working"', PATIENCE_MS)))
  await house.write(EACH, LATER)
  await house.writeDues(CLIENTS, LATER)
  await house.makeDue()
  tell(
    `seed ${seed}; due: ${ALL} messages and ${CLIENTS} other rows for ${CLIENTS} clients; the bot, a stand-by, 3 workers`,
  )
  const begun = performance.now()
  const forgetting = forget(house)
  const sent = (): number => house.posted.length
  const reached = async (share: number): Promise<void> => {
    while (sent() < share * ALL) await pause(20)
  }

  const still = reached(AT.still).then(() => standStill(workers.shift()!))
  const killing = killInTurn(house, workers, () => sent() < ALL)
  for (const at of [AT.leader[0], AT.crash, AT.leader[1], AT.both]) {
    await reached(at)
    const crash = at === AT.crash || at === AT.both ? crashed(server) : null
    if (at !== AT.crash) await takenOver(house, leaders)
    await crash
  }
  await reached(1)
  tell(`${(ALL / seconds(begun)).toFixed(0)} messages a second with all that`)
  const kills = await killing
  await still
  const left = await settled(house)
  clearInterval(forgetting)
  tell(`kills: ${kills} workers, ${leaders.takeOvers.length} leaders; crashes of PostgreSQL: 2`)
  return judge(house, left, leaders.takeOvers)
}

async function startLeaders(house: House): Promise<Leaders> {
  const first = house.leader()
  await first.logged('"ready"', PATIENCE_MS)
  const next = house.leader()
  await next.logged('stand-by', PATIENCE_MS)
  return { first, next, takeOvers: [] }
}

async function standStill(worker: ServiceProcess): Promise<void> {
  worker.freeze(true)
  tell('a worker stands still')
  await pause(STILL_MS)
  worker.freeze(false)
  tell('it goes on')
}

async function crashed(server: OwnServer): Promise<void> {
  server.stop()
  tell('PostgreSQL has crashed')
  await pause(SERVER_AWAY_MS)
  server.start()
  tell('PostgreSQL is back')
}

async function takenOver(house: House, leaders: Leaders): Promise<void> {
  leaders.first.kill()
  const from = performance.now()
  tell('the leader is killed')
  await leaders.next.logged('"ready"', PATIENCE_MS)
  leaders.takeOvers.push(seconds(from))
  tell(`the stand-by is ready after ${leaders.takeOvers.at(-1)!.toFixed(1)} s`)
  leaders.first = leaders.next
  leaders.next = await kept(house.leader, 'stand-by')
}

/** Workers are killed one at a time, and others started in their place. */
async function killInTurn(house: House, workers: ServiceProcess[], goesOn: () => boolean): Promise<number> {
  for (let kills = 0; ; kills += 1) {
    await pause(uniformIn(whos, ...KILL_EVERY_MS))
    if (!goesOn()) return kills
    for (const one of workers.splice(Math.floor(uniformIn(whos, 0, workers.length)), 1)) one.kill()
    workers.push(await kept(house.worker, '"working"'))
  }
}

/** Started until it runs, as whoever looks after a service does. */
async function kept(start: () => ServiceProcess, logs: string): Promise<ServiceProcess> {
  for (;;) {
    const one = start()
    const runs = await one.logged(logs, PATIENCE_MS).then(
      () => true,
      () => false,
    )
    if (runs) return one
    tell(`started again, since it ended: ${one.said().trim()}`)
    await pause(1_000)
  }
}

interface Left {
  readonly outbox: number
  readonly dues: number
}

async function settled(house: House): Promise<Left> {
  const count = async (sql: string): Promise<number> => Number((await house.query<{ n: string }>(sql))[0]!.n)
  for (let tries = 0; ; tries += 1) {
    const outbox = await count(`SELECT count(*) AS n FROM "Outbox" WHERE "state" <> 'sent'`)
    const dues = await count('SELECT count(*) AS n FROM "Due"')
    if (outbox + dues === 0 || tries === 150) return { outbox, dues }
    await pause(1_000)
  }
}

function judge(house: House, { outbox, dues }: Left, takeOvers: readonly number[]): boolean {
  const faults = faultsIn(house, EACH)
  const { requests, violations } = house.platform
  const messages = requests.filter(({ path }) => /messages$/.test(path))
  const posts = messages.filter(({ method }) => method === 'POST')
  const refused = posts.filter(({ status }) => status === 429).length
  const sent = [...house.got().values()].flat().length
  tell(`sent: ${sent} of ${ALL}; not sent in the outbox: ${outbox}; due rows left: ${dues}`)
  tell(`lost, twice or out of order: ${faults.length} clients ${faults.slice(0, 5).join('; ')}`)
  tell(`posts: ${posts.length}, of them refused for a limit: ${refused}`)
  tell(`looked back: ${messages.length - posts.length} times; violations: ${violations.length}`)
  const isOk = faults.length + outbox + dues + violations.length === 0 && Math.max(...takeOvers) < MOST_S
  tell(isOk ? 'ok: none lost, none twice, order kept' : 'NOT ok')
  return isOk
}

function forget({ platform }: House): NodeJS.Timeout {
  return setInterval(() => {
    const before = Date.now() - FORGOTTEN_MS
    for (const { wire } of platform.world.messages.values())
      if (wire.nonce !== undefined && Date.parse(wire.timestamp) < before) delete wire.nonce
  }, 1_000)
}

const server = ownServer(bin, user)
let ok = false
try {
  const house = await openHouse(server.url, { clients: CLIENTS, perSecond: PER_SECOND })
  ok = await storm(house, server).finally(() => house.close())
} finally {
  server.remove()
}
process.exit(ok ? 0 : 1)
