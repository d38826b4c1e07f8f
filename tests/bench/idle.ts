import { setTimeout as pause } from 'node:timers/promises'
import { type Bench, type Measured, once } from './measure.ts'
import { type Beside, runBeside } from './process.ts'
import { openStandIn } from './stand-in.ts'
import { MANY, MANY_TOWN } from './tick.ts'
import { A_PRACTICE, town } from './town.ts'

/** Of the start and of a minute after it, in which the chat client clears up, nothing is counted. */
const AFTER_START_MS = 65_000
/** Six ticks. */
const LOOK_S = 30
/** Timers that have just been made are still being cleared up after. */
const SETTLED_MS = 5_000
const GOAL = 1 / 5
/** One that does little must not cost more with the number of clients than a machine notices. */
const FLAT = 2

interface Idle {
  /** MB in all, with garbage that nothing has given a reason to collect. */
  readonly memory: number
  /** MB in use after a collection. */
  readonly heap: number
  /** Milliseconds of processor time a second. */
  readonly processor: number
}

async function look(process: Beside): Promise<Idle> {
  const before = process.processor()
  await pause(LOOK_S * 1000)
  const processor = ((process.processor() - before) * 1000) / LOOK_S
  const memory = process.memory()
  return { memory, heap: await process.heap(), processor }
}

async function idleBot(clients: number): Promise<Idle> {
  const { path, ...ids } = await town({ ...MANY_TOWN, clients })
  const { platform, quiet } = await openStandIn(ids)
  const bot = runBeside('tests/bench/idle-bot.ts', {
    ...{ DATABASE_URL: `file:${path}`, DISCORD_TOKEN: platform.token, DISCORD_API: platform.apiUrl },
  })
  try {
    await bot.said('ready')
    await quiet()
    await pause(AFTER_START_MS)
    return await look(bot)
  } finally {
    await bot.stop()
    await platform.stop()
  }
}

async function idleCron(clients: number): Promise<Idle> {
  const timers = runBeside('tests/bench/idle-cron.ts', { CLIENTS: String(clients) })
  try {
    await timers.said('ready')
    await pause(SETTLED_MS)
    return await look(timers)
  } finally {
    await timers.stop()
  }
}

async function run(): Promise<Measured> {
  const [few, many] = [await idleBot(A_PRACTICE), await idleBot(MANY)]
  const [fewTimers, manyTimers] = [await idleCron(A_PRACTICE), await idleCron(MANY)]
  const memory = (many.heap - few.heap) / (manyTimers.heap - fewTimers.heap)
  const flat = many.processor / few.processor
  const figures = {
    'the bot': many,
    'the bot with 40 clients': few,
    timers: manyTimers,
    '40 timers': fewTimers,
  }
  return {
    figures: Object.fromEntries(
      Object.entries(figures).flatMap(([name, idle]) => [
        [`${name}, memory`, { ...once(idle.memory), unit: 'MB, one round' }],
        [`${name}, in use`, { ...once(idle.heap), unit: 'MB' }],
        [`${name}, processor`, { ...once(idle.processor), unit: 'ms a second' }],
      ]),
    ),
    ratios: {
      'in use for the clients / for their timers': {
        ...once(memory),
        goal: `<= ${GOAL}`,
        met: memory <= GOAL,
      },
      'memory in all / in all': {
        ...once(many.memory / manyTimers.memory),
        goal: 'below 1',
        met: many.memory < manyTimers.memory,
      },
      'processor, 100,000 / 40 clients': { ...once(flat), goal: `<= ${FLAT}`, met: flat <= FLAT },
    },
  }
}

export const idle: Bench = {
  id: 'idle',
  what: '100,000 clients in 38 zones and nothing to do, beside a node-cron task for each',
  run,
}
