import fs from 'node:fs'
import { syncBuiltinESMExports } from 'node:module'
import net from 'node:net'
import { basename } from 'node:path'
import SqliteDatabase from 'better-sqlite3'
import pg from 'pg'
import type { AnyAim } from './protocol.ts'

/**
 * Names and counts what a process does to the world outside itself: statements that write, files, requests. Loaded
 * before the bot, it stands in front of the database driver, the file system and the network; the bot knows nothing
 * of it.
 */
let names: string[] | null = null
let aim: AnyAim | null = null
const times = new Map<string, number>()

/** Counts from here on, and ends the process (SIGKILL) at the aim; null: only counts. */
export function count(at: AnyAim | null): void {
  names = []
  times.clear()
  aim = at
}

let instant = 0
const inInstants = new Map<number, number>()

/** Steps from here on belong to an instant, in ms since 1970. */
export function beginInstant(at: number): void {
  instant = at
}

/** How many steps each instant has had. */
export const instants = (): readonly (readonly [number, number])[] => [...inInstants]

/** The steps since then, in order, each name with a number: "insert Due 1". */
export const steps = (): readonly string[] => names ?? []

/** Does one step. */
export function step<T>(name: string | null, work: () => T): T {
  if (name === null || names === null) return work()
  const nth = (times.get(name) ?? 0) + 1
  times.set(name, nth)
  const own = `${name} ${nth}`
  names.push(own)
  const nthNow = (inInstants.get(instant) ?? 0) + 1
  inInstants.set(instant, nthNow)
  const end = (when: AnyAim['when']): void => {
    if (aim?.when === when && isAimedAt(aim, name, nth, nthNow)) process.kill(process.pid, 'SIGKILL')
  }
  end('before')
  const result = work()
  if (!(result instanceof Promise)) {
    end('after')
    return result
  }
  return result.then((value) => {
    end('after')
    return value
  }) as T
}

function isAimedAt(at: AnyAim, name: string, nth: number, nthNow: number): boolean {
  if ('step' in at) return at.step === `${name} ${nth}`
  if ('instants' in at) return at.instants.some((one) => one.at === instant && one.step === nthNow)
  return at.first === name && times.has(at.behind)
}

type Method = (this: unknown, ...given: unknown[]) => unknown
type Methods = Record<string, Method>

/** Puts a name on every call of a method; `null` passes it by. */
function wrap(
  of: object,
  method: string,
  nameOf: (self: unknown, given: readonly unknown[]) => string | null,
): void {
  const methods = of as Methods
  const own = methods[method]!
  methods[method] = function (this: unknown, ...given) {
    return step(nameOf(this, given), () => own.apply(this, given))
  }
}

const WRITES = [
  [/^\s*(BEGIN|COMMIT|ROLLBACK)\b/i, (found: string) => found.toLowerCase()],
  [/^\s*INSERT INTO (?:[`"](?:main|public)[`"]\.)?[`"](\w+)/i, (found: string) => `insert ${found}`],
  [/^\s*UPDATE (?:[`"](?:main|public)[`"]\.)?[`"](\w+)/i, (found: string) => `update ${found}`],
  // a claim that ends in the same statement
  [/^\s*WITH [\s\S]*?\bUPDATE "(\w+)"/, (found: string) => `update ${found}`],
  [/^\s*DELETE FROM (?:[`"](?:main|public)[`"]\.)?[`"](\w+)/i, (found: string) => `delete ${found}`],
] as const

function statementName(sql: string): string | null {
  for (const [pattern, name] of WRITES) {
    const found = pattern.exec(sql)
    if (found) return name(found[1]!)
  }
  return null
}

/** Statements are named by their SQL; what only reads changes nothing and is no step. */
function watchDatabase(): void {
  const memory = new SqliteDatabase(':memory:')
  const statement = Object.getPrototypeOf(memory.prepare('SELECT 1')) as object
  memory.close()
  for (const method of ['run', 'all', 'get'])
    wrap(statement, method, (self) => statementName((self as { source: string }).source))
  wrap(pg.Client.prototype, 'query', (_, [asked]) => statementName(textOf(asked)))
}

const textOf = (asked: unknown): string =>
  typeof asked === 'string' ? asked : String((asked as { text?: string } | null)?.text ?? '')

const FILES = [/-spool$/, /-known\.json(\.new)?$/]

const fileName = (path: unknown): string | null => {
  const name = basename(String(path))
  if (!FILES.some((pattern) => pattern.test(name))) return null
  return name.endsWith('-spool') ? 'spool' : 'known'
}

/** The two small files of the way without a store. */
async function watchFiles(): Promise<void> {
  const opened = new WeakMap<object, string>()
  const { open } = fs.promises
  const some = await open(process.execPath)
  const handle = Object.getPrototypeOf(some) as object
  await some.close()
  fs.promises.open = async (path, ...rest) => {
    const file = await open(path, ...rest)
    const name = fileName(path)
    if (name) opened.set(file, name)
    return file
  }
  for (const method of ['write', 'writeFile', 'datasync', 'sync'])
    wrap(handle, method, (self) => {
      const name = opened.get(self as object)
      return name ? `${name}: ${method}` : null
    })
  wrap(fs.promises, 'rename', (_, [from]) => {
    const name = fileName(from)
    return name ? `${name}: rename` : null
  })
  syncBuiltinESMExports()
}

const REQUEST = /^(GET|POST|PATCH|PUT|DELETE) (?:\/api\/v\d+)?(\S+?)(?:\?\S*)? HTTP\/1\.1\r\n/

/** A request's path with words for the platform's ids and tokens. */
const pathName = (path: string): string =>
  path
    .replace(/\/\d{15,}(?=\/|$)/g, '')
    .replace(/^\/webhooks\/.*/, '/answer')
    .replace(/^\/interactions\/.*/, '/acknowledgement')

/** A request as it is about to leave; one killed before has never left. */
function watchNetwork(): void {
  wrap(net.Socket.prototype, 'write', (_, [chunk]) => {
    const found = typeof chunk === 'string' ? REQUEST.exec(chunk) : null
    return found ? `${found[1]} ${pathName(found[2]!)}` : null
  })
}

watchDatabase()
await watchFiles()
watchNetwork()
