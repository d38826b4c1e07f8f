import { plain } from '../src/engine/answer.ts'
import type { ClientCommand } from '../src/engine/command.ts'
import type { Draft } from '../src/engine/draft.ts'
import { recordText } from '../src/engine/record-text.ts'

/** Questions shown, the latest: the export holds them all. */
const SHOWN = 5

/** What is kept of the client, shown to the client alone. */
export const myRecord: ClientCommand = {
  name: 'my-record',
  who: 'client',
  options: [],
  run: (draft) => {
    const lines = [recordText(draft, draft.texts), ...questionLines(draft), draft.texts.ownData.how]
    const text = lines.join('\n')
    return { ...plain(text, draft.client.ref), kind: 'report' }
  },
}

const questionLines = ({ file, texts }: Draft): string[] =>
  file.questions.slice(-SHOWN).map(({ words, answer }) => texts.course.mine(words.slice(0, 200), answer))
