import { mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { daysBetween, isDay } from '../domain/day.ts'
import { PlayRefused, type PlayResult, playScenario } from '../rehearsal/player/index.ts'
import { loadScenario, ScenarioProblems, type Script } from '../rehearsal/scenario/index.ts'
import { told } from '../rehearsal/told.ts'
import { StoreProblem } from '../store/problem.ts'
import type { Io } from './io.ts'
import { unread } from './unread.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb play SCENARIO [--json] [--until DAY] [--database URL] [--direct] [--out DIR]

Plays a scenario (YAML) through the whole program under a virtual clock and checks what it expects.

  --json          one JSON object a message delivered, and a closing one; else a transcript by day
  --until DAY     stops after this day: a number, 1 for the first, or a date
  --database URL  file:PATH or postgresql://…; a new temporary SQLite file where left out
  --direct        without chat client and stand-in, for speed
  --out DIR       where pictures and files go; a new folder where left out

Exit status: 0 all that is expected came, 1 something did not, 2 wrong use or a scenario that cannot be read.`

interface Options {
  readonly file: string
  readonly json: boolean
  readonly direct: boolean
  readonly until: string | null
  readonly database: string | null
  readonly out: string | null
}

export async function run(args: string[], io: Io): Promise<number> {
  const options = orWrongUse(() => optionsOf(args), io, `\n${help}`)
  if (options === null) return 2
  const script = load(options, io)
  if (typeof script === 'number') return script
  try {
    return await playIt(script, options, io)
  } catch (error) {
    if (error instanceof StoreProblem || error instanceof PlayRefused) return refuse(io, error.message)
    throw error
  }
}

function refuse(io: Io, why: string): number {
  io.err(why)
  return 2
}

/** @throws Error in one sentence where the words typed cannot be used */
function optionsOf(args: string[]): Options {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      json: { type: 'boolean', default: false },
      direct: { type: 'boolean', default: false },
      until: { type: 'string' },
      database: { type: 'string' },
      out: { type: 'string' },
    },
  })
  const [file, second] = positionals
  if (file === undefined) throw new Error('Name a scenario file, like scenarios/demo.yaml.')
  if (second !== undefined) throw new Error(`One scenario at a time: leave out “${second}”.`)
  const { json, direct, until = null, database = null, out = null } = values
  return { file, json, direct, until, database, out }
}

function load({ file, until, direct }: Options, io: Io): Script | number {
  let script: Script
  try {
    script = loadScenario(file, readFileSync(file, 'utf8'))
  } catch (error) {
    if (error instanceof ScenarioProblems) return refuse(io, error.message)
    return refuse(io, unread('scenario', file, error))
  }
  const chat = script.steps.find(({ act }) => act.who === 'world' && act.fault.kind === 'chat')
  if (direct && chat)
    return refuse(io, `${file}:${chat.line}: a fault of the chat needs the stand-in: leave out --direct.`)
  if (until === null) return script
  const last = isDay(until) ? daysBetween(script.start, until) + 1 : Number(until)
  if (Number.isInteger(last) && last >= 1 && last <= script.days) return upTo(script, last)
  return refuse(io, `--until ${until} lies outside the run: a day from 1 to ${script.days}, or its date.`)
}

/** The scenario as if it ended sooner; what is expected later, or at the end, is not looked at. */
function upTo(script: Script, days: number): Script {
  if (days === script.days) return script
  const soon = script.expectations.filter((one) => one.of === 'messages' && one.days && one.days[1] <= days)
  return { ...script, days, steps: script.steps.filter((step) => step.day <= days), expectations: soon }
}

async function playIt(script: Script, options: Options, io: Io): Promise<number> {
  const folder = options.out ?? mkdtempSync(join(tmpdir(), 'ebbline-pictures-'))
  const database = options.database ?? `file:${join(mkdtempSync(join(tmpdir(), 'ebbline-play-')), 'play.db')}`
  io.err(`Pictures: ${folder}`)
  const result = await playScenario({ script, database, folder, direct: options.direct })
  if (options.json) printJson(result, io)
  else for (const line of told(script, result)) io.out(line)
  for (const failed of result.checks.failed) io.err(failed)
  return result.checks.failed.length > 0 ? 1 : 0
}

function printJson({ messages, clients, checks }: PlayResult, io: Io): void {
  for (const message of messages) io.out(JSON.stringify(message))
  io.out(JSON.stringify({ end: true, clients, checks }))
}
