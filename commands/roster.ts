import { rollCall } from '../src/domain/digest/attention.ts'
import { dayAt } from '../src/domain/local-time.ts'
import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { cardOf } from '../src/engine/digest.ts'

/** Who needs the coach, who can move on, the rest: each with one line. */
export const roster: PracticeCommand = {
  name: 'roster',
  who: 'coach-practice',
  options: [],
  async run({ tx, practice, now, texts, textsFor, ladders }) {
    const files = await tx.roster(practice!.id)
    if (files.length === 0) return plain(texts.commands.noClients, null)
    const facts = files.map((file) => cardOf(file, now, { textsFor, ladders }, 'roster').facts)
    const pages = texts.digest.rollCall(rollCall(facts), dayAt(now, practice!.zone))
    return { ...plain(pages.join('\n'), null), kind: 'roll-call' }
  },
}
