import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'

/** How to check in, and when to call for help. */
export const help: ClientCommand = {
  name: 'help',
  who: 'client',
  options: [],
  run: (draft) => plain(draft.texts.client.help, draft.client.ref),
}
