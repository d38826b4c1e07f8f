import type { Side } from '../../domain/checkin.ts'
import type { Day } from '../../domain/day.ts'
import type { SignId } from '../../domain/signs/catalogue.ts'
import { answeredNow, expect } from '../check-in/asked.ts'
import { otherSideQuestion } from '../check-in/asking.ts'
import { record } from '../check-in/record.ts'
import type { Draft } from '../draft.ts'

/** What an answer about the leg says: the side kept, and the sign that it amounts to. */
export interface SideTold {
  readonly side: Side | null
  readonly sign: SignId | null
}

const OTHER: Record<'left' | 'right', Side> = { left: 'right', right: 'left' }

/** "The same leg, the other, or both?", or the side where none is on record. */
export function answerSide(draft: Draft, value: string, day: Day): SideTold {
  answeredNow(draft, 'side')
  const known = draft.client.side
  const side = resolve(value, known)
  if (side === null) return { side, sign: null }
  record(draft, day, { side })
  if (known === null) draft.put('client', { ...draft.client, side })
  if (known === null || known === side || known === 'both') return { side, sign: null }
  if (side === 'both') return { side, sign: 'both-legs' }
  // from now on this is the leg on record: the coach has been told of the change
  draft.put('client', { ...draft.client, side })
  return { side, sign: 'new-symptoms-elsewhere' }
}

function resolve(value: string, known: Side | null): Side | null {
  if (value === 'same') return known
  if (value === 'left' || value === 'right' || value === 'both') return value
  return value === 'other' && (known === 'left' || known === 'right') ? OTHER[known] : null
}

/**
 * A side was named in passing. The one on record is kept; both, said plainly, of one-sided trouble is a sign; the
 * other leg alone is asked about, and no answer in ten minutes counts as both.
 */
export function hearSide(draft: Draft, side: Side, day: Day): SignId | null {
  const known = draft.client.side
  if (known === null || known === side || known === 'both') {
    record(draft, day, { side })
    if (known === null) draft.put('client', { ...draft.client, side })
    return null
  }
  if (side === 'both') {
    record(draft, day, { side })
    return 'both-legs'
  }
  expect(draft, otherSideQuestion(draft.texts, day))
  return null
}
