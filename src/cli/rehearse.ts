import { parseArgs } from 'node:util'
import { rehearse } from '../rehearsal/rehearse.ts'
import { ScenarioProblems } from '../rehearsal/scenario/index.ts'
import type { Io } from './io.ts'
import { unread } from './unread.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb rehearse [SCENARIO] [--no-page]

Plays a scenario (the demo where left out) through the whole program against a stand-in of the chat platform, then
serves a page on this machine in which the practice can be lived on: be a client, be the coach, let days pass, break
things, save what came of it as a scenario. Ends with Ctrl+C. Where standard output is no terminal no page is served.

  --no-page   ends with the play

Exit status: 0 all that the scenario expects came, 1 something did not, 2 wrong use or a scenario that cannot be read.`

interface Options {
  readonly file: string | undefined
  readonly isPlain: boolean
}

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): Options {
  const options = { 'no-page': { type: 'boolean', default: false } } as const
  const { values, positionals } = parseArgs({ args, allowPositionals: true, options })
  const [file, second] = positionals
  if (second !== undefined) throw new Error(`One scenario at a time: leave out “${second}”.`)
  return { file, isPlain: values['no-page'] }
}

export async function run(args: string[], io: Io): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, `\n${help}`)
  if (options === null) return 2
  const { file, isPlain } = options
  try {
    const page = process.stdout.isTTY === true && !isPlain
    return await rehearse(file === undefined ? { page } : { file, page })
  } catch (error) {
    io.err(error instanceof ScenarioProblems ? error.message : unread('scenario', String(file), error))
    return 2
  }
}
