import { type Logger, pino } from 'pino'
import { within } from './chat/in-flight.ts'
import { isOperators, readSettings, type Settings, SettingsError } from './config.ts'
import type { OwnLadder } from './domain/ladder/ladder-file.ts'
import { serveHealth } from './health.ts'
import { createHeart, type Heart } from './heartbeat.ts'
import { readSeal } from './keys.ts'
import { readOwnLadders } from './own-ladders.ts'
import { endOnFault } from './safe-error.ts'
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
  let heart: Heart | null = null
  // before anything else: where the port cannot be had, nothing has begun that would go on without its end
  const health = settings.healthPort === null ? null : await serveHealth(settings.healthPort, () => heart)
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
  const service = await Promise.race([starting, ended])
  if (typeof service === 'number') return leave(service, log)
  const beats = createHeart({ ...service.store, now: () => new Date() })
  heart = beats
  // told before the first tick takes what has come due
  await beats.awake()
  const beating = (tick: () => Promise<void>) => async (): Promise<void> => {
    await tick()
    await beats.beat()
  }
  const ticker = startTicker(beating(service.bot.tick), log, beating(service.bot.tickBeside))
  log.info('ready')
  const code = await ended
  await ticker.stop()
  health?.close()
  await within(service.stop(), STOP_MS, undefined)
  return leave(code, log)
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
  // not only the code: what has begun by then must not go on without its end
  process.exit(error instanceof SettingsError ? 2 : 1)
}
