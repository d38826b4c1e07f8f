import type { ChatEvent, Event } from '../engine/event.ts'
import type { Engine, Handled } from '../engine/ports.ts'
import { createHandOver } from './hand-over.ts'
import { type Heard, heardIn } from './heard.ts'
import { AWAY, PATIENCE, withinSlices } from './patience.ts'
import { createShortReplies, type ShortReplyParts } from './short-replies.ts'

const NOTHING: Handled = { answer: null }

export interface UrgentFirstParts extends Omit<ShortReplyParts, 'handed'> {
  readonly engine: Engine
  /** Every language that the screen reads. */
  readonly languages: readonly string[]
  /** Rejects where the store does not answer. */
  readonly probe: () => Promise<unknown>
  /** What is wrong with the store, in one sentence with the mend, where an error comes from there. */
  readonly problemOf?: (error: unknown) => Error | null
}

export interface UrgentFirst {
  /** The engine, with a short way beside it for when the store does not answer in time. */
  readonly engine: Engine
  /** Hands what was put aside to the store, in order, and stops where it is still away. */
  takeUp(): Promise<void>
  /** Ids of the events handed over and still in the spool. */
  handed(): readonly string[]
  /** Their messages are marked as sent: the spool forgets them. */
  forget(events: readonly string[]): Promise<void>
}

/** Urgent signs are answered though the store be away; nothing that a client says meanwhile is lost. */
export function createUrgentFirst(parts: UrgentFirstParts): UrgentFirst {
  const { engine, known, spool, log } = parts
  let told = ''

  const storeAnswers = (): Promise<boolean> =>
    withinSlices(parts.probe(), PATIENCE.unsure).then(
      (found) => found !== AWAY,
      () => false,
    )
  const { handed, takeUp, waits, forget } = createHandOver({ engine, spool, storeAnswers, log })
  const replies = createShortReplies({ ...parts, handed })

  /** The keeper hears the mend, once for each. */
  const tellProblem = (error: unknown): boolean => {
    const problem = parts.problemOf?.(error)?.message
    if (problem && problem !== told) log.error({ problem }, 'the database cannot be used')
    told = problem ?? told
    return problem !== undefined
  }

  /** What somebody said before goes first. */
  const inOrder = async (event: ChatEvent, now: Date): Promise<Handled | typeof AWAY> => {
    if (waits(event.actor.user)) await takeUp()
    return waits(event.actor.user) ? AWAY : engine.handle(event, now)
  }

  const handle = async (event: Event, now: Date): Promise<Handled> => {
    if (event.kind === 'due' || event.kind === 'undelivered' || event.kind === 'told')
      return engine.handle(event, now)
    const language = known.find(event.actor.user)?.client.language ?? 'en'
    const heard = heardIn(event, language, parts.languages)
    const work = inOrder(event, now)
    try {
      const handled = await withinSlices(work, patienceFor(heard))
      if (handled !== AWAY) return handled
    } catch (error) {
      // a damaged store may still answer, and yet could not take this
      const isStores = tellProblem(error)
      if (!heard && (!isKept(event) || (!isStores && (await storeAnswers())))) throw error
    }
    work.catch(() => {})
    if (spool.has(event.id)) return NOTHING
    if (heard) await replies.urgent({ event, at: now, heard }, heard)
    else if (isKept(event)) await replies.kept({ event, at: now, heard })
    else return typed(work)
    return NOTHING
  }

  /** A command, or a coach's press: whoever typed it waits for its answer, or hears that it failed. */
  const typed = async (work: Promise<Handled | typeof AWAY>): Promise<Handled> => {
    const handled = await work
    if (handled === AWAY) throw new Error('the store is away')
    return handled
  }

  return {
    engine: { handle },
    takeUp,
    handed: () => [...handed],
    async forget(events) {
      await forget(events)
      if (spool.entries().length === 0) replies.beginAgain()
    },
  }
}

/** Kept for later: what comes in private. A command, or a coach's press, is typed or pressed again. */
const isKept = (event: ChatEvent): boolean => event.kind !== 'command' && event.actor.guild === null

const patienceFor = (heard: Heard | null): number =>
  heard ? (heard.plain ? PATIENCE.plain : PATIENCE.unsure) : PATIENCE.other
