import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Platform } from '../../../src/rehearsal/platform/index.ts'
import type { StoredRow } from './home.ts'

/** What stands at the end: rows of the database, and messages as people find them, in no order. */
export interface Outcome {
  readonly rows: readonly string[]
  readonly messages: readonly string[]
}

export interface Difference {
  /** In the run without a kill, and not in this one. */
  readonly lost: readonly string[]
  readonly twice: readonly string[]
}

// what happens to be asked of the database at a start, and when
const PASSED_BY = ['_prisma_migrations', 'Setting', 'Lease']

// ids of the platform go on counting, and what hangs on them differs with them
const anonymous = (text: string): string =>
  text
    .replace(/\b\d{17,20}\b/g, '#')
    .replace(/\b[0-9a-f]{20}\b/g, '~')
    // how many messages the same event led to before this one, which hangs on the way it took
    .replace(/\/receipt\/#\/\d+/g, '/receipt/#')

/**
 * @param stored all rows of the database
 * @param again somebody had to press or type again: each time is an event of its own
 */
export function outcomeOf(stored: readonly StoredRow[], platform: Platform, again: boolean): Outcome {
  return { rows: rowsIn(stored, again), messages: messagesOn(platform, again) }
}

/**
 * The same for a whole play, in which an event more puts all that comes after it one place further on, a client is
 * known by the command that invited them, and buttons stay where the answer to a press did not arrive.
 */
export function wholeOutcome(stored: readonly StoredRow[], platform: Platform): Outcome {
  const clients = stored
    .filter(({ table }) => table === 'Client')
    .map(({ row }) => row as { id: string; ref: string })
  const { rows, messages } = outcomeOf(stored, platform, true)
  const named = (row: string): string =>
    clients
      .reduce((text, { id, ref }) => text.replaceAll(id, ref), row)
      .replace(/"seq":\d+/, '"seq":0')
      // a kill, or a busy machine, may cost another try; that it arrived once is seen among the messages
      .replace(/"attempts":[1-9]\d*/, '"attempts":1')
  const withoutButtons = (message: string): string =>
    JSON.stringify((JSON.parse(message) as unknown[]).slice(0, 3))
  return { rows: rows.map(named).sort(), messages: messages.map(withoutButtons).sort() }
}

function rowsIn(stored: readonly StoredRow[], again: boolean): string[] {
  const rows = stored
    .filter(({ table }) => !PASSED_BY.includes(table) && !(again && table === 'Inbound'))
    // events that a bot with a database at hand never needs
    .filter(({ table, row }) => !(table === 'Inbound' && row.id?.endsWith(':told')))
    .filter(({ row }) => !(again && row.reason === 'shown in place'))
    .map(({ table, row }) => anonymous(`${table} ${JSON.stringify(row)}`))
  // the trail holds each press: whoever pressed twice is in it twice
  const isFirst = (row: string, n: number): boolean => rows.indexOf(row) === n
  return rows.filter((row, n) => !(again && row.startsWith('Version ')) || isFirst(row, n)).sort()
}

function messagesOn(platform: Platform, again: boolean): string[] {
  const { world } = platform
  const messages = [...world.messages.keys()].map((id) => platform.message(id)!)
  // who types again is told in other words that it was done already
  const shown = messages.filter(({ content, ephemeral }) => !ephemeral || (!again && content !== ''))
  return shown
    .map(({ channelName, recipient, content, components, ephemeral }) =>
      anonymous(
        JSON.stringify([
          channelName ?? recipient,
          ephemeral,
          again ? unpressed(content) : content,
          components,
        ]),
      ),
    )
    .sort()
}

/** Without what a press had it say besides, which differs for whoever presses twice. */
const unpressed = (content: string): string => content.replace(/\n\n\*\*[^*]+\*\* · [\s\S]*$/, '')

/** Null where both are the same. */
export function difference(plain: Outcome, killed: Outcome): Difference | null {
  const lost = [...without(plain.rows, killed.rows), ...without(plain.messages, killed.messages)]
  const twice = [...without(killed.rows, plain.rows), ...without(killed.messages, plain.messages)]
  return lost.length + twice.length > 0 ? { lost, twice } : null
}

/**
 * Without messages that only lack what a press would have had them say besides: an answer in place is shown to whoever
 * waits for it and goes with the process; what was pressed counts all the same.
 */
export function withoutUnshown(found: Difference): { difference: Difference | null; unshown: number } {
  const lost = [...found.lost]
  const twice = found.twice.filter((message) => {
    const at = lost.findIndex((whole) => whole.startsWith(`${message.replace(/"\]$/, '')}\\n\\n`))
    if (at >= 0) lost.splice(at, 1)
    return at < 0
  })
  const difference = lost.length + twice.length > 0 ? { lost, twice } : null
  return { difference, unshown: found.twice.length - twice.length }
}

/** What is in the one list and not, or not so often, in the other. */
function without(list: readonly string[], other: readonly string[]): string[] {
  const left = [...other]
  return list.filter((one) => {
    const at = left.indexOf(one)
    if (at >= 0) left.splice(at, 1)
    return at < 0
  })
}

/** What still waits in the spool of a folder; empty at the end of every trial. */
export function spooled(folder: string): string {
  const name = readdirSync(folder).find((one) => one.endsWith('-spool'))
  return name ? readFileSync(join(folder, name), 'utf8').replaceAll('\0', '') : ''
}
