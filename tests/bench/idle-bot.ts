import pino from 'pino'
import { startTicker } from '../../src/schedule/ticker.ts'
import { startService } from '../../src/service.ts'
import { tellHeap } from './tell-heap.ts'

/** The bot as `npm start` runs it, but for the pace at which it looks through what was written before its start. */
const log = pino({ level: 'silent' })
const { bot } = await startService({
  databaseUrl: process.env.DATABASE_URL!,
  token: process.env.DISCORD_TOKEN!,
  api: process.env.DISCORD_API!,
  perSecond: 10_000,
  now: () => new Date(),
  log,
})
startTicker(bot.tick, log, bot.tickBeside)
tellHeap()
console.log('ready')
