import type { ClientCommand } from '../src/engine/command.ts'
import { eraseAnswer } from '../src/engine/course/erase.ts'

/** A client has everything about them erased; asked for twice. */
export const eraseMe: ClientCommand = {
  name: 'erase-me',
  who: 'client',
  options: [{ name: 'sure', kind: 'yes-no', required: false }],
  run(draft, { options }) {
    const { commands } = draft.texts
    return eraseAnswer(draft, options.sure === true, {
      ask: commands.sureEraseMe,
      done: commands.erasedMe,
      withSign: commands.eraseWithSignMe,
    })
  },
}
