import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { digest as digestOf } from '../src/engine/digest.ts'

/** The digest asked for now, beside the weekly one. */
export const digest: PracticeCommand = {
  name: 'digest',
  who: 'coach-practice',
  options: [],
  async run({ tx, practice, now, texts, textsFor, ladders }, command) {
    if (!practice!.coachChannel) return plain(texts.commands.notSetUpChannel, null)
    const files = await tx.roster(practice!.id)
    await tx.apply({
      changes: [],
      postings: digestOf(practice!, files, now, { textsFor, ladders }, command.id),
    })
    return plain(texts.commands.digestPosted, null)
  },
}
