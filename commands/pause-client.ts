import { plain } from '../src/engine/answer.ts'
import { pause } from '../src/engine/check-in/quiet.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { withCare } from '../src/engine/urgent/with-care.ts'

/** A pause set by the coach. */
export const pauseClient: CoachCommand = {
  name: 'pause-client',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run(draft, { actor }) {
    const { coach, commands } = draft.forCoach
    if (draft.client.stage !== 'enrolled')
      return plain(draft.forCoach.courseForCoach.notUnderWay(draft.client.ref), draft.client.ref)
    if (!pause(draft, 'coach', `<@${actor.user}>`))
      return plain(coach.paused(draft.client.ref), draft.client.ref)
    draft.toClient({ kind: 'notice', text: withCare(draft, draft.texts.commands.pausedByCoach) })
    return plain(commands.done, draft.client.ref)
  },
}
