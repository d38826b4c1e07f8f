import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { pause as pauseFor } from '../src/engine/quiet.ts'

/** A break of the client's own: prompts stop until they come back. */
export const pause: ClientCommand = {
  name: 'pause',
  who: 'client',
  options: [],
  run: (draft) =>
    plain(
      pauseFor(draft, 'client', 'client') ? draft.texts.client.paused : draft.texts.client.alreadyPaused,
      draft.client.ref,
    ),
}
