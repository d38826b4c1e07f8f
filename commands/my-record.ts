import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import { recordText } from '../src/engine/record-text.ts'

/** What is kept of the client, shown to the client alone. */
export const myRecord: ClientCommand = {
  name: 'my-record',
  who: 'client',
  options: [],
  run: (draft) => ({ ...plain(recordText(draft, draft.texts), draft.client.ref), kind: 'report' }),
}
