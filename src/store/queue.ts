import { AsyncLocalStorage } from 'node:async_hooks'

/** Runs pieces of work strictly one after another, in the order they were given. */
export interface Queue {
  /** Waits for its turn, runs the work alone, and gives back what it gave or threw. */
  run<T>(work: () => Promise<T>): Promise<T>
  /** Lets what is queued finish, and refuses anything new from now on. */
  close(): Promise<void>
}

/**
 * A queue of one. The SQLite client has a single connection, so a write made while a transaction is open would
 * become part of that transaction and vanish with its rollback; every use of the client goes through here.
 */
export function createQueue(): Queue {
  const inside = new AsyncLocalStorage<{ running: boolean }>()
  let last: Promise<unknown> = Promise.resolve()
  let closed = false

  async function alone<T>(work: () => Promise<T>): Promise<T> {
    // A timer started by the work keeps seeing this object, so it must know that the turn is over.
    const turn = { running: true }
    try {
      return await inside.run(turn, work)
    } finally {
      turn.running = false
    }
  }

  return {
    run<T>(work: () => Promise<T>): Promise<T> {
      if (closed) return Promise.reject(new Error('the store is closed'))
      // Waiting here for a turn that only comes when this very work has ended would wait for ever.
      if (inside.getStore()?.running) {
        return Promise.reject(new Error('inside a transaction use what it was given'))
      }
      const turn = last.then(() => alone(work))
      last = turn.catch(() => undefined)
      return turn
    },
    async close(): Promise<void> {
      closed = true
      await last
      // else every later promise of the process would carry it on
      inside.disable()
    },
  }
}
