import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { recordText } from '../src/engine/record-text.ts'

/** A client's last two weeks, shown to the coach in private. */
export const clientRecord: CoachCommand = {
  name: 'client-record',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run: (draft) => ({ ...plain(recordText(draft, draft.forCoach), draft.client.ref), kind: 'report' }),
}
