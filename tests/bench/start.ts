import { type Bench, figureOf, type Measured } from './measure.ts'
import { runBeside, runBot } from './process.ts'
import { openStandIn } from './stand-in.ts'
import { town } from './town.ts'

const CLIENTS = 10_000
/** Rounds that count: each starts two processes. */
const ROUNDS = 5
const TIMES = 2
const MORE_S = 1

async function run(): Promise<Measured> {
  const { path, ...ids } = await town({ clients: CLIENTS, days: 1 })
  const standIn = await openStandIn(ids)
  const { apiUrl, token } = standIn.platform
  const times = { bot: [] as number[], bare: [] as number[] }
  try {
    // the first of each reads everything from the disk
    for (let round = 0; round <= ROUNDS; round += 1) {
      const bare = runBeside('tests/bench/bare-client.ts', { DISCORD_API: apiUrl, DISCORD_TOKEN: token })
      const alone = (await bare.said('ready')) / 1000
      await bare.stop()
      const bot = runBot(path, standIn.platform)
      const whole = (await bot.said('"ready"')) / 1000
      await bot.stop()
      if (round === 0) continue
      times.bare.push(alone)
      times.bot.push(whole)
    }
  } finally {
    await standIn.platform.stop()
  }
  const allowed = figureOf(times.bot.map((s, round) => s / (TIMES * times.bare[round]! + MORE_S)))
  const unit = `s, ${ROUNDS} rounds`
  return {
    figures: {
      'the bot, from cold to ready': { ...figureOf(times.bot), unit },
      'discord.js alone': { ...figureOf(times.bare), unit },
    },
    ratios: {
      [`the bot / (${TIMES} x discord.js + ${MORE_S} s)`]: {
        ...allowed,
        goal: '<= 1',
        met: allowed.median <= 1,
      },
    },
  }
}

export const start: Bench = {
  id: 'start',
  what: 'a cold start to ready with 10,000 clients in 250 servers, beside a client of discord.js alone',
  run,
}
