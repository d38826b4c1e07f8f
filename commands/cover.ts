import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { coverFor, coversAhead } from '../src/engine/course/cover-acts.ts'
import { isNoCoach } from '../src/engine/course/named-coach.ts'

/**
 * A coach away names who stands in: alerts call the cover first in those days. One cover a coach; oneself ends it.
 * Without options: who stands in for whom, today and later.
 */
export const cover: PracticeCommand = {
  name: 'cover',
  who: 'coach-practice',
  options: [
    { name: 'from', kind: 'text', required: false },
    { name: 'until', kind: 'text', required: false },
    { name: 'by', kind: 'person', required: false },
  ],
  async run(desk, command) {
    const { options, actor } = command
    const word = (name: string): string | null => (options[name] === undefined ? null : String(options[name]))
    const [from, until, by] = [word('from'), word('until'), word('by')]
    if (from === null && until === null && by === null) return plain(await coversAhead(desk), null)
    const byNoCoach = isNoCoach(desk.practice!, command, 'by')
    return plain(await coverFor(desk, { user: actor.user, from, until, by, byNoCoach }), null)
  },
}
