import { pino } from 'pino'
import { ChatProblem } from './chat/client.ts'
import { readSettings, type Settings, SettingsError } from './config.ts'
import { startTicker } from './schedule/ticker.ts'
import { startService } from './service.ts'
import { StoreProblem } from './store/problem.ts'

/** An error of the operator is said in one sentence with the mend; anything else is a fault of ours. */
const isOperators = (error: unknown): error is Error =>
  error instanceof SettingsError || error instanceof StoreProblem || error instanceof ChatProblem

async function main(): Promise<number> {
  const settings = readSettings(process.env)
  if (settings.token === null) {
    const { rehearse } = await import('./rehearsal/rehearse.ts')
    return rehearse()
  }
  return serve(settings, settings.token)
}

/** Runs until it is told to stop, or the platform closes the connection for good. */
async function serve(settings: Settings, token: string): Promise<number> {
  const log = pino({ level: settings.logLevel, base: null })
  let end: (code: number) => void = () => {}
  const ended = new Promise<number>((resolve) => {
    end = resolve
  })
  const service = await startService({
    databaseUrl: settings.databaseUrl,
    token,
    api: settings.api,
    now: () => new Date(),
    log,
    lost: (problem) => {
      process.stderr.write(`${problem.message}\n`)
      end(1)
    },
  })
  const ticker = startTicker(() => service.bot.tick(), log)
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => end(0))
  log.info('ready')
  const code = await ended
  await ticker.stop()
  await service.stop()
  log.info('stopped')
  return code
}

try {
  process.exitCode = await main()
} catch (error) {
  if (!isOperators(error)) throw error
  process.stderr.write(`${error.message}\n`)
  process.exitCode = error instanceof SettingsError ? 2 : 1
}
