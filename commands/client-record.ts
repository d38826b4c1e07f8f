import { plain } from '../src/engine/answer.ts'
import { recordPage, weekWished } from '../src/engine/coach/record-page.ts'
import type { CoachCommand } from '../src/engine/command.ts'

/** A client's record by week, shown to the coach in private; the present week where none is named. */
export const clientRecord: CoachCommand = {
  name: 'client-record',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'week', kind: 'text', required: false },
  ],
  async run(draft, { options }, tx) {
    const text = options.week === undefined ? null : String(options.week)
    const week = text === null ? null : weekWished(text)
    if (text !== null && week === null) return plain(draft.forCoach.record.badWeek(text), draft.client.ref)
    return recordPage(tx, draft, { week, part: 0 }, false)
  },
}
