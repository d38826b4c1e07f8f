import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { answerQuestion, firstOpen } from '../src/engine/course/questions.ts'

/** The coach's answer to the question that has waited longest, or a word of the coach's own where none waits. */
export const answer: CoachCommand = {
  name: 'answer',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'text', kind: 'text', required: true },
  ],
  run(draft, { options, actor }) {
    const text = String(options.text)
    const waiting = firstOpen(draft.file)
    if (waiting) return plain(answerQuestion(draft, waiting.id, text, `<@${actor.user}>`), draft.client.ref)
    if (draft.client.stage === 'left')
      return plain(draft.forCoach.courseForCoach.hasLeft(draft.client.ref), draft.client.ref)
    draft.toClient({ kind: 'notice', text: draft.texts.commands.fromCoach(text.slice(0, 1500)) })
    return plain(draft.forCoach.commands.answered, draft.client.ref)
  },
}
