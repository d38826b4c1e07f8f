import { randomBytes } from 'node:crypto'
import { readlinkSync } from 'node:fs'
import { hostname } from 'node:os'

/** Process numbers count within their own space: two containers may have one host name and the same numbers. */
function here(): string {
  try {
    return `${hostname()}/${/\d+/.exec(readlinkSync('/proc/self/ns/pid'))?.[0] ?? ''}`
  } catch {
    return `${hostname()}/`
  }
}

// A number may be given again, and each container counts from one.
const THIS_ONE = randomBytes(4).toString('hex')

/** Names a process of this machine, this one where left out: where it counts, its number there, and which one it is. */
export const processNamed = (pid: number = process.pid, which = THIS_ONE): string =>
  `${here()}/${pid}/${which}`

/** True for a process of this machine that has ended: it will not come back to what it holds. */
export function hasEnded(holder: string): boolean {
  const [, pid, which] = /\/(\d+)\/(\w+)$/.exec(holder) ?? []
  if (holder !== processNamed(Number(pid), which)) return false
  if (Number(pid) === process.pid) return which !== THIS_ONE
  try {
    process.kill(Number(pid), 0)
    return false
  } catch (error) {
    // one of another user runs as well
    return (error as NodeJS.ErrnoException).code === 'ESRCH'
  }
}
