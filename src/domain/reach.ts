/**
 * Reach: how far from the spine symptoms (pain, tingling, numbness) are felt, worst side.
 * An ordinal scale, 0 (none) to 6 (foot): ranks, medians and steps, never decimals shown to a person.
 */
export const REACHES = ['none', 'back', 'buttock', 'thigh', 'knee', 'calf', 'foot'] as const
export type Reach = (typeof REACHES)[number]

/** Rank of a reach, 0..6; higher is further from the spine. */
export const rank = (reach: Reach): number => REACHES.indexOf(reach)

/** The reach at a rank; halves (medians of an even count) go to the worse side. Throws RangeError outside 0..6. */
export function reachAt(value: number): Reach {
  const reach = REACHES[Math.ceil(value)]
  if (reach === undefined) throw new RangeError(`reach rank must be 0..6, got ${value}`)
  return reach
}

export const isReach = (word: string): word is Reach => (REACHES as readonly string[]).includes(word)

/** Calf and foot are below the knee (terms of the trade: distal). */
export const belowKnee = (reach: Reach): boolean => rank(reach) >= 5
