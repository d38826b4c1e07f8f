import type { CoachCommand } from '../src/engine/command.ts'
import { postReport } from '../src/engine/report.ts'

/** The one-page report for a clinician, posted to the coach's channel as picture and PDF. */
export const report: CoachCommand = {
  name: 'report',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run: (draft, _command, tx) => postReport(tx, draft),
}
