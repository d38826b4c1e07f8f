import { parseArgs } from 'node:util'
import { rehearse } from '../rehearsal/rehearse.ts'
import { ScenarioProblems } from '../rehearsal/scenario/index.ts'
import type { Io } from './io.ts'
import { unread } from './unread.ts'

export const help = `Usage: ebb rehearse [SCENARIO] [--no-page]

Plays a scenario (the demo where left out) through the whole program against a stand-in of the chat platform, then
serves a page on this machine in which the practice can be lived on: be a client, be the coach, let days pass, break
things, save what came of it as a scenario. Ends with Ctrl+C. Where standard output is no terminal no page is served.

  --no-page   ends with the play

Exit status: 0 all that the scenario expects came, 1 something did not, 2 wrong use or a scenario that cannot be read.`

export async function run(args: string[], io: Io): Promise<number> {
  let file: string | undefined
  let isPlain: boolean
  try {
    const options = { 'no-page': { type: 'boolean' } } as const
    const { values, positionals } = parseArgs({ args, allowPositionals: true, options })
    if (positionals.length > 1) throw new Error(`One scenario at a time: leave out “${positionals[1]}”.`)
    file = positionals[0]
    isPlain = values['no-page'] ?? false
  } catch (error) {
    io.err(`${(error as Error).message}\n\n${help}`)
    return 2
  }
  try {
    const page = process.stdout.isTTY === true && !isPlain
    return await rehearse(file === undefined ? { page } : { file, page })
  } catch (error) {
    io.err(error instanceof ScenarioProblems ? error.message : unread('scenario', String(file), error))
    return 2
  }
}
