import { parseArgs } from 'node:util'
import type { Io } from './io.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb start [--no-page]

Runs the bot until it is told to stop, with the token in DISCORD_TOKEN and the other settings of the environment.
Where there is no token it plays the demo on embedded parts and, in a terminal, serves a page to live on in it.

  --no-page   ends with the demo

Exit status: 0 stopped or played, 1 the bot could not start or lost its connection for good, 2 wrong settings.`

export async function run(args: string[], io: Io): Promise<number> {
  const read = () => parseArgs({ args, options: { 'no-page': { type: 'boolean' } } })
  if (!orWrongUse(read, io, help)) return 2
  // runs to its end as it is loaded, and reads --no-page for itself
  await import('../main.ts')
  return Number(process.exitCode ?? 0)
}
