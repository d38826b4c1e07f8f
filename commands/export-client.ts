import type { CoachCommand } from '../src/engine/command.ts'
import { EXPORT_FORMATS, type ExportFormat, postExport } from '../src/engine/course/export.ts'

/** All that is kept of a client as a file in the coach's channel. */
export const exportClient: CoachCommand = {
  name: 'export-client',
  who: 'coach',
  options: [
    { name: 'client', kind: 'client', required: true },
    { name: 'format', kind: 'text', required: false, choices: EXPORT_FORMATS },
  ],
  run: (draft, { options }, tx) => postExport(tx, draft, (options.format as ExportFormat) ?? 'json'),
}
