import { atLeastHold, type Flag, type Level } from './assessment.ts'

/**
 * True where a new episode goes to the coach by a message of its own, the same day. Everything else waits for the
 * digest, with its proposal and buttons, and stands in the roster until then: a plateau is six weeks old when it is
 * named, and a met gate is no hurry, since the client goes on as they are and flickers in and out of it. By messages
 * of their own the gates alone would be 1.2 to 1.5 a client-month, where 1 is the most for all rules together.
 */
export const toldAtOnce = ({ level }: Pick<Flag, 'level'>): boolean => atLeastHold(level)

/** True where an open episode that was a note now holds: news of its own, though the episode is not new. */
export const hasRisen = (before: Level, now: Level): boolean => !atLeastHold(before) && atLeastHold(now)
