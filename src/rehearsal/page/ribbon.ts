import { addDays, daysBetween } from '../../domain/day.ts'
import { dayAt } from '../../domain/local-time.ts'
import type { Session } from './session.ts'
import type { Card, Mark, RibbonDay } from './wire.ts'

/** Every day from the first to today with its marks, as cards and the rules' episodes give them. */
export function ribbonOf(session: Session): RibbonDay[] {
  const { programme, practiceZone: zone, now } = session
  const { start } = programme.script
  const today = Math.max(1, daysBetween(start, dayAt(now, zone)) + 1)
  const marks = new Map<number, Mark[]>()
  const add = (mark: Mark): void => {
    const day = Math.max(1, daysBetween(start, dayAt(new Date(mark.at), zone)) + 1)
    marks.set(day, [...(marks.get(day) ?? []), mark])
  }
  for (const card of session.cards.all.values()) {
    const kind = markOf(card)
    if (kind && card.about !== null) add({ at: card.at, kind, about: card.about, card: card.id, what: null })
  }
  for (const mark of session.flagMarks) add(mark)
  return Array.from({ length: today }, (_, n) => ({
    day: n + 1,
    date: addDays(start, n),
    marks: (marks.get(n + 1) ?? []).sort((a, b) => a.at.localeCompare(b.at)),
  }))
}

function markOf({ from, side, kind }: Card): Mark['kind'] | null {
  if (from === 'client') return kind === 'words' || kind === 'act' ? 'reply' : null
  if (from !== 'bot') return null
  if (kind === 'prompt' && side === 'client') return 'prompt'
  if (kind === 'alert' && side === 'coach') return 'alert'
  return kind === 'decision' && side === 'client' ? 'decision' : null
}

/** Days that are other than before. */
export function changedDays(before: readonly RibbonDay[], after: readonly RibbonDay[]): RibbonDay[] {
  return after.filter((day, n) => JSON.stringify(day) !== JSON.stringify(before[n]))
}
