import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { backInWords, resume as resumeFor } from '../src/engine/quiet.ts'

/** Back from a break. */
export const resume: ClientCommand = {
  name: 'resume',
  who: 'client',
  options: [],
  run: (draft) =>
    plain(resumeFor(draft, 'client') ? backInWords(draft) : draft.texts.client.notPaused, draft.client.ref),
}
