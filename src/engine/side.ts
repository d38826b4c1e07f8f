import type { Side } from '../domain/checkin.ts'
import type { Day } from '../domain/day.ts'
import type { Noted } from './client-acts.ts'
import type { Draft } from './draft.ts'
import { record } from './record.ts'
import { raiseSigns } from './urgent.ts'

/** Minutes after which no answer counts as both, where the other leg was named. */
export const SIDE_MINUTES = 10

const OTHER: Record<'left' | 'right', Side> = { left: 'right', right: 'left' }

/** "The same leg, the other, or both?", or the side where none is on record. */
export function answerSide(draft: Draft, value: Side | 'same' | 'other', day: Day, words: string): Noted {
  dropDeadline(draft)
  const known = draft.client.side
  const side = resolve(value, known)
  if (side === null) return { text: draft.texts.client.notKnown, days: [] }
  return takeSide(draft, side, day, words)
}

const resolve = (value: Side | 'same' | 'other', known: Side | null): Side | null => {
  if (value === 'same') return known
  if (value !== 'other') return value
  return known === 'left' || known === 'right' ? OTHER[known] : null
}

/** One-sided trouble that turns two-sided is a sign though nobody wrote "both"; the other leg alone is told to the coach. */
export function takeSide(draft: Draft, side: Side, day: Day, words: string): Noted {
  const known = draft.client.side
  record(draft, day, { side })
  if (known === null) draft.put('client', { ...draft.client, side })
  const text = draft.texts.client.notedSide(draft.texts.words.side(side))
  if (known === null || known === side || known === 'both') return { text, days: [day] }
  raiseSigns(draft, [side === 'both' ? 'both-legs' : 'new-symptoms-elsewhere'], day, words)
  return { text, days: [day] }
}

/** The other leg was named and the question stays without an answer: it counts as both. */
export function expectSide(draft: Draft, day: Day, words: string): void {
  draft.due('side-deadline', new Date(draft.now.getTime() + SIDE_MINUTES * 60_000), { day, words })
}

export function sideDeadline(draft: Draft, day: Day, words: string): void {
  record(draft, day, { side: 'both' })
  raiseSigns(draft, ['both-legs'], day, words)
}

function dropDeadline(draft: Draft): void {
  const id = draft.id('due', 'side-deadline')
  if (draft.file.dues.some((due) => due.id === id)) draft.drop('due', id)
}
