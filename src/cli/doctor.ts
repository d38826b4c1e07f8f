import { parseArgs } from 'node:util'
import { leave } from '../chat/leave.ts'
import { readSettings, type Settings } from '../config.ts'
import { readSeal } from '../keys.ts'
import type { Seal } from '../seal.ts'
import { doctor as texts } from '../text/en/doctor.ts'
import { databaseLines } from './doctor/database.ts'
import { hostLines } from './doctor/host.ts'
import { type Line, notChecked, shown } from './doctor/line.ts'
import { liveLines } from './doctor/live.ts'
import { type PlatformFound, platformLines, unasked } from './doctor/platform.ts'
import { practiceLines } from './doctor/practices.ts'
import type { Io } from './io.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb doctor [--live] [--database URL]
Checks what the bot needs, a line each: "ok", "not ok" with the mend, or "not checked" with what comes first. Looks at
the token, the clock, intents, channels and their privacy, the platform's policy, the emergency numbers, the database,
zone data, own ladders and Node.js, as DISCORD_TOKEN, DISCORD_API, DATABASE_URL and EBBLINE_LADDERS name them. It may
run beside the bot. Changes nothing, and names neither clients nor the token.
--live           only whether the bot works at this moment: for a watchdog
--database URL   file:PATH or postgresql://…; else DATABASE_URL, else file:data/ebbline.db
Exit status: 0 all ok, 1 something is not ok or could not be checked, 2 wrong use.`

interface Options {
  readonly live: boolean
  readonly database: string | undefined
}

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): Options {
  const { values } = parseArgs({
    args,
    options: { database: { type: 'string' }, live: { type: 'boolean', default: false } },
  })
  return { live: values.live, database: values.database }
}

/** @throws SettingsError */
function settingsOf(environment: NodeJS.ProcessEnv, database: string | undefined) {
  const settings = readSettings(
    database === undefined ? environment : { ...environment, DATABASE_URL: database },
  )
  return { settings, seal: readSeal(settings) }
}

export async function run(
  args: string[],
  io: Io,
  environment: NodeJS.ProcessEnv = process.env,
  now: () => Date = () => new Date(),
): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, help)
  if (options === null) return 2
  const read = orWrongUse(() => settingsOf(environment, options.database), io, null)
  if (read === null) return 2
  const { settings, seal } = read
  const lines = options.live
    ? await liveLines(settings.databaseUrl, now())
    : await checked(settings, seal, now)
  for (const line of lines) await io.out(shown(line))
  return lines.every(({ state }) => state === 'ok') ? 0 : 1
}

async function checked(
  { token, api, databaseUrl, ladders, backupDays }: Settings,
  seal: Seal | null,
  now: () => Date,
): Promise<Line[]> {
  const platform = token === null ? withoutToken : await platformLines(token, api, now)
  try {
    const database = await databaseLines(databaseUrl, { backupDays, seal }, now())
    const why = token === null ? texts.setToken : texts.needsToken
    return [
      ...platform.lines,
      ...database.lines,
      ...(database.practices
        ? practiceLines(database.practices, platform.client, why)
        : [notChecked('practices', texts.needsDatabase)]),
      ...hostLines(process.versions.node, ladders),
    ]
  } finally {
    if (platform.client) await leave(platform.client)
  }
}

const withoutToken: PlatformFound = {
  lines: [notChecked('token', texts.setToken), ...unasked(texts.setToken)],
  client: null,
}
