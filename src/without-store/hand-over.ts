import type { Logger } from 'pino'
import type { Told } from '../engine/event.ts'
import type { Engine } from '../engine/ports.ts'
import { safeError } from '../safe-error.ts'
import type { Heard } from './heard.ts'
import { unwritten } from './sender.ts'
import type { Entry, Spool } from './spool.ts'

// An event that fails so often while the store does answer is at fault itself: it waits for the next start.
const FAILURES_MOST = 3

interface HandOverParts {
  readonly engine: Engine
  readonly spool: Spool
  readonly storeAnswers: () => Promise<boolean>
  readonly log: Logger
}

/** What was put aside goes to the store, once it is back. */
export interface HandOver {
  /** Hands all of it over, in order, and stops where the store is still away; one run at a time. */
  takeUp(): Promise<void>
  /** Whether something that this person said before is still to be handed over. */
  waits(user: string): boolean
  /** Ids of the events handed over and still in the spool. */
  readonly handed: ReadonlySet<string>
  /** Takes them out of the spool. */
  forget(events: readonly string[]): Promise<void>
}

export function createHandOver({ engine, spool, storeAnswers, log }: HandOverParts): HandOver {
  const handed = new Set<string>()
  const failures = new Map<string, number>()
  let taking: Promise<void> | null = null

  const isOver = (id: string): boolean => handed.has(id) || (failures.get(id) ?? 0) >= FAILURES_MOST

  const failed = ({ id, kind }: Entry['event'], error: unknown): void => {
    const times = (failures.get(id) ?? 0) + 1
    failures.set(id, times)
    if (times === FAILURES_MOST)
      log.error(
        { kind, error: safeError(error) },
        'what was put aside cannot be written down; it stays in the spool',
      )
  }

  const handAll = async (): Promise<void> => {
    for (const entry of spool.entries()) {
      const { event, at, heard } = entry
      if (isOver(event.id)) continue
      try {
        // the engine looks at it as at the instant when it came: alert and follow-up count from there
        if (heard) await engine.handle(toldOf(entry, heard), at)
        await engine.handle(event, at)
        handed.add(event.id)
      } catch (error) {
        if (!(await storeAnswers())) return
        failed(event, error)
      }
    }
  }

  return {
    handed,
    takeUp: () => {
      taking ??= handAll().finally(() => {
        taking = null
      })
      return taking
    },
    waits: (user) => spool.entries().some(({ event }) => event.actor.user === user && !isOver(event.id)),
    async forget(events) {
      for (const id of events) {
        await spool.done(id).catch((error) => unwritten(error, log))
        handed.delete(id)
      }
    },
  }
}

const toldOf = ({ event, at }: Entry, { signs, words, named, day }: Heard): Told => ({
  kind: 'told',
  id: `${event.id}:told`,
  actor: event.actor,
  cause: event.id,
  at: event.kind === 'words' ? event.at : at,
  ...{ signs, words, named, day },
})
