import { addDays, type Day } from '../day.ts'
import { assess } from './assess.ts'
import type { Flag, History, Proposal, RuleId } from './assessment.ts'

/** What was new on a day, against the day before. */
export interface ReplayDay {
  readonly day: Day
  readonly raised: readonly Flag[]
  /** Rules of which an episode ended that day, each once. */
  readonly closed: readonly RuleId[]
  readonly proposal: Proposal
}

/** One episode of a rule is open at a time; each sign, the word of a trend and each ladder's gate are their own. */
function keyOf({ rule, figures }: Flag): string {
  if (rule === 'trend-pain' || rule === 'trend-reach') return `${rule} ${figures.word}`
  if (rule === 'gate') return `gate ${figures.ladder}:${figures.rung}`
  return rule === 'sign' ? `sign ${figures.sign}` : rule
}

/**
 * Every day from first to last as it would have come in live.
 * @param known the history as it was known on a day
 */
export function* replay(known: (day: Day) => History, first: Day, last: Day): Generator<ReplayDay> {
  let before: readonly Flag[] = []
  for (let day = first; day <= last; day = addDays(day, 1)) {
    const { flags, proposal } = assess(known(day), day)
    const keysBefore = new Set(before.map(keyOf))
    const keysNow = new Set(flags.map(keyOf))
    yield {
      day,
      raised: flags.filter((flag) => !keysBefore.has(keyOf(flag))),
      closed: [...new Set(before.filter((flag) => !keysNow.has(keyOf(flag))).map((flag) => flag.rule))],
      proposal,
    }
    before = flags
  }
}
