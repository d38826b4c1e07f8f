import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { openQuestions } from '../src/engine/questions.ts'

/** Pages of an answer that are shown: what waits longest comes first. */
const SHOWN = 3

/** Every client's question that waits for an answer. */
export const questions: PracticeCommand = {
  name: 'questions',
  who: 'coach-practice',
  options: [],
  async run({ tx, practice, now, texts }) {
    const open = openQuestions(await tx.roster(practice!.id), now, 'all')
    const { courseForCoach } = texts
    if (open.length === 0) return plain(courseForCoach.noQuestions, null)
    return plain(courseForCoach.openQuestions(open).slice(0, SHOWN).join('\n'), null)
  },
}
