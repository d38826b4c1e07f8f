import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { withCare } from '../src/engine/urgent/with-care.ts'

/** For a client how to check in, and when to call for help; for a coach what there is. */
export const help: ClientCommand = {
  name: 'help',
  who: 'client',
  options: [],
  forCoach: (texts) => texts.commands.helpForCoach,
  run: (draft) => plain(withCare(draft, draft.texts.client.help), draft.client.ref),
}
