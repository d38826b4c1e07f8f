import { type ChildProcess, spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { bundle } from '../bundle.ts'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))
// a loaded machine of two cores takes its time to load everything
const START_MS = 30_000

const PROGRAMS = ['src/main.ts', 'src/cli/index.ts'] as const
const programs = await bundle('programs', PROGRAMS)
process.once('exit', programs.remove)

/** What a process said and how it ended. */
export interface Ended {
  readonly code: number | null
  readonly out: string
  readonly err: string
  /** Milliseconds from its start, or from the signal. */
  readonly ms: number
}

export interface ServiceProcess {
  /** Resolves when the log says so; fails with what was said where the process ends before, or after so long (30 s). */
  logged(text: string, mostMs?: number): Promise<void>
  /** SIGTERM, then waits for the end. */
  stop(): Promise<Ended>
  /** Waits for it to end by itself. */
  ended(): Promise<Ended>
  /** Everything that it has written so far. */
  said(): string
  /** Ends it at once if it still runs. */
  kill(): void
  /** Lets it stand still, as on a machine that sleeps, or go on. */
  freeze(still: boolean): void
}

export type Program = (typeof PROGRAMS)[number]

/** Runs a program of ours as `npm start` and `npm run ebb` do, with this environment and nothing of the host's. */
export function run(
  file: Program,
  args: readonly string[],
  environment: Record<string, string>,
): ServiceProcess {
  const { node = [], env } = shifted(environment)
  const begun = performance.now()
  const child: ChildProcess = spawn(process.execPath, [...node, programs.of(file), ...args], {
    cwd: ROOT,
    env: { PATH: process.env.PATH, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let [out, err] = ['', '']
  const waiting = new Set<() => void>()
  const hear = (): void => {
    for (const look of waiting) look()
  }
  child.stdout!.setEncoding('utf8').on('data', (text: string) => {
    out += text
    hear()
  })
  child.stderr!.setEncoding('utf8').on('data', (text: string) => {
    err += text
    hear()
  })
  const over = new Promise<number | null>((resolve) => child.on('close', resolve))
  const endedSince = async (since: number): Promise<Ended> => {
    const code = await over
    return { code, out, err, ms: performance.now() - since }
  }
  return {
    async logged(text, mostMs = START_MS) {
      const late = setTimeout(() => child.kill('SIGKILL'), mostMs)
      const heard = new Promise<true>((resolve) => {
        const look = (): void => {
          if (!out.includes(text)) return
          waiting.delete(look)
          resolve(true)
        }
        waiting.add(look)
        look()
      })
      const first = await Promise.race([heard, over])
      clearTimeout(late)
      if (first !== true) throw new Error(`it ended (${first}) before it logged “${text}”: ${out}${err}`)
    },
    stop() {
      const since = performance.now()
      child.kill('SIGTERM')
      return endedSince(since)
    },
    ended: () => endedSince(begun),
    said: () => out + err,
    kill: () => void child.kill('SIGKILL'),
    freeze: (still) => void child.kill(still ? 'SIGSTOP' : 'SIGCONT'),
  }
}

/** `CLOCK_SHIFT_MS` lets the process's own clock run so far from the host's, so that a next morning can come. */
function shifted({ CLOCK_SHIFT_MS, ...env }: Record<string, string>): {
  node?: string[]
  env: Record<string, string>
} {
  if (CLOCK_SHIFT_MS === undefined) return { env }
  const source = `const Host = Date
globalThis.Date = class Date extends Host {
  constructor(...given) { given.length === 0 ? super(Host.now() + ${CLOCK_SHIFT_MS}) : super(...given) }
  static now() { return Host.now() + ${CLOCK_SHIFT_MS} }
}`
  return { node: ['--import', `data:text/javascript,${encodeURIComponent(source)}`], env }
}
