import type { Logger } from 'pino'
import type { ChatEvent, Event, Told } from '../engine/event.ts'
import type { Engine, Handled } from '../engine/ports.ts'
import type { Texts } from '../text/index.ts'
import { answersTo, type IdOf, inPerson, keptForLater } from './answers.ts'
import { type Heard, heardIn } from './heard.ts'
import type { KnownPeople } from './known.ts'
import { type Sender, unwritten } from './sender.ts'
import type { Entry, Spool } from './spool.ts'

/**
 * So long may the store take, in slices of a tenth of a second: a machine that is only busy stretches the slices, and
 * the store gets its turn between them. The platform gives 3 s, and a frightened person should not wait at all; a
 * healthy store takes some hundredths of a second.
 */
const SLICE_MS = 100
const PATIENCE = {
  /** A sign that is plain: nothing in the record could make the answer milder in time. */
  plain: 2,
  /** One that the engine would ask back: worth a moment more, as the short way takes it for sure. */
  unsure: 12,
  /** Other words: a lock of a few seconds passes without anybody noticing. */
  other: 80,
} as const
// An event that fails so often while the store does answer is at fault itself: it waits for the next start.
const FAILURES_MOST = 3

const NOTHING: Handled = { answer: null }
const AWAY = Symbol('away')

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
  const handed = new Set<string>()
  const failures = new Map<string, number>()
  const comforted = new Set<string>()
  let taking: Promise<void> | null = null
  let told = ''

  const isOver = (id: string): boolean => handed.has(id) || (failures.get(id) ?? 0) >= FAILURES_MOST
  const waits = (user: string): boolean =>
    spool.entries().some(({ event }) => event.actor.user === user && !isOver(event.id))
  const storeAnswers = (): Promise<boolean> =>
    within(parts.probe(), PATIENCE.unsure).then(
      (found) => found !== AWAY,
      () => false,
    )

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

  const takeUp = (): Promise<void> => {
    taking ??= handOver().finally(() => {
      taking = null
    })
    return taking
  }

  const handOver = async (): Promise<void> => {
    for (const entry of spool.entries()) {
      const { id } = entry.event
      if (isOver(id)) continue
      try {
        // the engine looks at it as at the instant when it came: alert and follow-up count from there
        if (entry.heard) await engine.handle(toldOf(entry, entry.heard), entry.at)
        await engine.handle(entry.event, entry.at)
        handed.add(id)
      } catch {
        if (!(await storeAnswers())) return
        failures.set(id, (failures.get(id) ?? 0) + 1)
        if (failures.get(id) === FAILURES_MOST)
          log.error(
            { kind: entry.event.kind },
            'what was put aside cannot be written down; it stays in the spool',
          )
      }
    }
  }

  return {
    engine: { handle },
    takeUp,
    handed: () => [...handed],
    async forget(events) {
      for (const id of events) {
        await spool.done(id).catch((error) => unwritten(error, log))
        handed.delete(id)
      }
      if (spool.entries().length === 0) comforted.clear()
    },
  }
}

/** Kept for later: what comes in private. A command, or a coach's press, is typed or pressed again. */
const isKept = (event: ChatEvent): boolean => event.kind !== 'command' && event.actor.guild === null

const toldOf = ({ event, at }: Entry, { signs, words, named, day }: Heard): Told => ({
  kind: 'told',
  id: `${event.id}:told`,
  actor: event.actor,
  cause: event.id,
  at: event.kind === 'words' ? event.at : at,
  ...{ signs, words, named, day },
})

const patienceFor = (heard: Heard | null): number =>
  heard ? (heard.plain ? PATIENCE.plain : PATIENCE.unsure) : PATIENCE.other

/** What the work gives, or AWAY where it takes longer than so many slices; the work goes on. */
async function within<T>(work: Promise<T>, slices: number): Promise<T | typeof AWAY> {
  let timer: NodeJS.Timeout | undefined
  const slice = (): Promise<typeof AWAY> =>
    new Promise((resolve) => {
      timer = setTimeout(() => resolve(AWAY), SLICE_MS)
    })
  try {
    for (let n = 1; n < slices; n += 1) {
      const first = await Promise.race([work, slice()])
      if (first !== AWAY) return first
      clearTimeout(timer)
    }
    return await Promise.race([work, slice()])
  } finally {
    clearTimeout(timer)
  }
}
