import type { CoachCommand } from '../src/engine/command.ts'
import { eraseAnswer } from '../src/engine/course/erase.ts'

/** Erases every row of a client; asked for twice, and with a word of warning while a sign is open. */
export const eraseClient: CoachCommand = {
  name: 'erase-client',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'sure', kind: 'yes-no', required: false },
  ],
  run(draft, { options }) {
    const { commands } = draft.forCoach
    const { ref } = draft.client
    return eraseAnswer(draft, options.sure === true, {
      ask: commands.sureErase(ref),
      done: commands.erased(ref),
      withSign: commands.eraseWithSign,
    })
  },
}
