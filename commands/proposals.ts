import { addDays } from '../src/domain/day.ts'
import { dayAt } from '../src/domain/local-time.ts'
import { takenUp } from '../src/domain/rules/taken-up.ts'
import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'

const LATELY_DAYS = 90

/** What became of the proposals of each rule, so that one that is always overruled is seen. */
export const proposals: PracticeCommand = {
  name: 'proposals',
  who: 'coach-practice',
  options: [],
  async run({ tx, practice, now, texts }) {
    const { id, zone } = practice!
    const { flags, decisions } = await tx.proposals(id)
    const episodes = flags.map(({ clientId, rule, level, day, closedAt }) => ({
      client: clientId,
      rule,
      level,
      day,
      closed: closedAt && dayAt(closedAt, zone),
    }))
    const made = decisions.map(({ clientId, ...decision }) => ({ client: clientId, ...decision }))
    const lately = takenUp(episodes, made, addDays(dayAt(now, zone), 1 - LATELY_DAYS))
    return plain(texts.proposals.takenUp(lately, takenUp(episodes, made, null)), null, true)
  },
}
