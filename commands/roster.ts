import { plain } from '../src/engine/answer.ts'
import { rosterPage } from '../src/engine/coach/roster.ts'
import type { PracticeCommand } from '../src/engine/command.ts'

/** Who needs the coach, who can move on, the rest: each with one line, a page at a time. */
export const roster: PracticeCommand = {
  name: 'roster',
  who: 'coach-practice',
  options: [],
  async run({ tx, practice, now, texts, textsFor, ladders }) {
    const files = await tx.roster(practice!.id)
    if (files.length === 0) return plain(texts.commands.noClients, null)
    return rosterPage({ practice: practice!, files, now, textsFor, ladders }, 0)
  },
}
