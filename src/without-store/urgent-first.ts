import type { Logger } from 'pino'
import type { ChatEvent, Event } from '../engine/event.ts'
import type { Engine, Handled } from '../engine/ports.ts'
import type { Texts } from '../text/index.ts'
import { answersTo, type IdOf, inPerson, keptForLater } from './answers.ts'
import { createHandOver } from './hand-over.ts'
import { type Heard, heardIn } from './heard.ts'
import type { KnownPeople } from './known.ts'
import { AWAY, PATIENCE, within } from './patience.ts'
import { type Sender, unwritten } from './sender.ts'
import type { Entry, Spool } from './spool.ts'

const NOTHING: Handled = { answer: null }

export interface UrgentFirstParts {
  readonly engine: Engine
  readonly known: KnownPeople
  readonly spool: Spool
  readonly sender: Sender
  readonly textsFor: (language: string) => Texts
  /** Every language that the screen reads. */
  readonly languages: readonly string[]
  readonly idOf: IdOf
  /** Rejects where the store does not answer. */
  readonly probe: () => Promise<unknown>
  /** What is wrong with the store, in one sentence with the mend, where an error comes from there. */
  readonly problemOf?: (error: unknown) => Error | null
  readonly log: Logger
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
  const { engine, known, spool, sender, textsFor, idOf, log } = parts
  const comforted = new Set<string>()
  let told = ''

  const storeAnswers = (): Promise<boolean> =>
    within(parts.probe(), PATIENCE.unsure).then(
      (found) => found !== AWAY,
      () => false,
    )
  const { handed, takeUp, waits, forget } = createHandOver({ engine, spool, storeAnswers, log })

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
      const handled = await within(work, patienceFor(heard))
      if (handled !== AWAY) return handled
    } catch (error) {
      // a damaged store may still answer, and yet could not take this
      const isStores = tellProblem(error)
      if (!heard && (!isKept(event) || (!isStores && (await storeAnswers())))) throw error
    }
    work.catch(() => {})
    if (spool.has(event.id)) return NOTHING
    if (heard) await answer({ event, at: now, heard }, heard)
    else if (isKept(event)) await keep({ event, at: now, heard })
    else return typed(work)
    return NOTHING
  }

  /** A command, or a coach's press: whoever typed it waits for its answer, or hears that it failed. */
  const typed = async (work: Promise<Handled | typeof AWAY>): Promise<Handled> => {
    const handled = await work
    if (handled === AWAY) throw new Error('the store is away')
    return handled
  }

  /** Disk and platform at once: neither waits for the other, and each may fail alone. */
  const answer = async (entry: Entry, heard: Heard): Promise<void> => {
    log.warn('the store does not answer: an urgent sign goes the short way')
    const person = known.find(entry.event.actor.user)
    const { reply, alert } = answersTo({ ...entry, heard }, person, textsFor, idOf)
    const over = (): boolean => handed.has(entry.event.id) || !spool.has(entry.event.id)
    const written = spool.take(entry).catch((error) => unwritten(error, log))
    const coach = person?.coach ?? null
    const instead =
      alert && person && coach !== null ? inPerson(alert, coach, textsFor(person.practice.language)) : null
    await Promise.all([
      sender.send(reply, null, over),
      alert ? sender.send(alert, instead, over) : null,
      written,
    ])
  }

  /** Kept for later; the person hears so once until all has been taken up. */
  const keep = async (entry: Entry): Promise<void> => {
    const { user } = entry.event.actor
    await spool.take(entry).catch((error) => unwritten(error, log))
    if (comforted.has(user)) return
    comforted.add(user)
    await sender.send(keptForLater(entry, known.find(user), textsFor, idOf), null, () => true)
  }

  return {
    engine: { handle },
    takeUp,
    handed: () => [...handed],
    async forget(events) {
      await forget(events)
      if (spool.entries().length === 0) comforted.clear()
    },
  }
}

/** Kept for later: what comes in private. A command, or a coach's press, is typed or pressed again. */
const isKept = (event: ChatEvent): boolean => event.kind !== 'command' && event.actor.guild === null

const patienceFor = (heard: Heard | null): number =>
  heard ? (heard.plain ? PATIENCE.plain : PATIENCE.unsure) : PATIENCE.other
