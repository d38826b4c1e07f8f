import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { discharge as dischargeClient } from '../src/engine/course/leave.ts'
import { hasEnded } from '../src/engine/status.ts'

/** The end of the way together: where the client began, where they are, what to do if it comes back. */
export const discharge: CoachCommand = {
  name: 'discharge',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run(draft) {
    const { commands, courseForCoach } = draft.forCoach
    const { ref, stage } = draft.client
    if (hasEnded(draft.client)) return plain(courseForCoach.dischargedAlready(ref), ref)
    if (stage !== 'enrolled') return plain(courseForCoach.notBegun(ref), ref)
    dischargeClient(draft)
    return { ...plain(commands.discharged(ref), ref), kind: 'discharge' }
  },
}
