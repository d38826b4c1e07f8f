import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { answerQuestion, firstOpen, writeToClient } from '../src/engine/course/questions.ts'

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
    const said = waiting
      ? answerQuestion(draft, waiting.id, text, `<@${actor.user}>`)
      : writeToClient(draft, text)
    return plain(said, draft.client.ref)
  },
}
