import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { ownRecord } from '../src/engine/course/own-record.ts'

/** What is kept of the client, shown to the client alone. */
export const myRecord: ClientCommand = {
  name: 'my-record',
  who: 'client',
  options: [],
  run: (draft) => {
    const { text, buttons } = ownRecord(draft)
    const choices = { buttons: draft.client.wordsOnly ? [] : buttons, pick: null }
    return { ...plain(text, draft.client.ref), kind: 'report', choices }
  },
}
