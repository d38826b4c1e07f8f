import { isDay } from '../src/domain/day.ts'
import { plain } from '../src/engine/answer.ts'
import { clearanceProblem, clear as clearClient } from '../src/engine/clear.ts'
import type { CoachCommand } from '../src/engine/command.ts'

/** Records who cleared the client and when; only so does a locked plan open again. */
export const clear: CoachCommand = {
  name: 'clear',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'by', kind: 'text', required: true },
    { name: 'on', kind: 'text', required: true },
  ],
  run(draft, { options, actor }) {
    const { commands } = draft.forCoach
    const on = String(options.on)
    if (!isDay(on)) return plain(commands.badDay(on), draft.client.ref)
    const by = String(options.by).slice(0, 80)
    const problem = clearanceProblem(draft, by, on)
    if (problem) return plain(problem, draft.client.ref)
    clearClient(draft, by, on, `<@${actor.user}>`)
    return { ...plain(commands.cleared(draft.client.ref), draft.client.ref), kind: 'cleared' }
  },
}
