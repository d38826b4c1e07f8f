import { plain } from '../src/engine/answer.ts'
import { pauseInWords } from '../src/engine/check-in/quiet.ts'
import type { ClientCommand } from '../src/engine/command.ts'

/** A break of the client's own: prompts stop until they come back. */
export const pause: ClientCommand = {
  name: 'pause',
  who: 'client',
  options: [],
  run: (draft) => plain(pauseInWords(draft), draft.client.ref),
}
