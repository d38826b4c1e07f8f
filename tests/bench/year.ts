import { copyFileSync, statSync } from 'node:fs'
import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import { commands } from '../../commands/index.ts'
import { createEngine } from '../../src/engine/engine.ts'
import { readAddress } from '../../src/store/address.ts'
import { move } from '../../src/store/move.ts'
import { type OpenStore, openStore } from '../../src/store/open.ts'
import { textsFor } from '../../src/text/index.ts'
import { type Bench, type Figure, figureOf, type Measured, once, over, processorTimeOf } from './measure.ts'
import { sharedTown, type Town, town } from './town.ts'

const CLIENTS = 1_000
const YEAR = 365
/** Copied to PostgreSQL row by row, so fewer; what an index adds with size is a few bytes. */
const MOVED_CLIENTS = 20
const TIMES = { tick: 40, reply: 4 } as const
const TICK_GOAL = 1.25

/** Milliseconds of processor time of one piece of work. */
interface Costs {
  readonly tick: number[]
  readonly reply: number[]
}

/** What stands in the way of a tick where nothing is due: the questions that it asks. */
async function ticks({ dues, outbox }: OpenStore): Promise<void> {
  const before = new Date(0)
  for (let time = 0; time < TIMES.tick; time += 1) {
    await dues.dueBy(before, 100)
    await outbox.claim(before, 100, 9)
    await dues.nextDue()
    await outbox.nextDue()
  }
}

function repliesOf({ store }: OpenStore, { people }: Town): () => Promise<void> {
  const engine = createEngine({ store, commands, textsFor })
  let n = 0
  return async () => {
    for (let time = 0; time < TIMES.reply; time += 1, n += 1) {
      const [user] = people[(n * 7) % people.length]!
      const now = new Date()
      const actor = { user, guild: null, roles: [], keeper: false }
      const event = { actor, at: now, edits: null, attached: 'none', kind: 'words' } as const
      await engine.handle({ ...event, id: `year-${n}`, text: '2 knee 4' }, now)
    }
  }
}

/** Both towns in turn, round after round, so that a busy machine hits them alike. */
async function costsOf(towns: readonly Town[], rounds: number): Promise<Costs[]> {
  const stores = await Promise.all(towns.map(({ path }) => openStore(`file:${path}`)))
  try {
    const replies = stores.map((store, at) => repliesOf(store, towns[at]!))
    const costs = stores.map((): Costs => ({ tick: [], reply: [] }))
    for (let round = -3; round < rounds; round += 1)
      for (const [at, store] of stores.entries()) {
        const tick = (await processorTimeOf(() => ticks(store))) / TIMES.tick
        const reply = (await processorTimeOf(replies[at]!)) / TIMES.reply
        if (round < 0) continue
        costs[at]!.tick.push(tick)
        costs[at]!.reply.push(reply)
      }
    return costs
  } finally {
    for (const store of stores) await store.close()
  }
}

/** Bytes that a day of a client takes, of which the most by table. */
function sizeOf(path: string, days: number): { perDay: number; tables: string } {
  const db = new SqliteDatabase(path, { readonly: true })
  const rows = db
    .prepare(`SELECT name, sum(pgsize) AS bytes FROM dbstat GROUP BY name ORDER BY bytes DESC LIMIT 8`)
    .all() as { name: string; bytes: number }[]
  db.close()
  const tables = rows.map(({ name, bytes }) => `${name} ${Math.round(bytes / days)}`).join(', ')
  return { perDay: statSync(path).size / days, tables }
}

/** The same on a server, where the tests have one; null: not measured. */
async function onServer(server: string | undefined): Promise<{ perDay: Figure; rate: Figure } | null> {
  if (!server) {
    console.log('  PostgreSQL not measured: EBBLINE_TEST_POSTGRES names no server')
    return null
  }
  const { path } = await sharedTown({ clients: MOVED_CLIENTS, days: YEAR })
  const admin = new pg.Client({ connectionString: server })
  await admin.connect()
  const name = `ebbline_year_${process.pid}`
  await admin.query(`CREATE DATABASE "${name}"`)
  try {
    const size = async (): Promise<number> =>
      Number((await admin.query('SELECT pg_database_size($1) AS n', [name])).rows[0].n)
    const url = new URL(server)
    url.pathname = `/${name}`
    const empty = await size()
    const copy = `${path}.moved`
    copyFileSync(path, copy)
    const begun = performance.now()
    const { tables } = await move(readAddress(`file:${copy}`), readAddress(url.href), {
      folder: `${path}-files`,
      nothingWaits: () => undefined,
      progress: () => undefined,
      stopped: () => false,
    })
    const rows = tables.reduce((all, table) => all + table.rows, 0)
    const rate = once((rows * 1000) / (performance.now() - begun))
    return { perDay: once(((await size()) - empty) / (MOVED_CLIENTS * YEAR)), rate }
  } finally {
    await admin.query(`DROP DATABASE "${name}" WITH (FORCE)`)
    await admin.end()
  }
}

async function run(rounds: number): Promise<Measured> {
  const [first, year] = [
    await town({ clients: CLIENTS, days: 1 }),
    await town({ clients: CLIENTS, days: YEAR }),
  ]
  const { perDay, tables } = sizeOf(year.path, CLIENTS * YEAR)
  console.log(`  bytes of a client-day by table and index: ${tables}`)
  const served = await onServer(process.env.EBBLINE_TEST_POSTGRES)
  const [young, old] = await costsOf([first, year], rounds)
  const slower = over(old!.tick, young!.tick)
  const unit = 'ms of processor'
  return {
    figures: {
      'a client-day on SQLite': { ...once(perDay), unit: 'bytes' },
      ...(served ? { 'a client-day on PostgreSQL': { ...served.perDay, unit: 'bytes' } } : {}),
      ...(served ? { 'rows moved to PostgreSQL, compared': { ...served.rate, unit: 'a second' } } : {}),
      'a tick after a day': { ...figureOf(young!.tick), unit },
      'a tick after a year': { ...figureOf(old!.tick), unit },
      'a reply after a day': { ...figureOf(young!.reply), unit },
      'a reply after a year': { ...figureOf(old!.reply), unit },
    },
    ratios: {
      'tick, a year / a day': { ...slower, goal: `<= ${TICK_GOAL}`, met: slower.median <= TICK_GOAL },
    },
  }
}

export const year: Bench = {
  id: 'year',
  what: `a year of ${CLIENTS} clients: what it takes on the disk, and what a tick and a reply cost then`,
  run,
}
