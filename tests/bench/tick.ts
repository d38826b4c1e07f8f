import SqliteDatabase from 'better-sqlite3'
import { openStore } from '../../src/store/open.ts'
import { type Bench, figureOf, type Measured, over, processorTime, processorTimeOf } from './measure.ts'
import { sharedTown, ZONES } from './town.ts'

export const MANY = 100_000
/** Everybody's second day: the longer their history, the longer only the filling takes. */
export const MANY_TOWN = { clients: MANY, days: 1, zones: ZONES } as const
const TIMES = 200
const GOAL = 50
/** What a tick asks, as the store's client writes it; a hundred rows at a time. */
const dueBy = (table: string): string =>
  `SELECT "id", "practiceId", "clientId", "kind", "at", "data" FROM ${table} WHERE "at" <= ? ORDER BY "at" ASC, "id" ASC LIMIT 100`

/** The instant at which the first of all is due: that of the clients of one zone. */
const firstDue = (db: SqliteDatabase.Database): string =>
  db.prepare('SELECT min("at") FROM "Due"').pluck().get() as string

async function run(rounds: number): Promise<Measured> {
  const { path } = await sharedTown(MANY_TOWN)
  const db = new SqliteDatabase(path, { readonly: true })
  const opened = await openStore(`file:${path}`)
  try {
    const at = firstDue(db)
    const before = new Date(Date.parse(at) - 1)
    const [indexed, full] = [db.prepare(dueBy('"Due"')), db.prepare(dueBy('"Due" NOT INDEXED'))]
    for (const [name, table] of Object.entries({ indexed: '"Due"', full: '"Due" NOT INDEXED' }))
      console.log(`  plan, ${name}: ${planOf(db, dueBy(table))}`)
    const times = {
      idle: [] as number[],
      indexed: [] as number[],
      full: [] as number[],
      store: [] as number[],
    }
    const each = (ms: number): number => (ms * 1000) / TIMES
    for (let round = -2; round < rounds; round += 1) {
      const found = {
        idle: each(processorTime(() => repeat(() => indexed.all(iso(before))))),
        indexed: each(processorTime(() => repeat(() => indexed.all(at)))),
        full: processorTime(() => full.all(at)) * 1000,
        store: each(await processorTimeOf(() => repeatWaiting(() => opened.dues.dueBy(before, 100)))),
      }
      if (round < 0) continue
      for (const name of Object.keys(times) as (keyof typeof times)[]) times[name].push(found[name])
    }
    const unit = 'us of processor'
    const faster = over(times.full, times.indexed)
    const fasterIdle = over(times.full, times.idle)
    return {
      figures: {
        'a hundred due, by the index': { ...figureOf(times.indexed), unit },
        'nothing due, by the index': { ...figureOf(times.idle), unit },
        'nothing due, through the store': { ...figureOf(times.store), unit },
        'by a full scan': { ...figureOf(times.full), unit },
      },
      ratios: {
        'full scan / index, a hundred due': { ...faster, goal: `>= ${GOAL}`, met: faster.median >= GOAL },
        'full scan / index, nothing due': {
          ...fasterIdle,
          goal: `>= ${GOAL}`,
          met: fasterIdle.median >= GOAL,
        },
      },
    }
  } finally {
    await opened.close()
    db.close()
  }
}

const iso = (date: Date): string => date.toISOString().replace('Z', '+00:00')

const repeat = (work: () => unknown): void => {
  for (let time = 0; time < TIMES; time += 1) work()
}
async function repeatWaiting(work: () => Promise<unknown>): Promise<void> {
  for (let time = 0; time < TIMES; time += 1) await work()
}

function planOf(db: SqliteDatabase.Database, sql: string): string {
  const steps = db.prepare(`EXPLAIN QUERY PLAN ${sql}`).all('') as { detail: string }[]
  return steps.map(({ detail }) => detail).join('; ')
}

export const tick: Bench = {
  id: 'tick',
  what: 'finding what is due among 100,000 clients, by the index and by reading every row',
  run,
}
