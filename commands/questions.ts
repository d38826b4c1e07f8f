import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { openQuestions } from '../src/engine/course/questions.ts'

/** Questions shown at once: those that have waited longest. */
const SHOWN = 20

/** Every client's question that waits for an answer. */
export const questions: PracticeCommand = {
  name: 'questions',
  who: 'coach-practice',
  options: [],
  async run({ tx, practice, now, texts }) {
    const open = openQuestions(await tx.roster(practice!.id), now, 'all')
    const { courseForCoach } = texts
    if (open.length === 0) return plain(courseForCoach.noQuestions, null)
    const lines = courseForCoach.openQuestions(open.slice(0, SHOWN))
    if (open.length > SHOWN) lines.push(courseForCoach.more(open.length - SHOWN))
    return plain(lines.join('\n'), null)
  },
}
