import type { Day } from '../src/domain/day.ts'
import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { release as releaseClient, releaseProblem } from '../src/engine/urgent/clear.ts'

/** A clinician agrees with gentle drills for a parked client: profession and date, no more. */
export const release: CoachCommand = {
  name: 'release',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'by', kind: 'text', required: true },
    { name: 'on', kind: 'text', required: true },
  ],
  run(draft, { options, actor }) {
    const { ref } = draft.client
    const [by, on] = [String(options.by).trim().slice(0, 80), String(options.on).trim()]
    const problem = releaseProblem(draft, by, on)
    if (problem) return plain(problem, ref)
    releaseClient(draft, by, on as Day, `<@${actor.user}>`)
    return { ...plain(draft.forCoach.commands.released(ref), ref), kind: 'cleared' }
  },
}
