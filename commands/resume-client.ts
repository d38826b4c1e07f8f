import { plain } from '../src/engine/answer.ts'
import { backInWords, resume } from '../src/engine/check-in/quiet.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { statusOf } from '../src/engine/status.ts'

/** Ends a pause from the coach's side. */
export const resumeClient: CoachCommand = {
  name: 'resume-client',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run(draft, { actor }) {
    const { coach, alerts } = draft.forCoach
    const { ref, prompt } = draft.client
    if (!resume(draft, `<@${actor.user}>`)) return plain(coach.notPaused(ref), ref)
    draft.toClient({ kind: 'notice', text: backInWords(draft) })
    const status = statusOf(draft.file)
    if (status === 'locked') return plain(alerts.resumedLocked(ref), ref)
    return plain(status === 'parked' ? alerts.resumedParked(ref) : alerts.resumed(ref, prompt), ref)
  },
}
