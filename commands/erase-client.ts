import { plain } from '../src/engine/answer.ts'
import type { CoachCommand } from '../src/engine/command.ts'
import { openHold } from '../src/engine/status.ts'

/** Erases every row of a client; asked for twice, and with a word of warning while a sign is open. */
export const eraseClient: CoachCommand = {
  name: 'erase-client',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'sure', kind: 'yes-no', required: false },
  ],
  run(draft, { options }) {
    const { commands } = draft.texts
    const { ref } = draft.client
    if (options.sure !== true) return plain(commands.sureErase(ref), ref)
    const warning = openHold(draft.file, 'lock') ? `${commands.eraseWithSign}\n` : ''
    return { ...plain(warning + commands.erased(ref), null), erases: true }
  },
}
