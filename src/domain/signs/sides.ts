import type { Side } from '../checkin.ts'

/** What a named side means beside the one on record. */
export type SideChange = 'same' | 'ask' | 'both-legs' | 'other-leg'

/**
 * One-sided symptoms on record that turn two-sided are the sign `both-legs`, whoever fails to write "both".
 * - `same`: nothing new (or two-sided symptoms that drew back to one leg).
 * - `ask`: nothing on record, or the side is missing: "the same leg, the other, or both?"
 * - `both-legs`: one leg on record, both named.
 * - `other-leg`: the other leg alone. Asked as above before it is taken as that: without an answer it is `both-legs`.
 */
export function compare(recorded: Side | null, named: Side | null): SideChange {
  if (named === null) return recorded === 'both' ? 'same' : 'ask'
  if (recorded === null) return named === 'both' ? 'both-legs' : 'same'
  if (recorded === named || recorded === 'both') return 'same'
  return named === 'both' ? 'both-legs' : 'other-leg'
}
