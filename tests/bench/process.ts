import { type ChildProcess, spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))
/** Ticks of the kernel's clock in a second: 100 on every Linux that Node runs on (man 5 proc, sysconf). */
const TICKS = 100

/** A process beside this one, so that its memory and processor time are its own. */
export interface Beside {
  /** Milliseconds from its start until it had written this. */
  said(text: string): Promise<number>
  /** Megabytes that it holds in memory. */
  memory(): number
  /** Megabytes that its objects hold after a collection; it must listen with `tellHeap`. */
  heap(): Promise<number>
  /** Seconds of processor time so far. */
  processor(): number
  stop(): Promise<void>
}

/** Runs a source file of ours as `npm start` does. @param shift its clock goes so many milliseconds before the host's */
export function runBeside(file: string, env: Record<string, string> = {}, shift = 0): Beside {
  const clock = shift === 0 ? [] : ['--import', `data:text/javascript,${encodeURIComponent(shifted(shift))}`]
  const begun = performance.now()
  const child = spawn(process.execPath, [...clock, '--expose-gc', '--import', 'tsx', file], {
    cwd: ROOT,
    env: { PATH: process.env.PATH, ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const over = new Promise<void>((resolve) => child.once('close', () => resolve()))
  let out = ''
  const looks = new Set<() => void>()
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out = (out + text).slice(-100_000)
    for (const look of looks) look()
  })
  const said = (text: string): Promise<number> =>
    new Promise((resolve, reject) => {
      const look = (): void => {
        if (!out.includes(text)) return
        looks.delete(look)
        resolve(performance.now() - begun)
      }
      looks.add(look)
      look()
      void over.then(() => reject(new Error(`${file} ended before it said “${text}”: ${out}`)))
    })
  return {
    said,
    async heap() {
      child.kill('SIGUSR2')
      await said(' MB\n')
      return Number(/heap: ([\d.]+) MB/.exec(out)![1])
    },
    memory: () => Number(/VmRSS:\s+(\d+)/.exec(read(child, 'status'))![1]) / 1024,
    processor() {
      // fields 14 and 15, behind the name in brackets (man 5 proc)
      const fields = read(child, 'stat')
        .replace(/^.*\) /s, '')
        .split(' ')
      return (Number(fields[11]) + Number(fields[12])) / TICKS
    },
    async stop() {
      child.kill('SIGTERM')
      await over
    },
  }
}

const read = ({ pid }: ChildProcess, what: string): string => readFileSync(`/proc/${pid}/${what}`, 'utf8')

const shifted = (ms: number): string => `const Host = Date
globalThis.Date = class Date extends Host {
  constructor(...given) { given.length === 0 ? super(Host.now() + ${ms}) : super(...given) }
  static now() { return Host.now() + ${ms} }
}`

/** The bot on this database and stand-in. */
export const runBot = (
  path: string,
  { apiUrl, token }: { apiUrl: string; token: string },
  shift = 0,
): Beside =>
  runBeside('src/main.ts', { DATABASE_URL: `file:${path}`, DISCORD_TOKEN: token, DISCORD_API: apiUrl }, shift)
