import { daysBetween } from '../../domain/day.ts'
import { dayAt, timeAt } from '../../domain/local-time.ts'
import { textsFor } from '../../text/index.ts'
import { nextOf } from '../player/play.ts'
import type { Session } from './session.ts'
import type { Card, Now, PhoneOwner, State } from './wire.ts'

const { page } = textsFor('en').rehearsal
/** So many cards of each side come at first, and with each request for older ones. */
const CARDS_AT_ONCE = 300
const TROUBLES_SHOWN = 5

/** Time, faults and what is going on. */
export async function stateOf(session: Session, going: Pick<State, 'busy' | 'playing'>): Promise<State> {
  const { programme, struck, aheadMs, clockChangeAt } = session
  const log = programme.log.troubles.slice(session.excused)
  const errors = struck.size > 0 ? [] : [...session.troubles, ...log.map(plainly)]
  return {
    now: await nowOf(session),
    ...going,
    hasScript: programme.script.clients.length > 0 && session.end > session.now,
    faults: {
      chatDown: struck.has('chat'),
      databaseLocked: struck.has('database'),
      clockAheadMinutes: aheadMs / 60_000,
      clockChangeTonight: clockChangeAt !== null,
    },
    troubles: errors.slice(-TROUBLES_SHOWN),
  }
}

/** A line of the bot's own log by its sentence alone. */
function plainly(trouble: string): string {
  const line = /^the bot reports: (\{.*\})$/s.exec(trouble)?.[1]
  if (line === undefined) return trouble
  const { msg, problem } = JSON.parse(line) as { msg?: string; problem?: string }
  return page.reported(problem ?? msg ?? '')
}

async function nowOf({ programme, practiceZone: zone, now }: Session): Promise<Now> {
  const date = dayAt(now, zone)
  const next = await nextOf(programme)
  return {
    at: now.toISOString(),
    local: localOf(now, zone),
    date,
    day: daysBetween(programme.script.start, date) + 1,
    zone,
    next: next && localOf(next, zone),
  }
}

const localOf = (at: Date, zone: string): string => `${dayAt(at, zone)}T${timeAt(at, zone)}`

export function phonesOf({ programme, refs, statuses, doc, now }: Session): PhoneOwner[] {
  return refs.map((ref) => {
    const zone = programme.log.zoneOf(ref)
    const language = String(doc.clients.find((one) => one.ref === ref)?.language ?? 'en')
    return { ref, status: statuses.get(ref) ?? null, zone, local: localOf(now, zone), language }
  })
}

/** Whether a card lies before somebody: on a client's phone, or in the coach's rooms. */
export const liesBefore = (card: Card, who: string | null): boolean =>
  card.side === 'coach' ? who === 'coach' : card.about === who || card.place === `client:${who}`

/** The newest cards before somebody, or those before one of them; and whether there are older ones. */
export function cardsBefore(
  session: Session,
  who: string | null,
  before: string | null,
): { cards: Card[]; more: boolean } {
  const all = [...session.cards.all.values()].filter((card) => liesBefore(card, who))
  const end =
    before === null
      ? all.length
      : Math.max(
          0,
          all.findIndex(({ id }) => id === before),
        )
  const from = Math.max(0, end - CARDS_AT_ONCE)
  return { cards: all.slice(from, end), more: from > 0 }
}
