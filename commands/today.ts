import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { workToday } from '../src/engine/plan/work.ts'

/** The day's work with its cautions. */
export const today: ClientCommand = {
  name: 'today',
  who: 'client',
  options: [],
  run: (draft) => {
    const { text, drills } = workToday(draft)
    return { ...plain(text, draft.client.ref), kind: 'plan', drills }
  },
}
