import type { Day } from '../day.ts'
import { atLeastHold, type Level, type Proposal, type RuleId } from './assessment.ts'

/** An episode of a rule in somebody's record; `closed` is null while it is open. */
export interface PastEpisode {
  readonly client: string
  readonly rule: RuleId
  readonly level: Level
  readonly day: Day
  readonly closed: Day | null
}

/** What a coach decided, what had been proposed, and the rules that stood behind that. */
export interface PastDecision {
  readonly client: string
  readonly day: Day
  readonly proposal: Proposal
  /** In the words of a proposal, where it is one of them. */
  readonly decision: string
  readonly rules: readonly RuleId[]
}

/** What became of a rule's proposals. */
export interface TakenUp {
  readonly rule: RuleId
  /** Decided as proposed. */
  readonly taken: number
  /** Decided otherwise. */
  readonly down: number
  /** Over without a decision. */
  readonly nothing: number
}

/** Notes that propose something; of the others only what holds or more does. */
const PROPOSING_NOTES: readonly RuleId[] = ['gate', 'plateau']
/** From so many proposals on a share says something ... */
const FEWEST = 5
/** ... and up to this one, 0..1, a rule counts as overruled. */
const OVERRULED = 0.2

const proposes = ({ rule, level }: PastEpisode): boolean =>
  atLeastHold(level) || PROPOSING_NOTES.includes(rule)

/** The last decision made on an episode while it was open; one on its last day still counts. */
const decisionOn = ({ client, rule, day, closed }: PastEpisode, decisions: readonly PastDecision[]) =>
  decisions.findLast(
    (made) =>
      made.client === client &&
      made.rules.includes(rule) &&
      made.day >= day &&
      (closed === null || made.day <= closed),
  )

type Fate = 'taken' | 'down' | 'nothing' | 'waiting'

function fateOf(episode: PastEpisode, decisions: readonly PastDecision[]): Fate {
  const made = decisionOn(episode, decisions)
  if (made === undefined) return episode.closed === null ? 'waiting' : 'nothing'
  return made.decision === made.proposal ? 'taken' : 'down'
}

/**
 * What became of the proposals of each rule, the rule with the most of them first. Signs are no matter of taking up
 * and are left out; an open episode without a decision is not counted yet.
 * @param decisions in order of time
 * @param from only episodes that began on this day or later; null: all
 */
export function takenUp(
  episodes: readonly PastEpisode[],
  decisions: readonly PastDecision[],
  from: Day | null,
): TakenUp[] {
  const fates = new Map<RuleId, Record<Fate, number>>()
  for (const episode of episodes) {
    if (episode.rule === 'sign' || !proposes(episode) || (from !== null && episode.day < from)) continue
    const counts = fates.get(episode.rule) ?? { taken: 0, down: 0, nothing: 0, waiting: 0 }
    counts[fateOf(episode, decisions)] += 1
    fates.set(episode.rule, counts)
  }
  return [...fates]
    .map(([rule, { taken, down, nothing }]) => ({ rule, taken, down, nothing }))
    .filter((one) => proposalsOf(one) > 0)
    .sort((a, b) => proposalsOf(b) - proposalsOf(a) || (a.rule < b.rule ? -1 : 1))
}

export const proposalsOf = ({ taken, down, nothing }: TakenUp): number => taken + down + nothing

/**
 * True where at least 5 proposals of a rule have hardly ever been taken up (20 % at most). A hold or an easing back
 * acts by itself, so one that was just left to stand is not overruled by that: somebody must have decided otherwise.
 */
export function isOverruled(counts: TakenUp): boolean {
  const of = proposalsOf(counts)
  if (of < FEWEST || counts.taken / of > OVERRULED) return false
  return counts.down > 0 || PROPOSING_NOTES.includes(counts.rule)
}
