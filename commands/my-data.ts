import type { ClientCommand } from '../src/engine/command.ts'
import { EXPORT_FORMATS, type ExportFormat, sendOwnData } from '../src/engine/course/export.ts'

/** All that is kept of the client as a file, to them alone in private. */
export const myData: ClientCommand = {
  name: 'my-data',
  who: 'client',
  options: [{ name: 'format', kind: 'text', required: false, choices: EXPORT_FORMATS }],
  run: (draft, { options }, tx) => sendOwnData(tx, draft, (options.format as ExportFormat) ?? 'json'),
}
