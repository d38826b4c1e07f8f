import type { Server } from 'node:http'
import { type Logger, pino } from 'pino'
import { within } from './chat/in-flight.ts'
import { endOnFault } from './chat/safe-error.ts'
import { isOperators, readSettings, type Settings, SettingsError } from './config.ts'
import type { OwnLadder } from './domain/ladder/ladder-file.ts'
import { serveHealth } from './health.ts'
import { createHeart, type Heart } from './heartbeat.ts'
import { readSeal } from './keys.ts'
import { readOwnLadders } from './own-ladders.ts'
import { startTicker } from './schedule/ticker.ts'
import type { Seal } from './seal.ts'

// A keeper's tools wait so long for a stop before they kill.
const STOP_MS = 4_800

async function main(): Promise<number> {
  const settings = readSettings(process.env)
  const ladders = readOwnLadders(settings.ladders)
  const seal = readSeal(settings)
  if (settings.token === null) {
    const { rehearse } = await import('./rehearsal/rehearse.ts')
    const page = process.stdout.isTTY === true && !process.argv.includes('--no-page')
    return rehearse({ page })
  }
  return serve(settings, settings.token, { ladders, seal })
}

/** Runs until it is told to stop, or the platform closes the connection for good. */
async function serve(
  settings: Settings,
  token: string,
  { ladders, seal }: { ladders: readonly OwnLadder[]; seal: Seal | null },
): Promise<number> {
  const log = pino({ level: settings.logLevel, base: null })
  let end: (code: number) => void = () => {}
  const ended = new Promise<number>((resolve) => {
    end = resolve
  })
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => end(0))
  const { startPatiently } = await import('./start.ts')
  const starting = startPatiently({
    databaseUrl: settings.databaseUrl,
    token,
    api: settings.api,
    ladders,
    backupDays: settings.backupDays,
    perSecond: settings.perSecond,
    spoolFolder: settings.spoolFolder,
    seal,
    now: () => new Date(),
    log,
    tell: ({ message }) => void process.stderr.write(`${message}\n`),
    lost: (problem) => {
      process.stderr.write(`${problem.message}\n`)
      end(1)
    },
  })
  const service = await Promise.race([starting, ended.then(() => null)])
  if (!service) return leave(0, log)
  const heart = createHeart({ ...service.store, now: () => new Date() })
  // told before the first tick takes what has come due
  await heart.awake()
  const health = settings.healthPort === null ? null : await openHealth(settings.healthPort, heart)
  const beating = (tick: () => Promise<void>) => async (): Promise<void> => {
    await tick()
    await heart.beat()
  }
  const ticker = startTicker(beating(service.bot.tick), log, beating(service.bot.tickBeside))
  log.info('ready')
  const code = await ended
  await ticker.stop()
  health?.close()
  await within(service.stop(), STOP_MS, undefined)
  return leave(code, log)
}

async function openHealth(port: number, heart: Heart): Promise<Server> {
  try {
    return await serveHealth(port, heart)
  } catch {
    throw new SettingsError(`Port ${port} of EBBLINE_HEALTH_PORT is taken: name another, or leave it out.`)
  }
}

/** Ends at once: what is still under way is in the database, and is taken up at the next start. */
function leave(code: number, log: Logger): never {
  log.info('stopped')
  process.exit(code)
}

endOnFault()
try {
  process.exitCode = await main()
} catch (error) {
  if (!isOperators(error)) throw error
  process.stderr.write(`${error.message}\n`)
  process.exitCode = error instanceof SettingsError ? 2 : 1
}
