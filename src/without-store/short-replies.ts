import type { Logger } from 'pino'
import type { Texts } from '../text/index.ts'
import { answersTo, type IdOf, inPerson, keptForLater } from './answers.ts'
import type { Heard } from './heard.ts'
import type { KnownPeople } from './known.ts'
import { type Sender, unwritten } from './sender.ts'
import type { Entry, Spool } from './spool.ts'

export interface ShortReplyParts {
  readonly known: KnownPeople
  readonly spool: Spool
  readonly sender: Sender
  readonly textsFor: (language: string) => Texts
  readonly idOf: IdOf
  /** Ids of the events handed over to the store since. */
  readonly handed: ReadonlySet<string>
  readonly log: Logger
}

/** What goes out, and into the spool, while the store is away. */
export interface ShortReplies {
  /** An urgent sign: what to do for whoever told it, and the alert. Resolves after the first try of each. */
  urgent(entry: Entry, heard: Heard): Promise<void>
  /** Anything else said in private: kept for later, and the person hears so once. */
  kept(entry: Entry): Promise<void>
  /** All has been taken up: the next time the store is away, everybody hears of it again. */
  beginAgain(): void
}

export function createShortReplies(parts: ShortReplyParts): ShortReplies {
  const { known, spool, sender, textsFor, idOf, handed, log } = parts
  const comforted = new Set<string>()

  return {
    // disk and platform at once: neither waits for the other, and each may fail alone
    async urgent(entry, heard) {
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
    },
    async kept(entry) {
      const { user } = entry.event.actor
      await spool.take(entry).catch((error) => unwritten(error, log))
      if (comforted.has(user)) return
      comforted.add(user)
      await sender.send(keptForLater(entry, known.find(user), textsFor, idOf), null, () => true)
    },
    beginAgain: () => comforted.clear(),
  }
}
