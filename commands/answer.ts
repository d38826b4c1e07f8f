import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'

/** The coach's answer to a client's question, without either leaving the chat. */
export const answer: CoachCommand = {
  name: 'answer',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'text', kind: 'text', required: true },
  ],
  run(draft, { options }) {
    draft.toClient({
      kind: 'notice',
      text: draft.texts.commands.fromCoach(String(options.text).slice(0, 1500)),
    })
    return plain(draft.forCoach.commands.answered, draft.client.ref)
  },
}
