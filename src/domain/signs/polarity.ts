import { NOWHERE } from './units.ts'

/** Per unit: how many negations cover it (0, 1, 2), and whether it was said to be fine. */
export interface Polarity {
  readonly negated: Uint8Array
  readonly fine: Uint8Array
  /** "not normal", "can't go properly": a fine that became its opposite. */
  readonly turnedOdd: Uint8Array
  /** Denied only as a further item of a list that an "or" does not show to be one: "no fever, chest pain". */
  readonly listed: Uint8Array
  /** "don't feel" before a symptom: it only denies. */
  readonly denying: Uint8Array
}

/** Of a message that denies nothing and says of nothing that it is fine. */
export const NEUTRAL: Polarity = {
  negated: NOWHERE,
  fine: NOWHERE,
  turnedOdd: NOWHERE,
  listed: NOWHERE,
  denying: NOWHERE,
}
