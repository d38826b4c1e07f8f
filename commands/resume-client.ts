import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { resume } from '../src/engine/quiet.ts'

/** Ends a pause from the coach's side. */
export const resumeClient: CoachCommand = {
  name: 'resume-client',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run(draft, { actor }) {
    const { coach, commands } = draft.forCoach
    if (!resume(draft, `<@${actor.user}>`)) return plain(coach.notPaused(draft.client.ref), draft.client.ref)
    draft.toClient({ kind: 'notice', text: draft.texts.client.resumed(draft.client.prompt) })
    return plain(commands.done, draft.client.ref)
  },
}
