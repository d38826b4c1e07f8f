import { plain } from '../src/engine/answer.ts'
import { why as whyText } from '../src/engine/coach/coach-acts.ts'
import type { CoachCommand } from '../src/engine/command.ts'

/** The figures, days and sources behind what the rules say. */
export const why: CoachCommand = {
  name: 'why',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run: (draft) => plain(whyText(draft, draft.today), draft.client.ref),
}
