import { plain } from '../src/engine/answer.ts'
import { resumeInWords } from '../src/engine/check-in/quiet.ts'
import type { ClientCommand } from '../src/engine/command.ts'

/** Back from a break. */
export const resume: ClientCommand = {
  name: 'resume',
  who: 'client',
  options: [],
  run: (draft) => plain(resumeInWords(draft), draft.client.ref),
}
