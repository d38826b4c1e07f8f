import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { isNoCoach } from '../src/engine/course/named-coach.ts'
import { handOver as handOverTo } from '../src/engine/urgent/hand-over.ts'

/** Hands an open alert over to another coach, who is called by name. */
export const handOver: CoachCommand = {
  name: 'hand-over',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'to', kind: 'person', required: true },
  ],
  run(draft, command) {
    const { ref } = draft.client
    const to = String(command.options.to)
    if (isNoCoach(draft.file.practice, command, 'to'))
      return plain(draft.forCoach.alerts.noCoach(`<@${to}>`), ref)
    return { ...plain(handOverTo(draft, to, `<@${command.actor.user}>`), ref), kind: 'taken-up' }
  },
}
