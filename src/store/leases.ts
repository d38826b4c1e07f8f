import { hostname } from 'node:os'
import type { Database } from './database.ts'

/** Who does a piece of work of which there may be one worker only. */
export interface LeaseStore {
  /** Takes or renews a lease until an instant; false where somebody else holds it beyond now. */
  take(name: string, holder: string, now: Date, until: Date): Promise<boolean>
  /** Gives it back before its time; does nothing where somebody else holds it. */
  release(name: string, holder: string): Promise<void>
}

/** Names this process: its machine and its number there. */
export const thisProcess = (): string => `${hostname()}/${process.pid}`

/** True for a process of this machine that has ended: it will not come back to what it holds. */
export function hasEnded(holder: string): boolean {
  const [host, pid] = holder.split('/')
  if (host !== hostname() || !/^\d+$/.test(pid ?? '')) return false
  try {
    process.kill(Number(pid), 0)
    return false
  } catch (error) {
    // one of another user runs as well
    return (error as NodeJS.ErrnoException).code === 'ESRCH'
  }
}

export function leaseStore(database: Database): LeaseStore {
  return {
    take: (name, holder, now, until) =>
      database.transaction(async (db) => {
        const held = await db.lease.findUnique({ where: { name } })
        if (held && held.holder !== holder && held.until > now) return false
        const data = { name, holder, until }
        await db.lease.upsert({ where: { name }, create: data, update: data })
        return true
      }),
    release: (name, holder) =>
      database.use(async (db) => {
        await db.lease.deleteMany({ where: { name, holder } })
      }),
  }
}
