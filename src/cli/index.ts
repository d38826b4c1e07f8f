#!/usr/bin/env node
import { once } from 'node:events'
import { endOnFault } from '../safe-error.ts'
import type { Io } from './io.ts'

interface Verb {
  readonly about: string
  load(): Promise<{ run(args: string[], io: Io): Promise<number>; help: string }>
}

/** Loaded only when asked for: `parse` must not wait for the chat client. */
const VERBS: Readonly<Record<string, Verb>> = {
  parse: { about: 'read replies, JSON Lines in and out', load: () => import('./parse.ts') },
  screen: {
    about: 'screen texts for urgent signs, JSON Lines in and out',
    load: () => import('./screen.ts'),
  },
  assess: { about: 'run the rules over one client’s diary', load: () => import('./assess.ts') },
  replay: { about: 'play a diary day by day, as if it came in live', load: () => import('./replay.ts') },
  reread: {
    about: 'what today’s reader would read differently of a client',
    load: () => import('./reread.ts'),
  },
  report: { about: 'the one-page report for a clinician, as PDF or PNG', load: () => import('./report.ts') },
  export: { about: 'everything kept of a client, as JSON, CSV or FHIR', load: () => import('./export.ts') },
  erase: { about: 'erase every row about a client, with the counts', load: () => import('./erase.ts') },
  backup: { about: 'copy the database while the bot runs', load: () => import('./backup.ts') },
  restore: { about: 'put a backup in the place of the database', load: () => import('./restore.ts') },
  move: { about: 'SQLite to PostgreSQL or back, compared', load: () => import('./move.ts') },
  work: { about: 'send beside the bot, on PostgreSQL', load: () => import('./work.ts') },
  rekey: { about: 'seal what people wrote with the first key', load: () => import('./rekey.ts') },
  import: { about: 'take a past diary from CSV into a record', load: () => import('./import.ts') },
  simulate: { about: 'synthetic diaries through the rules', load: () => import('./simulate.ts') },
  ladder: { about: 'check and show a practice’s own ladders', load: () => import('./ladder.ts') },
  doctor: { about: 'check token, channels, database, clock', load: () => import('./doctor.ts') },
  start: { about: 'run the bot, or rehearse where there is no token', load: () => import('./start.ts') },
  play: { about: 'play a scenario through the whole program', load: () => import('./play.ts') },
  rehearse: { about: 'live in a practice: plays, then serves a page', load: () => import('./rehearse.ts') },
}

const usage = (): string =>
  [
    'Usage: ebb VERB …',
    ...Object.entries(VERBS).map(([verb, { about }]) => `  ${verb.padEnd(9)} ${about}`),
    'Each verb has --help.',
  ].join('\n')

/** One wait shared by all lines written meanwhile. */
let draining: Promise<void> | null = null
function drained(): Promise<void> {
  draining ??= once(process.stdout, 'drain').then(() => {
    draining = null
  })
  return draining
}

/** Lines go out together: at the end of the turn, or once they are many. A write for each costs more than reading it. */
const MOST_TOGETHER = 200
let lines: string[] = []
function flush(): void {
  if (lines.length === 0) return
  process.stdout.write(`${lines.join('\n')}\n`)
  lines = []
}

function out(line: string): void | Promise<void> {
  if (lines.push(line) === 1) setImmediate(flush)
  if (lines.length >= MOST_TOGETHER) flush()
  // without the wait, a slow reader would let unread lines pile up in memory
  return process.stdout.writableNeedDrain ? drained() : undefined
}

const io: Io = {
  stdin: process.stdin,
  out,
  err: (line) => void process.stderr.write(`${line}\n`),
}

async function main(argv: readonly string[]): Promise<number> {
  const [name, ...args] = argv
  if (name === undefined) {
    io.err(`Name a verb.\n${usage()}`)
    return 2
  }
  if (name === '--help' || name === '-h' || name === 'help') {
    await io.out(usage())
    return 0
  }
  const verb = Object.hasOwn(VERBS, name) ? VERBS[name] : undefined
  if (!verb) {
    io.err(`There is no verb “${name}”.\n${usage()}`)
    return 2
  }
  const { run, help } = await verb.load()
  if (args.includes('--help') || args.includes('-h')) {
    await io.out(help)
    return 0
  }
  return run(args, io)
}

// a reader that closes early (head) is no failure
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0)
  throw error
})
endOnFault()
process.exitCode = await main(process.argv.slice(2))
