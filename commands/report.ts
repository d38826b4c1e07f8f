import { postReport } from '../src/engine/coach/report.ts'
import type { CoachCommand } from '../src/engine/command.ts'

/** The one-page report for a clinician, posted to the coach's channel as picture and PDF. */
export const report: CoachCommand = {
  name: 'report',
  who: 'coach',
  options: [{ name: 'client', kind: 'client', required: true }],
  run: (draft, _command, tx) => postReport(tx, draft),
}
