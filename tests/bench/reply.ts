import { copyFileSync } from 'node:fs'
import { setTimeout as pause } from 'node:timers/promises'
import SqliteDatabase from 'better-sqlite3'
import type { Person } from '../../src/rehearsal/platform/index.ts'
import { PRAGMAS } from '../../src/store/sqlite.ts'
import { type Bench, figureOf, type Measured, once, rank } from './measure.ts'
import { runBeside, runBot } from './process.ts'
import { openStandIn, type StandIn } from './stand-in.ts'
import { town } from './town.ts'

const CLIENTS = 400
const DAYS = 28
const TOGETHER = 50
/** Replies before those that count, one after another, then at once. */
const WARM_UP = 60
const ALONE = 100
const TURNS = 4
const GOAL = 4
const GOAL_S = 1
const WORDS = '2 knee 4'

/** Milliseconds from what somebody says to the receipt on the platform, through gateway, bot, disk and HTTP. */
async function answered({ next }: StandIn, person: Person): Promise<number> {
  const receipt = next(person)
  const begun = performance.now()
  person.say(WORDS)
  return (await receipt) - begun
}

/** The rows that one reply and its receipt leave, written bare, each time for another client. */
function bareReplies(path: string, clients: number): number[] {
  const copy = `${path}-bare`
  copyFileSync(path, copy)
  const db = new SqliteDatabase(copy)
  db.exec(PRAGMAS)
  const tables = ['CheckIn', 'Version', 'Inbound', 'Outbox'].map((table) => {
    const latest = db.prepare(`SELECT * FROM "${table}" WHERE "clientId" = ? ORDER BY rowid DESC LIMIT 1`)
    const columns = (db.pragma(`table_info("${table}")`) as { name: string }[]).map(({ name }) => name)
    const names = columns.map((name) => `"${name}"`).join(', ')
    const marks = columns.map(() => '?').join(', ')
    return { latest, columns, put: db.prepare(`INSERT INTO "${table}" (${names}) VALUES (${marks})`) }
  })
  const ids = db.prepare('SELECT "id" FROM "Client" ORDER BY "id" LIMIT ?').pluck().all(clients) as string[]
  const all = ids.map((id) =>
    tables.map(({ latest, columns, put }) => {
      const row = latest.get(id) as Record<string, unknown>
      // as if of the next day: another id, key and date
      const fresh = { ...row, id: `${row.id}+`, key: `${row.key}+`, day: `${row.day}+` } as typeof row
      return () => put.run(...columns.map((name) => fresh[name]))
    }),
  )
  const write = db.transaction((puts: readonly (() => unknown)[]) => {
    for (const put of puts) put()
  })
  const times = all.map((puts) => {
    const begun = performance.now()
    write(puts)
    return performance.now() - begun
  })
  db.close()
  return times
}

/** The same people answered by discord.js alone, which reads nothing and writes nothing. */
async function bareAnswers(standIn: StandIn, people: readonly Person[]): Promise<number[]> {
  const { apiUrl, token } = standIn.platform
  const bare = runBeside('tests/bench/bare-client.ts', { DISCORD_API: apiUrl, DISCORD_TOKEN: token })
  try {
    await bare.said('ready')
    const times: number[] = []
    for (const person of people) times.push(await answered(standIn, person))
    return times.slice(WARM_UP)
  } finally {
    await bare.stop()
  }
}

async function run(): Promise<Measured> {
  const { path, ...ids } = await town({ clients: CLIENTS, days: DAYS })
  const standIn = await openStandIn(ids)
  const bot = runBot(path, standIn.platform)
  try {
    await bot.said('ready')
    // what it looks through after its start uses the second's requests up
    await standIn.quiet()
    const people = [...standIn.people]
    for (const person of people.splice(0, WARM_UP)) await answered(standIn, person)
    const busy = bot.processor()
    const alone: number[] = []
    for (const person of people.splice(0, ALONE)) alone.push(await answered(standIn, person))
    const processor = ((bot.processor() - busy) / ALONE) * 1000
    const together: number[] = []
    for (let turn = 0; turn < TURNS; turn += 1) {
      // each turn uses up the requests of a second
      await pause(1_000)
      const some = people.splice(0, TOGETHER)
      together.push(...(await Promise.all(some.map((person) => answered(standIn, person)))))
    }
    await bot.stop()
    const bare = bareReplies(path, WARM_UP + ALONE).slice(WARM_UP)
    const echo = await bareAnswers(standIn, standIn.people.slice(0, WARM_UP + ALONE))
    const ratio = rank(alone, 0.5) / rank(bare, 0.5)
    const both = rank(alone, 0.5) / (rank(bare, 0.5) + rank(echo, 0.5))
    const p99 = rank(together, 0.99) / 1000
    return {
      figures: {
        'one at a time': { ...figureOf(alone), unit: 'ms' },
        'one at a time, p99': { ...once(rank(alone, 0.99)), unit: 'ms' },
        'of it the bot’s processor': { ...once(processor), unit: 'ms a reply, what comes after it too' },
        '50 at once': { ...figureOf(together), unit: 'ms' },
        '50 at once, p99': { ...once(p99 * 1000), unit: 'ms' },
        'discord.js alone, no disk': { ...figureOf(echo), unit: 'ms' },
        'bare transaction': { ...figureOf(bare), unit: 'ms' },
        'bare transaction, p99': { ...once(rank(bare, 0.99)), unit: 'ms' },
      },
      ratios: {
        'p50 / bare p50': { ...once(ratio), goal: `<= ${GOAL}`, met: ratio <= GOAL },
        'p50 / (bare transaction + discord.js alone)': {
          ...once(both),
          goal: `<= ${GOAL}`,
          met: both <= GOAL,
        },
        'p99 of 50 at once / 1 s': { ...once(p99 / GOAL_S), goal: '< 1', met: p99 < GOAL_S },
      },
    }
  } finally {
    await bot.stop()
    await standIn.platform.stop()
  }
}

export const reply: Bench = {
  id: 'reply',
  what: 'reply in to receipt out, whole stack on SQLite with fsync, beside a bare transaction writing the same rows',
  run,
}
