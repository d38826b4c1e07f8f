import { atLeastHold, type Flag, type Level, type RuleId } from './assessment.ts'

/**
 * Notes that reach the coach before the digest: a client who waits for the next rung. A plateau is six weeks old
 * when it is named, so it waits for the digest, where it stands with its proposal.
 */
const TOLD_NOTES: readonly RuleId[] = ['gate']

/** True where a new episode goes to the coach by a message of its own, the same day; the rest waits for the digest. */
export const toldAtOnce = ({ rule, level }: Pick<Flag, 'rule' | 'level'>): boolean =>
  atLeastHold(level) || TOLD_NOTES.includes(rule)

/** True where an open episode that was a note now holds: news of its own, though the episode is not new. */
export const hasRisen = (before: Level, now: Level): boolean => !atLeastHold(before) && atLeastHold(now)
