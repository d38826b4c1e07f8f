import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { inCharge } from '../src/engine/course/cover.ts'
import { isNoCoach } from '../src/engine/course/named-coach.ts'
import { withCare } from '../src/engine/urgent/with-care.ts'

/** Another coach looks after the client from now on; both are told. */
export const moveClient: CoachCommand = {
  name: 'move-client',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'to', kind: 'person', required: true },
  ],
  run(draft, command) {
    const { options } = command
    const { courseForCoach, alerts } = draft.forCoach
    const { ref, stage } = draft.client
    if (isNoCoach(draft.file.practice, command, 'to')) return plain(alerts.noCoach(`<@${options.to}>`), ref)
    const [before, user] = [inCharge(draft.file), String(options.to)]
    const to = `<@${user}>`
    if (before === to) return plain(courseForCoach.movedAlready(ref, to), ref)
    draft.put('client', { ...draft.client, coach: to })
    const text = courseForCoach.moved(ref, before ?? courseForCoach.nobody, to)
    draft.toCoach({ kind: 'notice', text, mentions: { roles: [], users: [user] } })
    // who has ended or not begun is not written to about it
    if (stage === 'enrolled')
      draft.toClient({ kind: 'notice', text: withCare(draft, draft.texts.course.movedTo) })
    return plain(text, ref)
  },
}
