import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { leave as leaveFor } from '../src/engine/course/leave.ts'

/** The client leaves at any time. */
export const leave: ClientCommand = {
  name: 'leave',
  who: 'client',
  options: [],
  run(draft) {
    leaveFor(draft)
    return plain(draft.texts.commands.done, draft.client.ref)
  },
}
