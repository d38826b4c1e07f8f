import { addDays, daysBetween } from '../../domain/day.ts'
import { dayAt } from '../../domain/local-time.ts'
import type { Session } from './session.ts'
import type { Card, Mark, RibbonDay } from './wire.ts'

/** The ribbon as it stands, and each day of it as text, by which a change is known. */
export interface Ribbon {
  readonly days: readonly RibbonDay[]
  readonly texts: readonly string[]
}
export const NO_RIBBON: Ribbon = { days: [], texts: [] }

/** Every day from the first to today with its marks, as cards and the rules' episodes give them. */
export function ribbonOf(session: Session): Ribbon {
  const { programme, practiceZone: zone, now } = session
  const { start } = programme.script
  const numberOf = (at: Date): number => daysBetween(start, dayAt(at, zone)) + 1
  const marks = new Map<number, Mark[]>()
  const add = (number: number, mark: Mark): void => {
    const day = Math.max(1, number)
    const of = marks.get(day)
    if (of) of.push(mark)
    else marks.set(day, [mark])
  }
  // a card knows its day: of thousands none is asked for it again
  for (const card of session.cards.all.values()) {
    const kind = markOf(card)
    if (kind && card.about !== null)
      add(card.day, { at: card.at, kind, about: card.about, card: card.id, what: null })
  }
  for (const mark of session.flagMarks) add(numberOf(new Date(mark.at)), mark)
  const days = Array.from({ length: Math.max(1, numberOf(now)) }, (_, n) => ({
    day: n + 1,
    date: addDays(start, n),
    marks: (marks.get(n + 1) ?? []).sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0)),
  }))
  return { days, texts: days.map((day) => JSON.stringify(day)) }
}

function markOf({ from, side, kind }: Card): Mark['kind'] | null {
  if (from === 'client') return kind === 'words' || kind === 'act' ? 'reply' : null
  if (from !== 'bot') return null
  if (kind === 'prompt' && side === 'client') return 'prompt'
  if (kind === 'alert' && side === 'coach') return 'alert'
  return kind === 'decision' && side === 'client' ? 'decision' : null
}

/** Days that are other than before. */
export const changedDays = (before: Ribbon, after: Ribbon): RibbonDay[] =>
  after.days.filter((_, n) => after.texts[n] !== before.texts[n])
