import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'

/** A note of the coach's; clients never see it. */
export const note: CoachCommand = {
  name: 'note',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'text', kind: 'text', required: true },
  ],
  run(draft, { options, actor }) {
    draft.put('note', {
      id: draft.id('note', draft.cause),
      clientId: draft.client.id,
      at: draft.now,
      by: `<@${actor.user}>`,
      text: String(options.text).slice(0, 2000),
    })
    return plain(draft.forCoach.commands.noteKept, draft.client.ref)
  },
}
